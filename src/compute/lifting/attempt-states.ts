import type { AttemptProblem } from "./attempt-problem.ts";

/**
 * What is known after some attempts, as far as results and rules depend on it. Loads are indices into the problem's
 * loads, -1 for none. `last` is kept only where the rules look at it; with it, a last load that is also the best was made.
 */
export type KnownState = { readonly best: number; readonly last: number };

/** All states of a problem, and how attempts lead from one to another. */
export type AttemptStates = {
  readonly all: readonly KnownState[];
  /** State after a load is made, by load: whatever was known before, it is now best and last. */
  readonly ifMade: Int32Array;
  /** State after a load is missed, by `state * loads + load`. */
  readonly ifMissed: Int32Array;
  /** For each load the states in which it may be lifted. */
  readonly allowing: readonly Int32Array[];
  /** 1 where a load may be lifted in a state, by `state * loads + load`. */
  readonly mayLift: Uint8Array;
};

type Rules = Pick<AttemptProblem, "loads" | "counts" | "rising" | "jump">;

/** Enumerates the states. State 0 is the start: nothing lifted yet. */
export function statesOf(rules: Rules): AttemptStates {
  const loads = rules.loads.length;
  const keepsBest = rules.counts === "best";
  const keepsLast = rules.rising || rules.jump !== undefined;
  const bests = [-1, ...(keepsBest ? rules.loads.keys() : [])];
  const all = bests.flatMap((best) =>
    [-1, ...(keepsLast ? rules.loads.keys() : [])]
      .filter((last) => !keepsLast || !keepsBest || (best === -1 ? true : last >= best))
      .map((last) => ({ best, last })),
  );
  const indexOf = new Map(all.map(({ best, last }, index) => [best * (loads + 1) + last, index]));
  const index = (best: number, last: number): number =>
    indexOf.get((keepsBest ? best : -1) * (loads + 1) + (keepsLast ? last : -1)) ?? 0;
  const follows = jumpsTo(rules);
  const mayLift = Uint8Array.from(
    all.flatMap((state) => rules.loads.map((_, load) => (isAllowed(state, load, rules, follows) ? 1 : 0))),
  );
  return {
    all,
    ifMade: Int32Array.from(rules.loads.keys(), (load) => index(load, load)),
    ifMissed: Int32Array.from(all.flatMap(({ best }) => rules.loads.map((_, load) => index(best, load)))),
    mayLift,
    allowing: rules.loads.map((_, load) =>
      Int32Array.from([...all.keys()].filter((state) => mayLift[state * loads + load] === 1)),
    ),
  };
}

function isAllowed(
  { best, last }: KnownState,
  load: number,
  { counts, rising, jump }: Rules,
  follows: readonly number[],
): boolean {
  if (counts === "best" && load <= best) return false;
  if (rising && load < last) return false;
  if (jump === undefined || last === -1) return true;
  return load === (best === last ? follows[last] : last);
}

/** For each load the one a fixed jump heavier, within 10 g; -1 where the bar cannot be loaded so. */
function jumpsTo({ loads, jump }: Rules): readonly number[] {
  if (jump === undefined) return [];
  return loads.map((from) => loads.findIndex((to) => Math.abs(to - from - jump) < 0.01));
}

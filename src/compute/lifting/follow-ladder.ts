import { both, chancesByDay, DAY_WEIGHTS, totalOf, without } from "./day-grid.ts";
import type { Belief } from "./day-strength.ts";
import type { LadderProblem } from "./ladder-problem.ts";

/** How a day can end: the heaviest made load (undefined for none), the misses of it, and how likely that is. */
export type Outcome = { readonly best: number | undefined; readonly misses: number; readonly chance: number };

/** What is lifted after the opener is missed. */
export type Ladder = {
  /** Loads while everything is made, ascending. */
  readonly loads: readonly [number, ...number[]];
  /** Loads after misses without any made lift, in order: first miss, second miss; the opener again where nothing lighter is allowed. */
  readonly lower: readonly number[];
};

/** What a row of the ladder says: chances given that the lifts before it were made. */
export type Rung = {
  readonly chance: number;
  /** Chance that all lifts before it are made. */
  readonly reach: number;
  /** What is lifted after it is missed, and how likely that is made; absent where nothing is. */
  readonly ifMissed?: { readonly load: number; readonly chance: number };
};

/** Where a day stands: the next rung, misses at it, misses in all, and what was made. `down`: loads below the opener taken. */
type Standing = {
  readonly rung: number;
  readonly inRow: number;
  readonly misses: number;
  readonly down: number;
  readonly best: number | undefined;
};

const START: Standing = { rung: 0, inRow: 0, misses: 0, down: 0, best: undefined };

const loadAt = ({ rung, down }: Standing, { loads, lower }: Ladder): number =>
  (down > 0 ? lower[down - 1] : loads[rung]) ?? 0;

/** After a made lift the next rung; after one below the opener the opener itself. */
const afterMade = (at: Standing, load: number, { loads }: Ladder): Standing => ({
  ...at,
  rung: load < loads[0] ? 0 : at.rung + 1,
  inRow: 0,
  down: 0,
  best: Math.max(at.best ?? 0, load),
});

/**
 * After a missed lift the same load again, and two misses in a row end the day. Without any made lift the loads below the
 * opener, until there are none left to try.
 */
function afterMissed(at: Standing, ladder: Ladder): Standing | undefined {
  const misses = at.misses + 1;
  if (at.best !== undefined) return at.inRow > 0 ? undefined : { ...at, inRow: 1, misses };
  return ladder.lower[at.down] === undefined ? undefined : { ...at, down: at.down + 1, inRow: 1, misses };
}

/**
 * Every way a day can end that follows a ladder, with its chance, when days are as `world` says. Days that stand alike are
 * carried on together, as how likely each strength of the day is by then, so the work grows with the slots and not with the
 * ways; exact up to the grid of strengths.
 */
export function outcomesOf(
  ladder: Ladder,
  { slots }: Pick<LadderProblem, "slots">,
  world: Belief,
): readonly Outcome[] {
  const ended = new Map<string, Outcome>();
  const end = ({ best, misses }: Pick<Standing, "best" | "misses">, weights: Float64Array): void => {
    const key = `${best}|${misses}`;
    ended.set(key, { best, misses, chance: (ended.get(key)?.chance ?? 0) + totalOf(weights) });
  };
  let standing = new Map([["", { at: START, weights: DAY_WEIGHTS }]]);
  for (const [number, slot] of slots.entries()) {
    const next: typeof standing = new Map();
    const go = (at: Standing, weights: Float64Array): void => {
      if (at.down === 0 && at.rung >= ladder.loads.length) {
        end(at, weights);
        return;
      }
      const key = `${at.rung}|${at.inRow}|${at.down}|${at.misses}|${at.best}`;
      const there = next.get(key);
      next.set(key, {
        at,
        weights: there ? there.weights.map((each, day) => each + (weights[day] ?? 0)) : weights,
      });
    };
    for (const { at, weights } of standing.values()) {
      const load = loadAt(at, ladder);
      const chances = chancesByDay(load, slot, number === 0, world);
      const missed = without(weights, chances);
      const then = afterMissed(at, ladder);
      go(afterMade(at, load, ladder), both(weights, chances));
      if (then) go(then, missed);
      else end({ ...at, misses: at.misses + 1 }, missed);
    }
    standing = next;
  }
  for (const { at, weights } of standing.values()) end(at, weights);
  return [...ended.values()];
}

/** The rows of a ladder on the days as believed. Each must have a slot. */
export function rungsOf(
  ladder: Ladder,
  { slots }: Pick<LadderProblem, "slots">,
  belief: Belief,
): readonly Rung[] {
  let weights = DAY_WEIGHTS;
  return ladder.loads.map((load, number) => {
    const [slot, next] = [slots[number], slots[number + 1]];
    if (!slot) throw new RangeError("a ladder has no more loads than slots");
    const reach = totalOf(weights);
    const chances = chancesByDay(load, slot, number === 0, belief);
    const missed = without(weights, chances);
    weights = both(weights, chances);
    const again = number === 0 ? ladder.lower[0] : load;
    const made = again === undefined || !next ? undefined : chancesByDay(again, next, false, belief);
    return {
      chance: totalOf(weights) / reach,
      reach,
      ...(again !== undefined &&
        made && { ifMissed: { load: again, chance: totalOf(both(missed, made)) / totalOf(missed) } }),
    };
  });
}

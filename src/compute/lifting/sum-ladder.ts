import type { ChosenLadder } from "./choose-ladder.ts";
import { both, chancesByDay, DAY_WEIGHTS, totalOf, without } from "./day-grid.ts";
import type { Outcome, Rung } from "./follow-ladder.ts";
import { heaviestNext, type LadderProblem, type Slot } from "./ladder-problem.ts";

/**
 * The loads of a lift once in every round where all made loads are added. Every round is lifted, so each takes the load
 * whose kilograms times its chance are highest by what is then believed, never lighter than the round before while all is
 * made, and no jump over the bounds. After a miss it is the best of the loads up to the one missed. The sum is normal
 * around its mean for each strength of the day.
 */
export function sumLadder(problem: LadderProblem): ChosenLadder {
  const { slots, belief } = problem;
  let weights: Float64Array = DAY_WEIGHTS;
  let from: number | undefined;
  const rungs: (Rung & { readonly load: number; readonly byDay: Float64Array })[] = [];
  for (const [number, slot] of slots.entries()) {
    const byDay = (load: number): Float64Array => chancesByDay(load, slot, number === 0, belief);
    const load = mostAdded(weights, allowed(from, number, slot, problem), byDay);
    const chances = byDay(load);
    const reach = totalOf(weights);
    const missed = without(weights, chances);
    const next = slots[number + 1];
    const again = next && afterMissed(missed, load, next, problem);
    weights = both(weights, chances);
    rungs.push({
      load,
      byDay: chances,
      lifted: reach,
      chance: totalOf(weights) / reach,
      made: totalOf(weights),
      ...(again && { ifMissed: again }),
    });
    from = load;
  }
  const [first = 0, ...rest] = rungs.map(({ load }) => load);
  return { loads: [first, ...rest], lower: [], rungs, outcomes: sums(rungs), rule: "programme" };
}

function allowed(
  from: number | undefined,
  number: number,
  slot: Slot,
  { loads, openers, limits }: LadderProblem,
): readonly number[] {
  if (from === undefined) return openers;
  const most = heaviestNext(from, number === 1, slot, limits);
  const found = loads.filter((load) => load >= from && load <= most);
  return found.length > 0 ? found : [from];
}

/** The load whose kilograms times its chance are highest; of equals the lighter. */
function mostAdded(
  weights: Float64Array,
  loads: readonly number[],
  byDay: (load: number) => Float64Array,
): number {
  const added = loads.map((load) => load * totalOf(both(weights, byDay(load))));
  return loads[added.indexOf(Math.max(...added))] ?? 0;
}

function afterMissed(
  missed: Float64Array,
  load: number,
  slot: Slot,
  problem: LadderProblem,
): Rung["ifMissed"] {
  const byDay = (each: number): Float64Array => chancesByDay(each, slot, false, problem.belief);
  const again = mostAdded(
    missed,
    problem.loads.filter((each) => each <= load),
    byDay,
  );
  return { load: again, chance: totalOf(both(missed, byDay(again))) / totalOf(missed) };
}

/** How the sum of all rounds may end: every sum that made and missed rounds come to, and its chance. */
function sums(
  rounds: readonly { readonly load: number; readonly byDay: Float64Array }[],
): readonly Outcome[] {
  return [...DAY_WEIGHTS].flatMap((weight, day) => {
    const chances = rounds.map(({ byDay }) => byDay[day] ?? 0);
    const misses = chances.reduce((sum, chance) => sum + 1 - chance, 0);
    let ways = new Map([[0, weight]]);
    rounds.forEach(({ load }, at) => {
      const made = chances[at] ?? 0;
      const next = new Map<number, number>();
      for (const [sum, chance] of ways) {
        for (const [to, share] of [
          [sum + load, made],
          [sum, 1 - made],
        ] as const)
          next.set(to, (next.get(to) ?? 0) + chance * share);
      }
      ways = next;
    });
    return [...ways].map(([best, chance]) => ({ best, misses, chance }));
  });
}

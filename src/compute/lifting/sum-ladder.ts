import type { ChosenLadder } from "./choose-ladder.ts";
import { both, chancesByDay, DAY_WEIGHTS, totalOf, without } from "./day-grid.ts";
import type { Outcome, Rung } from "./follow-ladder.ts";
import { heaviestNext, type LadderProblem, type Slot } from "./ladder-problem.ts";

/** Spreads from the mean at which a sum of many lifts is looked at, and their weights: three points of a normal curve. */
const POINTS = [
  { at: -Math.sqrt(3), weight: 1 / 6 },
  { at: 0, weight: 2 / 3 },
  { at: Math.sqrt(3), weight: 1 / 6 },
] as const;

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

/** How the sum of all rounds may end. */
function sums(
  rounds: readonly { readonly load: number; readonly byDay: Float64Array }[],
): readonly Outcome[] {
  return [...DAY_WEIGHTS].flatMap((weight, day) => {
    const chances = rounds.map(({ byDay }) => byDay[day] ?? 0);
    const mean = rounds.reduce((sum, { load }, at) => sum + load * (chances[at] ?? 0), 0);
    const spread = Math.sqrt(
      rounds.reduce(
        (sum, { load }, at) => sum + load ** 2 * (chances[at] ?? 0) * (1 - (chances[at] ?? 0)),
        0,
      ),
    );
    const misses = chances.reduce((sum, chance) => sum + 1 - chance, 0);
    return POINTS.map((point) => ({
      best: Math.max(0, mean + point.at * spread),
      misses,
      chance: weight * point.weight,
    }));
  });
}

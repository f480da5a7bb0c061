import type { ChosenLadder } from "./choose-ladder.ts";
import { both, chancesByDay, DAY_WEIGHTS, dayChances, totalOf, without } from "./day-grid.ts";
import type { Outcome, Rung } from "./follow-ladder.ts";
import { heaviestNext, type LadderProblem, type Slot } from "./ladder-problem.ts";

/**
 * The loads of a lift once in every round where all made loads are added. Every round is lifted, so each takes the load
 * whose kilograms times its chance are highest by what is then believed, never lighter than the round before while all is
 * made, and no jump over the bounds. After a miss it is the best of the loads up to the one missed, and that is
 * lifted from then on.
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
  return { loads: [first, ...rest], lower: [], rungs, outcomes: sums(rungs, problem), rule: "programme" };
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
  const lower = problem.loads.filter((each) => each <= load && each >= problem.lowestAfterMiss * load);
  const again = mostAdded(missed, lower, byDay);
  return { load: again, chance: totalOf(both(missed, byDay(again))) / totalOf(missed) };
}

type Round = Pick<Rung, "ifMissed"> & { readonly load: number; readonly byDay: Float64Array };

/** Sums that rounds come to, with their chances. */
type Sums = ReadonlyMap<number, number>;

/** How the sum of all rounds may end: for each strength of the day, and each round in which the first miss may fall. */
function sums(rounds: readonly Round[], { slots, belief }: LadderProblem): readonly Outcome[] {
  const { of } = dayChances(slots, belief);
  return [...DAY_WEIGHTS].flatMap((weight, day) => {
    let [made, chance] = [0, weight];
    const ways = rounds.flatMap(({ load, byDay, ifMissed }, at): readonly Outcome[] => {
      const here = byDay[day] ?? 0;
      // From the first miss on it is the lighter load in every round.
      const then = ifMissed?.load ?? 0;
      const chances = rounds.slice(at + 1).map((_, more) => of(at + 1 + more, then)[day] ?? 0);
      const misses = 1 + chances.reduce((sum, each) => sum + 1 - each, 0);
      const missed: Sums = new Map([[made, chance * (1 - here)]]);
      const ends = chances.reduce((all, each) => after(all, then, each), missed);
      chance *= here;
      made += load;
      return [...ends].map(([best, share]) => ({ best, misses, chance: share }));
    });
    return [...ways, { best: made, misses: 0, chance }];
  });
}

/** The sums after one round more, which is made with a chance. */
function after(before: Sums, load: number, chance: number): Sums {
  const next = new Map<number, number>();
  for (const [sum, share] of before) {
    next.set(sum + load, (next.get(sum + load) ?? 0) + share * chance);
    next.set(sum, (next.get(sum) ?? 0) + share * (1 - chance));
  }
  return next;
}

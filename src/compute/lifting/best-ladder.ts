import { both, DAY_WEIGHTS, type DayChances } from "./day-grid.ts";
import { type LadderProblem, nextLoads } from "./ladder-problem.ts";

/** Worth of the day by its strength, and the loads still to come while everything is made. */
type Value = { readonly worth: Float64Array; readonly rest: readonly number[] };

/**
 * The loads from an opener on with the highest expected worth inside the bounds: dynamic programming backwards over the
 * slots and the load made last.
 *
 * What is worth doing after a load is made depends on the strength of the day, of which the heaviest made load tells most:
 * so values are kept for each strength of the day, and a choice weighs them by how likely each is once that load is made. A
 * missed load is repeated and a second miss ends the day, as in the ladder that is printed. Of choices worth the
 * same the lighter wins. Grows with the slots times the loads.
 */
export function bestLadder(
  opener: number,
  problem: LadderProblem,
  chances: DayChances,
): readonly [number, ...number[]] {
  const { slots, worth } = problem;
  const none = Float64Array.from(DAY_WEIGHTS, () => 0);
  const chance = (slot: number, load: number): Float64Array =>
    slot < slots.length ? chances.of(slot, load) : none;
  const stopped = (load: number): Float64Array => new Float64Array(DAY_WEIGHTS.length).fill(worth(load));
  const loads = problem.loads.filter((load) => load >= opener);
  /** By slot: the value of standing before it with a load just made. */
  const values: Map<number, Value>[] = [];
  const valueOf = (slot: number, load: number): Value =>
    values[slot]?.get(load) ?? { worth: stopped(load), rest: [] };

  for (let slot = slots.length - 1; slot >= 1; slot--) {
    const at = slots[slot];
    const here = new Map<number, Value>();
    values[slot] = here;
    for (const made of at ? (slot === 1 ? [opener] : loads) : []) {
      const likely = both(DAY_WEIGHTS, chance(slot - 1, made));
      let best: Value = { worth: stopped(made), rest: [] };
      let most = weighed(likely, best.worth);
      for (const load of at ? nextLoads(made, made === opener, at, problem) : []) {
        const after = valueOf(slot + 1, load);
        const value = tried(
          { made: after.worth, madeAgain: valueOf(slot + 2, load).worth, none: worth(made) },
          chance(slot, load),
          chance(slot + 1, load),
        );
        const expected = weighed(likely, value);
        if (expected <= most + 1e-9) continue;
        most = expected;
        best = { worth: value, rest: [load, ...after.rest] };
      }
      here.set(made, best);
    }
  }
  return [opener, ...valueOf(1, opener).rest];
}

type Ends = { readonly made: Float64Array; readonly madeAgain: Float64Array; readonly none: number };

/** Value of a load by the strength of the day: made at once, made again after a miss, or missed twice. */
function tried(ends: Ends, chance: Float64Array, again: Float64Array): Float64Array {
  const values = new Float64Array(DAY_WEIGHTS.length);
  for (let day = 0; day < values.length; day++) {
    const [made, madeAgain] = [chance[day] ?? 0, again[day] ?? 0];
    const missed = (ends.madeAgain[day] ?? 0) * madeAgain + ends.none * (1 - madeAgain);
    values[day] = (ends.made[day] ?? 0) * made + missed * (1 - made);
  }
  return values;
}

function weighed(weights: Float64Array, values: Float64Array): number {
  let sum = 0;
  for (let day = 0; day < weights.length; day++) sum += (weights[day] ?? 0) * (values[day] ?? 0);
  return sum;
}

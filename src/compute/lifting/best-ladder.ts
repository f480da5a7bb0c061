import { both, chancesByDay, DAY_WEIGHTS, without } from "./day-grid.ts";
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
export function bestLadder(opener: number, problem: LadderProblem): readonly [number, ...number[]] {
  const { slots, belief, worth } = problem;
  const none = Float64Array.from(DAY_WEIGHTS, () => 0);
  const chances = slots.map(() => new Map<number, Float64Array>());
  const chance = (slot: number, load: number): Float64Array => {
    const at = slots[slot];
    const known = chances[slot]?.get(load);
    if (known || !at) return known ?? none;
    const found = chancesByDay(load, at, slot === 0, belief);
    chances[slot]?.set(load, found);
    return found;
  };
  const stopped = (load: number): Float64Array => Float64Array.from(DAY_WEIGHTS, () => worth(load));
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
        const again = chance(slot + 1, load);
        const missed = add(both(valueOf(slot + 2, load).worth, again), without(stopped(made), again));
        const value = add(both(after.worth, chance(slot, load)), without(missed, chance(slot, load)));
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

const add = (a: Float64Array, b: Float64Array): Float64Array => a.map((each, day) => each + (b[day] ?? 0));

const weighed = (weights: Float64Array, values: Float64Array): number =>
  weights.reduce((sum, each, day) => sum + each * (values[day] ?? 0), 0);

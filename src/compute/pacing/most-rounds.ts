import type { Movement } from "../../models/movement.ts";
import { seconds } from "../../models/quantity.ts";
import type { Part, Workout } from "../../models/workout.ts";
import { unroll } from "../unroll/unroll.ts";
import { roundNames } from "./round-names.ts";

/**
 * The last round of a part that anybody of any division can come to, as a reader counts rounds. Where the work has no end: a round
 * beyond which nobody gets in the time.
 */
export function mostRounds(workout: Workout, part: Part, movements: ReadonlyMap<string, Movement>): number {
  const numbers = workout.divisions.flatMap((division) => {
    const { items } = unroll(workout, part, { division, movements, startClock: seconds(0) });
    // Free work is cut into as many rounds as suit the athlete.
    if (items.some((item) => item.kind === "effort" && item.freeGroup !== undefined)) return [Infinity];
    return [...roundNames(items).values()].flatMap(({ number }) => number ?? []);
  });
  return numbers.reduce((most, number) => Math.max(most, number), 0);
}

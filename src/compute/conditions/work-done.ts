import type { LoggedResult } from "../../models/athlete.ts";
import type { Movement } from "../../models/movement.ts";
import { seconds } from "../../models/quantity.ts";
import type { Workout } from "../../models/workout.ts";
import { unroll } from "../unroll/unroll.ts";
import type { WorkDone } from "./usual-amounts.ts";

/**
 * The work of a logged result in the order done: the counted efforts of its part, unrolled for a division. Undefined where
 * the workout or part is not known any more, and for work without end whose score was not logged.
 */
export function workDone(
  result: LoggedResult,
  workouts: readonly Workout[],
  division: (workout: Workout) => string,
  movements: ReadonlyMap<string, Movement>,
): WorkDone | undefined {
  const workout = workouts.find((each) => each.id === result.workout);
  const part = workout?.parts.find((each) => each.name === result.part);
  if (workout === undefined || part === undefined) return undefined;
  const course = unroll(workout, part, {
    division: division(workout),
    movements,
    startClock: seconds(0),
  });
  if (course.endless && result.reps === undefined) return undefined;
  return course.items.flatMap((item) =>
    item.kind === "effort" && item.amount.kind === "counted"
      ? [{ movement: item.movement.id, amount: item.amount.amount, scores: item.scores }]
      : [],
  );
}

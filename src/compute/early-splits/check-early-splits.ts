import type { Course } from "../../models/course.ts";
import type { Fault } from "../../models/fault.ts";
import type { Movement } from "../../models/movement.ts";
import { seconds } from "../../models/quantity.ts";
import type { EarlyPerformance, Workout } from "../../models/workout.ts";
import { unroll } from "../unroll/unroll.ts";
import { readRounds } from "./read-rounds.ts";

/**
 * Early performances of a workout that cannot be read: more clocks than there is work, or a clock before the work could have
 * begun. One whose division is not said shapes everybody's plan, so it has to be readable in all of them.
 */
export function checkEarlySplits(
  workout: Workout,
  movements: ReadonlyMap<string, Movement>,
): readonly Fault[] {
  return workout.parts.flatMap((part) => {
    // Which lines there are does not follow from an athlete's lifts, and from the start of the part only how many of an endless list.
    const courseOf = (division: string) =>
      unroll(workout, part, { division, movements, bestLift: () => undefined, startClock: seconds(0) });
    return workout.early
      .filter((performance) => performance.part === part.name)
      .flatMap((performance) => faultOf(performance, workout.divisions, courseOf));
  });
}

function faultOf(
  performance: EarlyPerformance,
  divisions: readonly string[],
  courseOf: (division: string) => Course,
): readonly Fault[] {
  const asked = performance.division === undefined ? divisions : [performance.division];
  const readings = asked.map((division) => ({ division, read: readRounds(performance, courseOf(division)) }));
  const fitting = readings.find(({ read }) => read.ok);
  return readings
    .flatMap(({ read }) => (read.ok ? [] : [read.fault]))
    .slice(0, 1)
    .map((fault) =>
      fitting
        ? { ...fault, remedy: `Say the division it was done in, as in \`division: ${fitting.division}\`.` }
        : fault,
    );
}

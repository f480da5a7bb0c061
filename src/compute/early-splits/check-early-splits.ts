import type { Course } from "../../models/course.ts";
import type { EarlyTrouble } from "../../models/early-trouble.ts";
import type { Movement } from "../../models/movement.ts";
import { seconds } from "../../models/quantity.ts";
import type { EarlyPerformance, Workout } from "../../models/workout.ts";
import { unroll } from "../unroll/unroll.ts";
import { readRounds } from "./read-rounds.ts";
import { roundWork } from "./round-work.ts";
import { EARLY_SPLITS_FIXED } from "./fixed-constants.ts";

/**
 * Early performances of a workout that cannot be read: more clocks than there is work, or a clock before the work could have
 * begun. One whose division is not said shapes everybody's plan, so it has to be readable in all of them.
 */
export function checkEarlySplits(
  workout: Workout,
  movements: ReadonlyMap<string, Movement>,
): readonly EarlyTrouble[] {
  return workout.parts.flatMap((part) => {
    // Which lines there are does not follow from an athlete's lifts, and from the start of the part only how many of an endless list.
    const courseOf = (division: string) =>
      unroll(workout, part, { division, movements, startClock: seconds(0) });
    return workout.early
      .filter((performance) => performance.part === part.name)
      .flatMap((performance) => troublesOf(performance, workout.divisions, courseOf));
  });
}

/** Shares of the time a regular athlete would steadily take that no performance lies beyond, whoever and at whatever load. */
const [LEAST, MOST] = EARLY_SPLITS_FIXED.wildTimes.value;

/** A performance so far from anything possible that a unit must have slipped: minutes for hours, or a clock of something else. */
function wildOf(performance: EarlyPerformance, course: Course): EarlyTrouble | undefined {
  const { time, reps } = performance;
  const read = readRounds(performance, course);
  const works = roundWork(course);
  const seen = read.ok ? works.filter(({ round, fixed }) => fixed && read.seconds.has(round)) : [];
  const whole = time !== undefined && reps === undefined && !course.endless;
  const own = whole ? works : seen;
  const done = whole
    ? time
    : seen.reduce((sum, { round }) => sum + ((read.ok ? read.seconds.get(round) : undefined) ?? 0), 0);
  const usual = own.reduce((sum, { work }) => sum + work, 0);
  if (!(usual > 0) || !(done > 0) || own.some(({ fixed }) => !fixed)) return undefined;
  const ratio = done / usual;
  return ratio >= LEAST && ratio <= MOST ? undefined : { kind: "wild", performance, done, usual };
}

function troublesOf(
  performance: EarlyPerformance,
  divisions: readonly string[],
  courseOf: (division: string) => Course,
): readonly EarlyTrouble[] {
  const asked = performance.division === undefined ? divisions : [performance.division];
  const readings = asked.map((division) => ({ division, read: readRounds(performance, courseOf(division)) }));
  const [first] = asked;
  const wild = first === undefined ? undefined : wildOf(performance, courseOf(first));
  if (wild) return [wild];
  const fitting = readings.find(({ read }) => read.ok);
  return readings
    .flatMap(({ read }) => (read.ok ? [] : [read.trouble]))
    .slice(0, 1)
    .map((trouble) => (fitting ? { ...trouble, fitting: fitting.division } : trouble));
}

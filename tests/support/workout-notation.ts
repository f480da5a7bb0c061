import { unroll } from "../../src/compute/unroll/unroll.ts";
import type { Course, CourseEffort } from "../../src/models/course.ts";
import type { Checked } from "../../src/models/fault.ts";
import { kilograms, seconds } from "../../src/models/quantity.ts";
import { readWorkout } from "../../src/reading/read-workout.ts";
import { sayFaults } from "../../src/reading/say-fault.ts";
import type { Workout } from "../../src/models/workout.ts";
import { contentMovements } from "./content-movements.ts";

/** Front matter read as a workout; `title:` is added where the text has none. */
export function checkWorkout(yaml: string, path = "content/workouts/test.mdx"): Checked<Workout> {
  const titled = /^title:/m.test(yaml) ? yaml : `title: Test\n${yaml}`;
  return readWorkout({ path, text: `---\n${titled}\n---\n` }, contentMovements);
}

/** The workout of a text that must be sound; throws with its faults in words else. */
export function soundWorkout(yaml: string): Workout {
  const checked = checkWorkout(yaml);
  if (!checked.ok) throw new Error(sayFaults(checked.faults));
  return checked.value;
}

/** For whom a part is unrolled in a test. */
export type ForWhom = {
  readonly division?: string;
  readonly part?: string;
  readonly startClock?: number;
  readonly bodyMass?: number;
  /** Best lift in kilograms, the same for every lift. */
  readonly best?: number;
  readonly avoid?: string;
};

/** A part of a workout unrolled: the first part for the first division unless said otherwise. */
export function courseOf(workout: Workout, athlete: ForWhom = {}): Course {
  const part = workout.parts.find(({ name }) => athlete.part === undefined || name === athlete.part);
  if (part === undefined) throw new Error(`there is no part ${athlete.part ?? ""}`);
  const start = part.start.kind === "clock" ? part.start.at : 0;
  return unroll(workout, part, {
    division: athlete.division ?? workout.divisions[0] ?? "",
    movements: contentMovements,
    bestLift: (id) =>
      contentMovements.get(id)?.loading?.lift === true ? kilograms(athlete.best ?? 100) : undefined,
    startClock: seconds(athlete.startClock ?? start),
    ...(athlete.bodyMass === undefined ? {} : { bodyMass: kilograms(athlete.bodyMass) }),
    ...(athlete.avoid === undefined ? {} : { avoid: (movement) => movement.id === athlete.avoid }),
  });
}

export const effortsIn = (course: Course): readonly CourseEffort[] =>
  course.items.filter((item) => item.kind === "effort");

/**
 * An item as short as can be: `21 thruster 95 lb`, `250 metres row`, `max calories row until 120`, `rest 60`. Times are in
 * seconds.
 */
export function sayItem(item: Course["items"][number]): string {
  if (item.kind === "rest") {
    const { rest } = item;
    if (rest.kind === "until") return `rest until ${rest.clock}`;
    if (rest.kind === "as-long-as-work") return `rest ${rest.times} x work`;
    return `rest ${rest.kind === "at-least" ? "at least " : ""}${rest.time}${item.counted ? "" : " uncounted"}`;
  }
  const { amount, unit, load, movement, scores } = item;
  const counted = unit === "reps" ? "" : ` ${unit}`;
  const much = amount.kind === "counted" ? `${Math.round(amount.amount * 100) / 100}` : "max";
  const end =
    amount.kind === "for"
      ? ` for ${amount.time}`
      : amount.kind === "until" && amount.clock !== undefined
        ? ` until ${amount.clock}`
        : "";
  const pieces = load !== undefined && load.pieces > 1 ? `${load.pieces} x ` : "";
  const mass =
    load === undefined
      ? ""
      : load.athletesChoice
        ? " any load"
        : ` ${pieces}${load.written.value} ${load.written.unit}`;
  const isPlain = amount.kind === "counted" && unit === "reps" && scores === amount.amount;
  return `${much}${counted} ${movement.id}${mass}${end}${isPlain ? "" : ` (${scores})`}`;
}

export const sayCourse = (course: Course): readonly string[] => course.items.map(sayItem);

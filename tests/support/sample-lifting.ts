import type { Course, CourseEffort } from "../../src/models/course.ts";
import type { Movement } from "../../src/models/movement.ts";
import { kilograms, seconds } from "../../src/models/quantity.ts";
import type { Part, PartClock } from "../../src/models/workout.ts";
import type { LiftingInput } from "../../src/compute/lifting/lifting-input.ts";
import { kiloGym } from "./sample-gym.ts";
import { liftResult, movementMap, sampleAthlete, sampleLift } from "./sample-lifter.ts";

export const cleanAndJerk = sampleLift({
  id: "clean-and-jerk",
  taxes: { legs: 1, "hips-and-back": 0.6, press: 0.6 },
});

export type LineOf = {
  readonly pieces: readonly { readonly movement: Movement; readonly reps: number }[];
  readonly attempts?: number;
};

const effort = (movement: Movement, reps: number, more: Partial<CourseEffort>): CourseEffort => ({
  kind: "effort",
  index: 0,
  movement,
  alternatives: [],
  amount: { kind: "counted", amount: reps },
  unit: "reps",
  scores: reps,
  unbroken: false,
  tieBreak: false,
  joinedToNext: false,
  pass: { round: 1, roundOfSection: 1 },
  line: 1,
  ...more,
});

/** The course of a part in which each line is lifted for load. */
export const liftCourse = (...lines: readonly LineOf[]): Course => ({
  part: "b",
  endless: false,
  items: lines.flatMap(({ pieces, attempts }, line) =>
    pieces.map(({ movement, reps }, piece) =>
      effort(movement, reps, {
        line: line + 1,
        joinedToNext: piece < pieces.length - 1,
        lift: attempts === undefined ? {} : { attempts },
      }),
    ),
  ),
});

/** A lift at the athlete's choice of load once in each of some rounds that begin every so many seconds. */
export const roundsCourse = (movement: Movement, reps: number, rounds: number, every: number): Course => ({
  part: "b",
  endless: false,
  ends: seconds(rounds * every),
  items: Array.from({ length: rounds }, (_, round) => {
    const pass = { round: round + 1, of: rounds, roundOfSection: round + 1 };
    const load = {
      written: { value: 0, unit: "kg" },
      pieces: 1,
      total: kilograms(0),
      athletesChoice: true,
    } as const;
    return [
      effort(movement, reps, { load, pass, line: round + 1 }),
      {
        kind: "rest",
        index: 0,
        rest: { kind: "until", clock: seconds((round + 1) * every) },
        counted: true,
        pass,
      } as const,
    ];
  }).flat(),
});

export const liftPart = (clock: PartClock, more: Partial<Part> = {}): Part => ({
  name: "b",
  heading: "b",
  place: { file: "content/workouts/grindstone.mdx", line: 7, column: 5 },
  start: { kind: "clock", at: seconds(0) },
  clock,
  work: {},
  prescription: [],
  score: { kind: "load", restCounts: true },
  openingBar: "loaded",
  lateLift: "does-not-count",
  ...more,
});

/** A window of so many seconds. */
export const windowOfSeconds = (time: number): PartClock => ({
  kind: "max-load",
  length: { kind: "for", time: seconds(time) },
  order: "as-written",
});

/** A clean and jerk of 100 kg tested this month, in a window of six minutes, unless said otherwise. */
export const liftingInput = (more: Partial<LiftingInput> = {}): LiftingInput => ({
  part: liftPart(windowOfSeconds(360)),
  course: liftCourse({ pieces: [{ movement: cleanAndJerk, reps: 1 }] }),
  athlete: sampleAthlete([liftResult("clean-and-jerk", 100)]),
  movements: movementMap(cleanAndJerk),
  gym: kiloGym,
  date: "2026-11-25",
  opens: { mean: 0, spread: 0 },
  objective: "expected-lift",
  ...more,
});

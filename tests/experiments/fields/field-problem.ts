import type { PartInput } from "../../../src/compute/pacing/paced-part.ts";
import { settle } from "../../../src/compute/plan/settle.ts";
import { unroll } from "../../../src/compute/unroll/unroll.ts";
import type { Athlete } from "../../../src/models/athlete.ts";
import type { Course, CourseAmount, CourseItem } from "../../../src/models/course.ts";
import type { Data } from "../../../src/models/data.ts";
import { seconds } from "../../../src/models/quantity.ts";
import type { Workout } from "../../../src/models/workout.ts";

/** The day everybody is planned for. */
const DATE = "2026-11-26";

/** What the pacing of the first part of a workout is computed from, for one athlete with a fresh body. */
export function problemOf(athlete: Athlete, workout: Workout, data: Data): PartInput {
  const { context } = settle(athlete, workout, data, DATE);
  const { capacity, between, loadBar, seed, overrides } = context;
  const [part] = workout.parts;
  if (part === undefined) throw new Error("a workout without a part");
  const course = unroll(workout, part, {
    division: context.division,
    movements: context.library.movements,
    ...(athlete.bodyMass !== undefined && { bodyMass: athlete.bodyMass }),
    bestLift: (id) => context.bestLift(id)?.kilograms,
    startClock: seconds(0),
    avoid: () => false,
  });
  const { clock, score } = part;
  return { course, clock, score, capacity, between, loadBar, seed, overrides };
}

/** The same work with every clock of it (its end, its deadlines, its windows) at a factor. */
export function stretched(course: Course, factor: number): Course {
  const { ends, items } = course;
  return {
    ...course,
    items: items.map((item) => stretchItem(item, factor)),
    ...(ends === undefined ? {} : { ends: seconds(ends * factor) }),
  };
}

function stretchItem(item: CourseItem, factor: number): CourseItem {
  if (item.kind === "rest") return item;
  const { deadline, amount } = item;
  return {
    ...item,
    amount: stretchAmount(amount, factor),
    ...(deadline === undefined ? {} : { deadline: { ...deadline, clock: seconds(deadline.clock * factor) } }),
  };
}

function stretchAmount(amount: CourseAmount, factor: number): CourseAmount {
  if (amount.kind === "for") return { ...amount, time: seconds(amount.time * factor) };
  if (amount.kind === "until" && amount.clock !== undefined)
    return { ...amount, clock: seconds(amount.clock * factor) };
  return amount;
}

import type { Course } from "../../models/course.ts";
import type { PartPlan } from "../../models/plan/plan.ts";
import type { Part, Workout } from "../../models/workout.ts";
import { earlySplitsOf } from "../early-splits/early-splits-of.ts";
import { fitEarlySplits } from "../early-splits/fit-early-splits.ts";
import { shapeFrom } from "../early-splits/shape-from.ts";
import type { PaceShape } from "../pacing/paced-part.ts";

/** What early performances of a part add to its plan: the shape it is paced by, and what the brief says of them. */
export type EarlyShapes = {
  readonly shape?: PaceShape;
  readonly seen?: NonNullable<PartPlan["pacing"]>["earlySplits"];
};

/** Fits the early performances of a part; `courseOf` unrolls it as another division does it. */
export function earlyShapes(
  workout: Workout,
  part: Part,
  course: Course,
  courseOf: (division: string) => Course,
  overrides: Readonly<Record<string, number>>,
): EarlyShapes {
  const performances = workout.early.filter((each) => each.part === part.name);
  if (performances.length === 0) return {};
  const fit = fitEarlySplits(performances, course, { courseOf, overrides });
  const shape = shapeFrom(fit, course, { overrides });
  const seen = earlySplitsOf(fit, shape);
  return { shape, ...(seen !== undefined && { seen }) };
}

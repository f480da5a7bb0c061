import type { Course } from "../../models/course.ts";
import type { PartPlan } from "../../models/plan/plan.ts";
import type { Part, Workout } from "../../models/workout.ts";
import type { PacedPart } from "../pacing/paced-part.ts";

/** A planned part with what the parts after it and the rest of the plan need of it. */
export type PlannedPart = {
  readonly plan: PartPlan;
  readonly course: Course;
  readonly paced?: Extract<PacedPart, { kind: "paced" }>;
  /** Clock of the workout at which it ends, as planned, and how far that is off on other days (standard deviation). */
  readonly ends: { readonly clock: number; readonly spread: number };
};

/** The part right before and the rest since it ended. */
export type Before = { readonly part: PlannedPart; readonly rest: number };

/** A part of a workout, written out for the athlete. */
export type PartTask = { readonly workout: Workout; readonly part: Part; readonly course: Course };

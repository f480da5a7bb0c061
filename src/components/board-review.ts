import type { Review } from "../models/plan/review.ts";

/** How good the plans of one workout were, part by part. */
export type WorkoutReview = {
  readonly id: string;
  readonly title: string;
  readonly parts: readonly Review[];
};

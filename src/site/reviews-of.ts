import type { BoardPlan } from "../components/board-row.ts";
import type { WorkoutReview } from "../components/board-review.ts";
import { reviewPlans } from "../compute/debrief/review-plans.ts";

/** How good the plans of each workout were; a workout nobody has a result of is left out. */
export function reviewsOf(rows: readonly { readonly plan: BoardPlan }[]): readonly WorkoutReview[] {
  const workouts = Map.groupBy(rows, ({ plan }) => plan.workout.id);
  return [...workouts].flatMap(([id, own]) => {
    const parts = reviewPlans(own.map(({ plan }) => plan));
    return parts.length === 0 ? [] : [{ id, title: own[0]?.plan.workout.title ?? id, parts }];
  });
}

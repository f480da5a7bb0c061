import type { Review } from "../models/plan/review.ts";
import { sayReview, sayReviewed } from "../wording/review.ts";
import { wrap } from "./text-block.ts";

/** How good the plans of a workout were, part by part: what follows from it, then everybody's result. */
export function reviewText(reviews: readonly Review[]): string {
  return reviews
    .flatMap((review) => {
      const rows = review.results.map((result) => ({ name: result.name, ...sayReviewed(result) }));
      const widthOf = (of: "name" | "planned" | "done"): number =>
        Math.max(...rows.map((row) => row[of].length));
      return [
        ...(reviews.length > 1 ? [`Part ${review.part}`] : []),
        ...sayReview(review).flatMap((sentence) => wrap(sentence, 2, 4)),
        "",
        ...rows.map(
          ({ name, planned, done, standing }) =>
            `  ${name.padEnd(widthOf("name"))}  planned ${planned.padStart(widthOf("planned"))}  done ${done.padStart(widthOf("done"))}  ${standing}`,
        ),
        "",
      ];
    })
    .join("\n")
    .trimEnd();
}

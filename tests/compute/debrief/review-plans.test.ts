import { expect, it } from "vitest";
import { reviewPlans } from "../../../src/compute/debrief/review-plans.ts";
import { makePlan } from "../../../src/compute/make-plan.ts";
import { seconds } from "../../../src/models/quantity.ts";
import { demoData } from "../../support/demo-data.ts";

const data = demoData();
const date = "2026-11-29";
const workout = data.workouts.find(({ id }) => id === "long-quay");
if (!workout) throw new Error("the demonstration has long-quay");

/** Plans of those who finish, each with a logged time so many times the plan's, every line alike or as given. */
const plans = [1.1, 1.1, 2].flatMap((longer, at) => {
  const finishing = data.athletes.filter(
    (athlete) => makePlan({ athlete, workout, data, date, seen: [] }).parts[0]?.pacing?.ending === "finishes",
  );
  const athlete = finishing[at];
  const pacing = athlete && makePlan({ athlete, workout, data, date, seen: [] }).parts[0]?.pacing;
  if (!athlete || !pacing) return [];
  const time = seconds(pacing.result.target * longer);
  const result = {
    workout: workout.id,
    part: "a",
    time,
    splits: [],
    attempts: [],
    version: at === 2 ? ("scaled" as const) : ("prescribed" as const),
  };
  return [makePlan({ athlete: { ...athlete, results: [result] }, workout, data, date, seen: [] })];
});

it("planned against done for everybody, the bias of those who did it as prescribed", () => {
  const [review] = reviewPlans(plans);
  expect(review?.results).toHaveLength(3);
  expect(review).toMatchObject({ part: "a", counted: 2 });
  // Both took 1.1 times the plan.
  expect(review?.all.slower).toBeCloseTo(0.1, 2);
  expect(review?.size).toBeCloseTo(0.1, 2);
  expect(review?.levels.reduce((sum, { count }) => sum + count, 0)).toBe(2);
});

it("without results there is nothing to review", () => {
  expect(reviewPlans([])).toEqual([]);
});

import { expect, it } from "vitest";
import { countingOf } from "../../../src/compute/pacing/adding-up.ts";
import { samplePlans } from "../../support/sample-plan.ts";
import { makeCourse } from "../../support/courses.ts";
import { burpee, pullUp } from "../../support/movements.ts";

const rows = samplePlans.forTimeThenLift.parts[0]?.pacing?.rows ?? [];
const [first] = rows;
if (!first) throw new Error("the sample has rows");
const row = (index: number, movement: string, amount: number, scoreDone: number) => ({
  ...first,
  ...{ index, movement, amount, scoreDone },
});
const told = [
  row(0, "burpee", 5, 5),
  row(1, "pull-up", 9, 14),
  row(2, "burpee", 5, 19),
  row(3, "pull-up", 8, 27),
];
const { items } = makeCourse([
  [
    { move: burpee, amount: 5 },
    { move: pullUp, amount: 9, more: { accumulates: { group: 1, total: 40 } } },
  ],
]);

it("reps of one movement that add up are counted alone: 9 + 8 pull-ups, not 27 reps", () => {
  const { doneAt, counted } = countingOf({ items }, told);
  expect(counted?.plural).toBe(pullUp.plural);
  expect([doneAt(1), doneAt(3)]).toEqual([9, 17]);
});

it("otherwise the score is", () => {
  const plain = makeCourse([[{ move: burpee, amount: 5 }]]);
  const { doneAt, counted } = countingOf({ items: plain.items }, told);
  expect(counted).toBeUndefined();
  expect([doneAt(1), doneAt(3)]).toEqual([14, 27]);
});

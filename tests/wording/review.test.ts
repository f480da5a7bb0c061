import { expect, it } from "vitest";
import type { Review } from "../../src/models/plan/review.ts";
import { sayReview, sayReviewed } from "../../src/wording/review.ts";

const nb = (text: string): string => text.replaceAll("_", "\u00a0");
const review: Review = {
  part: "a",
  results: [],
  counted: 6,
  inside: 4,
  all: { slower: 0.07, count: 6 },
  size: 0.09,
  levels: [
    { level: "new", slower: 0.12, count: 3 },
    { level: "regular", slower: 0.01, count: 2 },
    { level: "elite", slower: -0.2, count: 1 },
  ],
  movements: [{ name: "burpee", slower: -0.05, count: 6 }],
};

it("a coach reads how many were inside, which way plans were off, for whom and in what", () => {
  expect(sayReview(review)).toEqual([
    nb(
      "4 of 6_results inside the range of the plan, where eight in ten should be; a plan was off by 9% on average.",
    ),
    "In the middle the work took 7% more time than planned.",
    "By level: new 12% more time (3).",
    "By movement, beside that: burpee 5% less time (6).",
    "Those who have not done it yet are planned with this already, as far as it is sure.",
  ]);
});

it("of one result nothing is concluded, of scaled ones nothing at all", () => {
  const one = {
    ...review,
    counted: 1,
    inside: 1,
    levels: [],
    movements: [],
    all: { slower: 0.01, count: 1 },
  };
  expect(sayReview(one)[1]).toBe(
    "Of a single result nothing follows for others: the work took as long as planned.",
  );
  expect(sayReview({ ...one, counted: 0 })).toEqual([
    "Only scaled versions were logged; they say nothing of the plans.",
  ]);
});

it("a result is told in its own unit", () => {
  const result = { name: "A", level: "new", planned: 321, done: 340, scaled: false, logged: {} } as const;
  expect(sayReviewed({ ...result, unit: "seconds", standing: "inside" })).toEqual({
    planned: "5:21",
    done: "5:40",
    standing: "inside the range",
  });
  expect(sayReviewed({ ...result, unit: "units", standing: "better", scaled: true })).toEqual({
    planned: "321",
    done: "340",
    standing: "scaled, not counted",
  });
});

it("rounds and reps are told apart, and what a cap came between as it was done", () => {
  const result = { name: "A", level: "new", planned: 262, done: 213, scaled: false, logged: {} } as const;
  // Rounds of 55: 262 are 4 and 42, 213 are 3 and 48.
  const circuit = {
    ...result,
    unit: "units",
    score: "rounds-and-reps",
    perRound: 55,
    standing: "worse",
  } as const;
  expect(sayReviewed(circuit)).toEqual({
    planned: nb("4_+_42"),
    done: nb("3_+_48"),
    standing: "worse than the range",
  });
  const capped = { ...result, unit: "seconds", done: 816, logged: { reps: 110 }, standing: "worse" } as const;
  expect(sayReviewed(capped).done).toBe(nb("110_reps"));
});

it("of lifts plans are off in load", () => {
  const lift = {
    name: "A",
    level: "new",
    unit: "kilograms",
    planned: 92.5,
    done: 85,
    standing: "inside",
    scaled: false,
    logged: {},
  } as const;
  // 92.5 planned and 85 done: 92.5 / 85 - 1 = 8.8% over, 1 - 85 / 92.5 = 8.1% less.
  const lifts = { ...review, results: [lift], all: { slower: 92.5 / 85 - 1, count: 6 } };
  expect(sayReview(lifts)[1]).toBe("In the middle the best lift was 8% less than planned.");
});

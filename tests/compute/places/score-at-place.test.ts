import { expect, it } from "vitest";
import { scoreAtPlace } from "../../../src/compute/places/score-at-place.ts";

const counts = (...values: readonly number[]) => values.map((value) => ({ value, count: 1 }));

it("more reps leave more of a field behind", () => {
  const field = { kind: "reps", finished: counts(60, 70, 80, 90), capped: [] } as const;
  expect([0.25, 0.5, 1].map((share) => scoreAtPlace(field, share))).toEqual([
    { reps: 60 },
    { reps: 70 },
    { reps: 90 },
  ]);
});

it("who finished work for time leaves everybody behind whom the cap stopped, the quickest all", () => {
  const field = { kind: "time", finished: counts(300, 400), capped: counts(90, 120) } as const;
  expect([0.25, 0.5, 0.75, 1].map((share) => scoreAtPlace(field, share))).toEqual([
    { reps: 90 },
    { reps: 120 },
    { time: 400 },
    { time: 300 },
  ]);
});

it("a field without scores has no places", () => {
  expect(scoreAtPlace({ kind: "time", finished: [], capped: [] }, 0.5)).toBeUndefined();
});

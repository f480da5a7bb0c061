import { expect, it } from "vitest";
import { leaveOutSlips } from "../../../src/reading/field-file/leave-out-slips.ts";
import type { Score } from "../../../src/reading/field-file/sort-scores.ts";

const many = (value: number, more: object = {}): Score & { readonly kind?: string } => ({
  side: "finished",
  value,
  count: 50,
  ...more,
});
const one = (value: number, more: object = {}) => many(value, { count: 1, ...more });
const left = (scores: readonly Score[]): readonly Score[] =>
  leaveOutSlips(scores).filter(({ side }) => side === "left-out");

it("more than five times what nearly all stay under is a slip", () => {
  expect(left([many(180), many(200), one(1001)])).toEqual([
    { side: "left-out", reason: "far from all others", count: 1 },
  ]);
  expect(left([many(180), many(200), one(1000)])).toEqual([]);
  expect(left([many(1), one(6)])).toEqual([]);
});

it("so is a time of less than a fifth of the usual, but few reps are not", () => {
  expect(left([many(1000, { kind: "time" }), one(199, { kind: "time" })])).toHaveLength(1);
  expect(left([many(1000), one(1)])).toEqual([]);
});

it("each side of the cap and each group is looked at by itself, and none of fewer than ten", () => {
  expect(left([many(100), many(1200, { side: "capped" })])).toEqual([]);
  expect(left([many(10, { group: "women" }), many(100, { group: "men" })])).toEqual([]);
  expect(left([one(10), one(11), one(200)])).toEqual([]);
});

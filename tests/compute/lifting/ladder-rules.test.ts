import { describe, expect, it } from "vitest";
import type { BestLift } from "../../../src/compute/capacity/best-lift.ts";
import { attemptConstants } from "../../../src/compute/lifting/attempt-constants.ts";
import { ladderRules } from "../../../src/compute/lifting/ladder-rules.ts";
import { kilograms } from "../../../src/models/quantity.ts";
import { cleanAndJerk } from "../../support/sample-lifting.ts";

const rulesOf = (best: Partial<BestLift>, reps = 1) =>
  ladderRules(
    {
      best: {
        kilograms: kilograms(100),
        spread: kilograms(5),
        doubt: 0,
        basis: "tested",
        from: { kind: "reps-at-load" },
        ...best,
      },
      bestForReps: 100,
      line: { pieces: [{ movement: cleanAndJerk, reps }] },
    },
    attemptConstants(),
  );

describe("how far a ladder may go", () => {
  // 95th percentiles of the best made of a day over the best of 24 months, public results.
  it("is 6.3 % over a best of many tries, 10 % over one of a few, 16.7 % over a single result", () => {
    expect(rulesOf({ known: "many-results" }).limits.most).toBe(1.063);
    expect(rulesOf({ known: "few-results" }).limits.most).toBe(1.1);
    expect(rulesOf({ known: "one-result" }).limits.most).toBe(1.167);
  });

  it("is that of many tries where the best is reckoned from something else", () => {
    expect(rulesOf({ basis: "related", known: "one-result" }).limits.most).toBe(1.063);
    expect(rulesOf({ basis: "level" }).limits.most).toBe(1.063);
  });

  it("is what the results give and no more for several reps", () => {
    expect(rulesOf({ known: "one-result" }, 5).limits.most).toBe(1);
  });

  it("is climbed faster where one result is known", () => {
    expect(rulesOf({ known: "many-results" }).steps).toEqual([0.08, 0.06, 0.04, 0.03]);
    expect(rulesOf({ known: "one-result" }).steps).toEqual([0.1, 0.06, 0.06, 0.04]);
    expect(rulesOf({ known: "one-result" }).limits.jumpOverBest).toBe(0.06);
  });
});

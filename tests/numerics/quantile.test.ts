import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { quantileSorted } from "../../src/numerics/quantile.ts";

describe("a quantile of a sorted sample", () => {
  it("agrees with the type 7 of Hyndman and Fan worked by hand", () => {
    // Ten values: the position of the quarter is 9 x 0.25 = 2.25 above the first, so 4 + 0.25 x (7 - 4) = 4.75.
    const sample = [1, 2, 4, 7, 11, 16, 22, 29, 37, 46];
    expect(quantileSorted(sample, 0.25)).toBeCloseTo(4.75, 12);
    expect(quantileSorted(sample, 0.5)).toBeCloseTo(13.5, 12);
    // 9 x 0.9 = 8.1: 37 + 0.1 x 9 = 37.9.
    expect(quantileSorted(sample, 0.9)).toBeCloseTo(37.9, 12);
  });

  it("takes the ends for shares at and beyond 0 and 1", () => {
    expect([0, -1, 1, 2].map((share) => quantileSorted([3, 5], share))).toEqual([3, 3, 5, 5]);
  });

  it("has no number for an empty sample", () => {
    expect(quantileSorted([], 0.5)).toBeNaN();
  });

  it("never falls as the share rises", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (values, one, other) => {
          const sample = [...values].sort((a, b) => a - b);
          const low = quantileSorted(sample, Math.min(one, other));
          const high = quantileSorted(sample, Math.max(one, other));
          expect(low).toBeLessThanOrEqual(high + 1e-9);
        },
      ),
    );
  });
});

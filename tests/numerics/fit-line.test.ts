import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitLine } from "../../src/numerics/fit-line.ts";

const equal = (points: readonly (readonly [number, number])[]) =>
  points.map(([x, y]) => ({ x, y, weight: 1 }));

describe("the weighted straight line", () => {
  it("fits four points as worked by hand", () => {
    // x 1 2 3 4, y 6 5 7 10: means 2.5 and 7, sum of squares of x 5, of products 7, so slope 1.4, intercept 3.5.
    // Left over: 1.1, -1.3, -0.7, 0.9; squares 1.21 + 1.69 + 0.49 + 0.81 = 4.2; variance 4.2 / 2 = 2.1.
    // Errors: slope sqrt(2.1 / 5) = 0.6481; intercept sqrt(2.1 x (1/4 + 2.5^2 / 5)) = 1.7748.
    const line = fitLine(equal([[1, 6], [2, 5], [3, 7], [4, 10]])); // prettier-ignore
    expect(line?.slope).toBeCloseTo(1.4, 12);
    expect(line?.intercept).toBeCloseTo(3.5, 12);
    expect(line?.residualVariance).toBeCloseTo(2.1, 12);
    expect(line?.slopeError).toBeCloseTo(0.6481, 4);
    expect(line?.interceptError).toBeCloseTo(1.7748, 4);
  });

  it("goes through two points and claims no error", () => {
    expect(fitLine(equal([[0, 1], [2, 5]]))).toEqual({ slope: 2, intercept: 1 }); // prettier-ignore
  });

  it("gives a point of weight two the pull of two points", () => {
    const once = fitLine([
      { x: 0, y: 0, weight: 1 },
      { x: 1, y: 3, weight: 2 },
      { x: 2, y: 2, weight: 1 },
    ]);
    const twice = fitLine(equal([[0, 0], [1, 3], [1, 3], [2, 2]])); // prettier-ignore
    expect(once?.slope).toBeCloseTo(twice?.slope ?? Number.NaN, 12);
    expect(once?.intercept).toBeCloseTo(twice?.intercept ?? Number.NaN, 12);
  });

  it("has no answer without two different x or without weight", () => {
    expect(fitLine([])).toBeUndefined();
    expect(fitLine(equal([[3, 1], [3, 2]]))).toBeUndefined(); // prettier-ignore
    // Equal arguments whose weighted mean is off in the last bit.
    const off = [0.3086, 0.2891, 0.1].map((weight, y) => ({ x: 180, y, weight }));
    expect(fitLine(off)).toBeUndefined();
    expect(fitLine([{ x: 0, y: 0, weight: 0 }, { x: 1, y: 1, weight: 0 }])).toBeUndefined(); // prettier-ignore
  });

  it("finds any exact line again, whatever the weights", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.array(fc.double({ min: 0.1, max: 9, noNaN: true }), { minLength: 2, maxLength: 8 }),
        (slope, intercept, weights) => {
          const line = fitLine(weights.map((weight, i) => ({ x: i, y: intercept + slope * i, weight })));
          expect(Math.abs((line?.slope ?? Number.NaN) - slope)).toBeLessThan(1e-9);
          expect(Math.abs((line?.intercept ?? Number.NaN) - intercept)).toBeLessThan(1e-9);
        },
      ),
    );
  });
});

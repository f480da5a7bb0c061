import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { goldenSection } from "../../src/numerics/golden-section.ts";

describe("golden-section search", () => {
  it("finds the bottom of a parabola wherever it lies", () => {
    fc.assert(
      fc.property(fc.double({ min: -5, max: 5, noNaN: true }), (bottom) => {
        const found = goldenSection((x) => (x - bottom) ** 2, -5, 5, 40);
        expect(Math.abs(found.at - bottom)).toBeLessThan(1e-6);
      }),
    );
  });

  it("shrinks the bracket to 0.618 of itself with each step", () => {
    // After 5 steps from a width of 10 the bracket is 10 x 0.618^5 = 0.90 wide, and the bottom lies in it.
    const found = goldenSection((x) => Math.abs(x - 2), -5, 5, 5);
    expect(Math.abs(found.at - 2)).toBeLessThan(0.91);
  });

  it("goes to the end of a slope", () => {
    expect(goldenSection((x) => x, 1, 3, 40).at).toBeCloseTo(1, 6);
    expect(goldenSection((x) => -x, 1, 3, 40).at).toBeCloseTo(3, 6);
  });
});

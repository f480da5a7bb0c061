import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lowestOf } from "../../src/numerics/lowest-of.ts";

describe("the bottom of a noisy valley", () => {
  it("is the bottom of an exact parabola, wherever the samples lie", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 0.95, noNaN: true }), (bottom) => {
        const samples = [0, 0.2, 0.5, 0.8, 1].map((x) => [x, 3 + 7 * (x - bottom) ** 2] as const);
        expect(lowestOf(samples)).toBeCloseTo(bottom, 9);
      }),
    );
  });

  it("lies between the samples by symmetry", () => {
    // Values 4, 1, 1, 4 at 0, 1, 3, 4 are symmetric about 2.
    expect(lowestOf([[0, 4], [1, 1], [3, 1], [4, 4]])).toBeCloseTo(2, 12); // prettier-ignore
  });

  it("follows the whole of the samples, not one that is off", () => {
    // A parabola about 0.5 with one sample 0.3 too low at the edge: the lowest sample is there, the valley is not.
    const samples = [0, 0.25, 0.5, 0.75, 1].map((x) => [x, (x - 0.5) ** 2 - (x === 0 ? 0.3 : 0)] as const);
    expect(lowestOf(samples)).toBeGreaterThan(0);
  });

  it("stays at the end of a slope and takes the lowest sample of a hill", () => {
    expect(lowestOf([[0, 0], [1, 1], [2, 4]])).toBeCloseTo(0, 12); // prettier-ignore
    expect(lowestOf([[0, 2], [1, 5], [2, 1]])).toBe(2); // prettier-ignore
    expect(lowestOf([[0, 1], [1, 1], [2, 1]])).toBe(0); // prettier-ignore
  });
});

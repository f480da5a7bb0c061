import { describe, expect, it } from "vitest";
import { interpolate } from "../../src/numerics/interpolate.ts";

describe("interpolation", () => {
  const xs = [0, 10, 15];
  const ys = [1, 3, -2];

  it("draws straight pieces between the points", () => {
    // Between (10, 3) and (15, -2) a step of 2 falls by 2.
    expect([5, 10, 12].map((x) => interpolate(xs, ys, x))).toEqual([2, 3, 1]);
  });

  it("holds the end values beyond the ends", () => {
    expect([-4, 99].map((x) => interpolate(xs, ys, x))).toEqual([1, -2]);
  });

  it("holds a single point everywhere", () => {
    expect(interpolate([7], [4], 100)).toBe(4);
  });
});

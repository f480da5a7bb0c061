import { describe, expect, it } from "vitest";
import { riegelDistance } from "../../../src/compute/capacity/riegel.ts";

describe("Riegel's law", () => {
  // Riegel 1981, exponent 1.06: who runs 5 km in 20:00 runs 10 km in 41:42; who runs 2 km in 7:00 runs 1600 m in 5:31.5.
  it.each([
    [5000, 1200, 2501.9, 10_000],
    [2000, 420, 331.5, 1600],
  ])("takes %i m in %i s to the distance in %f s", (distance, time, other, expected) => {
    expect(riegelDistance(distance, time, other, 1.06)).toBeCloseTo(expected, -0.3);
  });
});

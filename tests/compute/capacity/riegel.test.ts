import { describe, expect, it } from "vitest";
import { riegelDistance, riegelTime } from "../../../src/compute/capacity/riegel.ts";

describe("Riegel's law", () => {
  // Riegel 1981, exponent 1.06: 5 km in 20:00 is 10 km in 41:42; 2 km in 7:00 is 1600 m in 5:31.5.
  it.each([
    [1200, 5000, 10_000, 2501.9],
    [420, 2000, 1600, 331.5],
  ])("takes %i s over %i m to %i m", (time, distance, other, expected) => {
    expect(riegelTime(time, distance, other, 1.06)).toBeCloseTo(expected, 1);
  });

  it("turned round tells how far one gets in a time", () => {
    expect(riegelDistance(5000, 1200, 2501.9, 1.06)).toBeCloseTo(10_000, 0);
  });
});

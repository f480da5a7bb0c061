import { describe, expect, it } from "vitest";
import {
  paceOfPower,
  powerOfCalories,
  powerOfPace,
  secondsPerCalorie,
} from "../../../src/compute/capacity/erg-power.ts";

/** Worked out from the two open formulas P = 2.80 / p^3 and kcal/h = 4 x 0.8604 x P + 300: pace per 500 m, W, kcal/h, s/kcal, m/kcal. */
const ROWING = [
  [90, 480.1, 1952, 1.84, 10.2],
  [100, 350, 1505, 2.39, 12],
  [105, 302.3, 1341, 2.69, 12.8],
  [110, 263, 1205, 2.99, 13.6],
  [115, 230.1, 1092, 3.3, 14.3],
  [120, 202.5, 997, 3.61, 15],
  [125, 179.2, 917, 3.93, 15.7],
  [130, 159.3, 848, 4.24, 16.3],
  [140, 127.6, 739, 4.87, 17.4],
  [150, 103.7, 657, 5.48, 18.3],
] as const;

describe("the displays of ergs", () => {
  it.each(ROWING)("show %i s per 500 m as %f W and %i kcal/h", (pace, watts, perHour, perCalorie, metres) => {
    const power = powerOfPace("row", pace / 500);
    expect(power).toBeCloseTo(watts, 1);
    expect(3600 / secondsPerCalorie(power)).toBeCloseTo(perHour, -0.3);
    expect(secondsPerCalorie(power)).toBeCloseTo(perCalorie, 2);
    expect(secondsPerCalorie(power) / (pace / 500)).toBeCloseTo(metres, 1);
  });

  it("are the same for row and ski, and twice the metres on a bike erg", () => {
    expect(powerOfPace("ski", 0.24)).toBe(powerOfPace("row", 0.24));
    expect(powerOfPace("bike-erg", 0.12)).toBeCloseTo(powerOfPace("row", 0.24), 9);
  });

  it("lead back from power to pace and from calories to power", () => {
    expect(paceOfPower("row", powerOfPace("row", 0.231))).toBeCloseTo(0.231, 12);
    expect(powerOfCalories(secondsPerCalorie(187))).toBeCloseTo(187, 9);
  });

  it("count 300 calories an hour for no work", () => {
    expect(secondsPerCalorie(0)).toBe(12);
    expect(powerOfCalories(13)).toBe(0);
  });
});

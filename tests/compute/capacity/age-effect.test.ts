import { describe, expect, it } from "vitest";
import { AGE_CONSTANTS } from "../../../src/compute/capacity/age-constants.ts";
import { ageEffect } from "../../../src/compute/capacity/age-effect.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";

const constants = withOverrides(AGE_CONSTANTS, {});
const aged = (age: number) => ageEffect({ birthYear: 2026 - age }, "2026-11-26", constants);

describe("what age does to what is usual of a level", () => {
  it("is nothing up to 35, and of who states no year of birth", () => {
    expect(aged(24)).toEqual({ time: 1, set: 1, lift: 1 });
    expect(aged(35)).toEqual({ time: 1, set: 1, lift: 1 });
    expect(ageEffect({}, "2026-11-26", constants)).toEqual({ time: 1, set: 1, lift: 1 });
  });

  // Records of men over 100 to 400 m: 1.09 times as long at 50 as at 35, 1.16 at 60, 1.23 at 70 (Fair 2007).
  it("makes paces slower as masters' records of running fall, within 3 %", () => {
    expect(Math.abs(aged(50).time / 1.09 - 1)).toBeLessThan(0.03);
    expect(Math.abs(aged(60).time / 1.16 - 1)).toBeLessThan(0.03);
    expect(Math.abs(aged(70).time / 1.23 - 1)).toBeLessThan(0.03);
    expect(aged(60).set).toBeCloseTo(1 / aged(60).time, 12);
  });

  // Coefficients for masters' lifts: 1.13 at 50, 1.34 at 60 (McCulloch).
  it("makes lifts lower as masters' coefficients say, within 7 %", () => {
    expect(Math.abs(1.13 * aged(50).lift - 1)).toBeLessThan(0.07);
    expect(Math.abs(1.34 * aged(60).lift - 1)).toBeLessThan(0.07);
  });

  it("is carried no further than records fall evenly", () => {
    expect(aged(90)).toEqual(aged(75));
  });
});

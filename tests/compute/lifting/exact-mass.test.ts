import { describe, expect, it } from "vitest";
import { exactInKilograms, exactMass, fromExact } from "../../../src/compute/lifting/exact-mass.ts";
import { kg, lb } from "../../support/sample-gym.ts";

describe("an exact mass", () => {
  it("counts ten-micrograms: a kilogram is 100 000 000, a pound 45 359 237 by the agreement of 1959", () => {
    expect(exactMass(kg(1))).toBe(100_000_000);
    expect(exactMass(lb(1))).toBe(45_359_237);
    expect(exactMass(kg(1.25))).toBe(125_000_000);
  });

  it("reads back in either unit", () => {
    expect(fromExact(exactMass(lb(225)), "lb")).toEqual(lb(225));
    expect(exactInKilograms(exactMass(kg(102.5)))).toBe(102.5);
  });
});

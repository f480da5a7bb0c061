import { describe, expect, it } from "vitest";
import { BODY_MASS_CONSTANTS } from "../../../src/compute/capacity/body-mass-constants.ts";
import { massEffect } from "../../../src/compute/capacity/mass-effect.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { kilograms } from "../../../src/models/quantity.ts";
import { burpee, clean, pullUp, row, run } from "../../support/movements.ts";

const constants = withOverrides(BODY_MASS_CONSTANTS, {});
const man = (mass: number) => ({ sex: "male" as const, bodyMass: kilograms(mass) });

describe("what body mass does to a pace known by level only", () => {
  // 96 kg are 1.2 times the usual 80: 1.2^0.3 = 1.0562, 1.2^(1/3) = 1.0627, 1.2^(-2/9) = 0.9603.
  it("makes runs and reps with the body slower, and a rowing machine quicker, by the published powers", () => {
    expect(massEffect(man(96), run, constants).time).toBeCloseTo(1.0562, 4);
    expect(massEffect(man(96), burpee, constants).time).toBeCloseTo(1.0627, 4);
    expect(massEffect(man(96), row, constants).time).toBeCloseTo(0.9603, 4);
  });

  it("makes sets of what carries the body smaller: 10 pull-ups of a man of usual mass are 9.4 at 96 kg", () => {
    expect(10 * massEffect(man(96), pullUp, constants).set).toBeCloseTo(9.41, 2);
  });

  // The work of a calorie goes with mass to two thirds: 1.2^(-2/3) = 0.8855.
  it("of a machine counted in calories goes by power", () => {
    const inCalories = { ...row, counts: ["calories", "metres"] as const };
    expect(massEffect(man(96), inCalories, constants).time).toBeCloseTo(0.8855, 4);
  });

  it("leaves a bar alone, and who states no mass", () => {
    expect(massEffect(man(96), clean, constants)).toEqual({ time: 1, set: 1 });
    expect(massEffect({ sex: "male" }, run, constants)).toEqual({ time: 1, set: 1 });
  });

  it("is carried no further than people of one shape differ", () => {
    expect(massEffect(man(200), run, constants)).toEqual(massEffect(man(136), run, constants));
  });
});

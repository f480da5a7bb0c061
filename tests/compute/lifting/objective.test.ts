import { describe, expect, it } from "vitest";
import { inFieldUnit, objectiveOf } from "../../../src/compute/lifting/objective.ts";
import { kilograms } from "../../../src/models/quantity.ts";
import { kg, lb } from "../../support/sample-gym.ts";
import { sampleField } from "../../support/sample-field.ts";

describe("what a made load is worth", () => {
  it("is its kilograms where the expected lift is asked for, and nothing where nothing is made", () => {
    const { kind, worth } = objectiveOf({ objective: "expected-lift" }, false);
    expect(kind).toBe("expected-lift");
    expect([undefined, 100].map(worth)).toEqual([0, 100]);
  });

  it("is its place among the field where the expected place is asked for, read in the field's unit", () => {
    const field = sampleField({ 225: 3, 245: 2 }, { unit: "lb" });
    const { kind, worth } = objectiveOf({ objective: "expected-place", field }, false);
    expect(kind).toBe("expected-place");
    // 245 lb is 111.13 kg: nobody better, half of two equal
    expect(worth(245 * 0.45359237)).toBeCloseTo(-2 + 1.11, 2);
    // Behind all five and whoever makes any lift
    expect(worth(undefined)).toBe(-7);
  });

  it("grows a little with every kilogram among nobody, so that who is out of the field's reach still lifts", () => {
    const { worth } = objectiveOf({ objective: "expected-place", field: sampleField({ 225: 3 }) }, false);
    expect(worth(60)).toBeGreaterThan(worth(50));
    expect(worth(20)).toBeGreaterThan(worth(undefined));
  });

  it("is whether it reaches a load where that is asked for, with a little for every kilogram", () => {
    const { kind, worth, reach } = objectiveOf(
      { objective: "chance-of-load", objectiveLoad: kg(105) },
      false,
    );
    expect(kind).toBe("chance-of-load");
    expect(reach).toBe(105);
    expect(worth(105)).toBeCloseTo(1.0001, 9);
    expect(worth(100)).toBeLessThan(0.001);
    expect(worth(110)).toBeGreaterThan(worth(105));
  });

  it("is the expected lift where what is asked for needs what is not at hand, or where lifts are added", () => {
    const field = sampleField({ 100: 1 });
    expect(objectiveOf({ objective: "expected-place" }, false).kind).toBe("expected-lift");
    expect(
      objectiveOf({ objective: "expected-place", field: sampleField({ 600: 1 }, { kind: "time" }) }, false)
        .kind,
    ).toBe("expected-lift");
    expect(objectiveOf({ objective: "expected-place", field }, true).kind).toBe("expected-lift");
    expect(objectiveOf({ objective: "chance-of-load" }, false).kind).toBe("expected-lift");
    expect(objectiveOf({ objective: "chance-of-load", objectiveLoad: lb(225) }, true).kind).toBe(
      "expected-lift",
    );
  });

  it("reads kilograms in the unit of the field to a hundredth", () => {
    expect(inFieldUnit(kilograms(225 * 0.45359237), sampleField({}, { unit: "lb" }))).toBe(225);
    expect(inFieldUnit(kilograms(100), sampleField({}))).toBe(100);
  });
});

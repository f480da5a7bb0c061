import { describe, expect, it } from "vitest";
import { sayMass } from "../../../src/reading/quantities/mass.ts";
import { undoConversion } from "../../../src/reading/quantities/undo-conversion.ts";

describe("a mass that a sheet has converted", () => {
  it.each([
    // 120, 130 and 135 kg times 2.204
    [264.48, "lb", "120 kg"],
    [286.52000000000004, "lb", "130 kg"],
    [297.54, "lb", "135 kg"],
    // 50 kg times 2.2046 is 110.23, rounded to one decimal
    [110.2, "lb", "50 kg"],
    // 225 lb and 135 lb times 0.45359237 are 102.058 and 61.235
    [102.06, "kg", "225 lb"],
    [61.23, "kg", "135 lb"],
  ] as const)("%s %s was %s", (value, unit, original) => {
    const undone = undoConversion({ value, unit });
    expect(undone && sayMass(undone.mass)).toBe(original);
    const other = unit === "kg" ? "lb" : "kg";
    expect(undone?.told).toEqual({
      problem: `an odd number of ${unit} that is a round number of ${other}; read as ${original}`,
      readAs: original,
    });
  });

  it.each([
    [225, "lb"],
    [222.5, "lb"],
    [102.5, "kg"],
    [101.25, "kg"],
    [82.3, "kg"],
    [225.3, "lb"],
  ] as const)("%s %s stays as it is", (value, unit) => {
    expect(undoConversion({ value, unit })).toBeUndefined();
  });
});

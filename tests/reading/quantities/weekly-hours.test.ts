import { describe, expect, it } from "vitest";
import { readWeeklyHours } from "../../../src/reading/quantities/weekly-hours.ts";

const hours = (text: string) => {
  const reading = readWeeklyHours(text);
  return reading.ok ? reading.value : reading.severity;
};

describe("hours of training in a week", () => {
  it.each([
    ["9 h a week", 9],
    ["9 hours per week", 9],
    ["5 x 90 min a week", 7.5],
    ["6 × 1.5 h", 9],
    ["about 10 h", 10],
  ] as const)("%s is %s", (text, expected) => {
    expect(hours(text)).toBeCloseTo(expected, 9);
  });

  it("asks for the unit, and refuses what is no amount or more than a body does", () => {
    expect(hours("9")).toBe("question");
    expect(hours("a lot")).toBe("fault");
    expect(hours("8-10 h a week")).toBe("fault");
    expect(hours("80 h a week")).toBe("fault");
  });
});

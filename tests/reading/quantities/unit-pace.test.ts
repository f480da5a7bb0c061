import { describe, expect, it } from "vitest";
import { readUnitPace } from "../../../src/reading/quantities/unit-pace.ts";

const valueOf = (text: string): unknown => {
  const reading = readUnitPace(text);
  return reading.ok ? reading.value : reading.problem;
};

describe("the pace of a movement", () => {
  it.each([
    ["4.6", { seconds: 4.6, per: "unit" }],
    ["4,6", { seconds: 4.6, per: "unit" }],
    ["4.6 s", { seconds: 4.6, per: "unit" }],
    // 125 s over 500 m is a quarter of a second for each metre
    ["2:05 per 500 m", { seconds: 0.25, per: "metre" }],
    ["2:05/500m", { seconds: 0.25, per: "metre" }],
    // 300 s over 1000 m
    ["5:00 per km", { seconds: 0.3, per: "metre" }],
    ["5:00 per 1000 m", { seconds: 0.3, per: "metre" }],
  ])("%s", (text, pace) => {
    expect(valueOf(text)).toEqual(pace);
  });

  it.each([
    ["", "this is not a number of seconds"],
    ["quick", "this is not a number of seconds"],
    ["0", "a pace is more than nothing"],
    ["2:05 per 500", "the unit is missing"],
    ["2:65 per 500 m", "a minute has sixty seconds"],
    ["2:05 per 500 m per day", "this is not a pace"],
  ])("%s is refused", (text, problem) => {
    expect(valueOf(text)).toBe(problem);
  });

  it("says what is allowed, whichever half of it is wrong", () => {
    const allowed =
      "seconds for one unit, such as `4.6`, or a time over a distance, such as `2:05 per 500 m`";
    for (const text of ["quick", "quick per 500 m", "2:05 per day"]) {
      expect(readUnitPace(text)).toMatchObject({ ok: false, allowed });
    }
  });
});

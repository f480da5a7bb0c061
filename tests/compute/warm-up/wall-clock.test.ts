import { describe, expect, it } from "vitest";
import { minutesOfDay, wallClock } from "../../../src/compute/warm-up/wall-clock.ts";

describe("a wall clock", () => {
  it.each([
    ["18:40", 1120],
    ["6:05", 365],
    ["2026-11-26T18:40", 1120],
    [1120, 1120],
  ])("%s is minute %s of the day", (start, minutes) => {
    expect(minutesOfDay(start)).toBe(minutes);
  });

  it.each([
    [1120, "18:40"],
    [5, "00:05"],
    [-5, "23:55"],
    [1445, "00:05"],
  ])("minute %s reads %s", (minutes, clock) => {
    expect(wallClock(minutes)).toBe(clock);
  });

  it("refuses what is no time of day", () => {
    expect(() => minutesOfDay("soon")).toThrow(new RangeError('"soon" is no time of day such as 18:40'));
  });
});

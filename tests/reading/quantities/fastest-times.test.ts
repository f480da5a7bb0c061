import { describe, expect, it } from "vitest";
import { fastestTime } from "../../../src/reading/quantities/fastest-times.ts";

describe("the fastest time over a distance", () => {
  // Records as remembered, less 3 %: 2000 m rowed in 335 s, 400 m run in 43 s.
  it.each([
    ["row", 2000, 0.97 * 335],
    ["run", 400, 0.97 * 43],
    // Below the shortest and beyond the longest distance the speed of that one counts.
    ["run", 50, (0.97 * 9.58) / 2],
    ["run", 84_390, 2 * 0.97 * 7200],
  ])("%s %d m", (kind, metres, seconds) => {
    expect(fastestTime(kind, metres)).toBeCloseTo(seconds, 6);
  });

  it("grows with the distance, and its speed falls", () => {
    for (const kind of ["run", "row", "ski"]) {
      const distances = Array.from({ length: 60 }, (_, step) => 50 * 1.12 ** step);
      const times = distances.map((metres) => fastestTime(kind, metres) ?? 0);
      times.slice(1).forEach((time, at) => {
        expect(time).toBeGreaterThan(times[at] ?? 0);
      });
    }
  });

  it("is not known for other movements", () => {
    expect(fastestTime("sled", 100)).toBeUndefined();
  });
});

import { describe, expect, it } from "vitest";
import { attemptConstants } from "../../../src/compute/lifting/attempt-constants.ts";
import {
  attemptWindow,
  type ClockInput,
  lastStartSeconds,
  liftSeconds,
} from "../../../src/compute/lifting/lifting-clock.ts";

const constants = attemptConstants();
const clockOf = (more: Partial<ClockInput>) =>
  attemptWindow({ length: 360, reps: 1, earliest: 0, breath: 0, lateLift: false, ...more }, constants);

describe("the clock of a window", () => {
  it("by hand: six minutes, a lift of 10 s, the last start 12 s before the end", () => {
    // 360 - 2 - 10 = 348 s; rest of 60 to 240 s and lift of 10 s.
    expect(clockOf({})).toEqual({
      earliest: 0,
      breath: 0,
      lastStart: 348,
      gap: 70,
      longestGap: 250,
      lift: 10,
      attempts: 6,
    });
  });

  it("lets a lift begin until just before the end where it counts when made late", () => {
    expect(lastStartSeconds(360, { reps: 1, lateLift: true }, constants)).toBe(358);
    expect(lastStartSeconds(360, { reps: 1, lateLift: false }, constants)).toBe(348);
  });

  it("counts 4 s for each further rep", () => {
    expect(liftSeconds(9, constants)).toBe(42);
    expect(lastStartSeconds(360, { reps: 9, lateLift: false }, constants)).toBe(316);
  });

  it("keeps the rest the coach asks for, and the attempts the rules allow", () => {
    expect(clockOf({ smallestRest: 120, attempts: 3 })).toMatchObject({ gap: 130, attempts: 3 });
    expect(clockOf({ smallestRest: 300 })).toMatchObject({ gap: 310, longestGap: 310 });
  });

  it("has one attempt in a window just long enough for it, and none in a shorter one", () => {
    expect(clockOf({ length: 32, earliest: 20 })?.lastStart).toBe(20);
    expect(clockOf({ length: 31, earliest: 20 })).toBeUndefined();
  });

  it("puts a full rest between attempts where no clock runs", () => {
    const timeless = { reps: 1, earliest: 0, breath: 0, lateLift: false, attempts: 3 };
    expect(attemptWindow(timeless, constants)).toMatchObject({ gap: 190, longestGap: 190, attempts: 3 });
  });
});

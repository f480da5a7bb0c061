import { describe, expect, it } from "vitest";
import { ATTEMPT_CONSTANTS } from "../../../src/compute/lifting/attempt-constants.ts";
import {
  type ClockInput,
  lastStartSeconds,
  liftingClock,
  liftSeconds,
} from "../../../src/compute/lifting/lifting-clock.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";

const constants = withOverrides(ATTEMPT_CONSTANTS);
const clockOf = (more: Partial<ClockInput>) =>
  liftingClock({ length: 360, reps: 1, earliest: 0, mayWait: false, lateLift: false, ...more }, constants);

describe("the clock of a window", () => {
  it("by hand: six minutes in steps of 15 s, a lift of 10 s, the last start 12 s before the end", () => {
    // 360 - 2 - 10 = 348 s, in 24 steps 14.5 s, so 15 s; 348 / 15 = 23.2. Rest of 60 s and lift of 10 s: 5 steps.
    expect(clockOf({})).toEqual({
      step: 15,
      lift: 10,
      firsts: [0],
      gaps: [5, 6, 8, 11],
      lastStart: 23,
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

  it("lets tired athletes wait with the first attempt, and all get to the bar first", () => {
    expect(clockOf({ mayWait: true, earliest: 20 })?.firsts).toEqual([2, 4, 6, 8]);
  });

  it("keeps the rest the coach asks for, and the attempts the rules allow", () => {
    const clock = clockOf({ smallestRest: 120, attempts: 3 });
    expect((clock?.gaps[0] ?? 0) * 15 - 10).toBeGreaterThanOrEqual(120);
    expect(clock?.attempts).toBe(3);
  });

  it("has one attempt in a window just long enough for it, and none in a shorter one", () => {
    expect(clockOf({ length: 32, earliest: 20 })?.lastStart).toBe(4);
    expect(clockOf({ length: 31, earliest: 20 })).toBeUndefined();
  });

  it("puts a full rest between attempts where no clock runs", () => {
    const { length: _, ...timeless } = {
      length: 0,
      reps: 1,
      earliest: 0,
      mayWait: false,
      lateLift: false,
      attempts: 3,
    };
    expect(_).toBe(0);
    expect(liftingClock(timeless, constants)).toEqual({
      step: 190,
      lift: 10,
      firsts: [0],
      gaps: [1],
      lastStart: 2,
      attempts: 3,
    });
  });

  it("takes a step given, so that lifts sharing a window agree", () => {
    expect(clockOf({ step: 30 })?.step).toBe(30);
  });
});

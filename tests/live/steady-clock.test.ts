import { describe, expect, it } from "vitest";
import { openClock, readClock, type Reading, type SteadyClock } from "../../src/live/steady-clock.ts";

const HOUR = 3_600_000;
const seen = (wall: number, count: number): Reading => ({ wall, count, hidden: false });
const after = (readings: readonly Reading[], clock: SteadyClock = openClock()): SteadyClock =>
  readings.reduce(readClock, clock);

describe("the steady clock", () => {
  it("is the time of day while nothing happens", () => {
    expect(after([seen(1_000_000, 0), seen(1_060_000, 60_000)]).now).toBe(1_060_000);
  });

  it("goes on where the clock of the device is set back, or forward before everybody's eyes", () => {
    expect(after([seen(HOUR, 0), seen(0, 10_000)]).now).toBe(HOUR + 10_000);
    expect(after([seen(HOUR, 0), seen(3 * HOUR, 10_000)]).now).toBe(HOUR + 10_000);
  });

  it("takes the time of day where the page was out of sight and the count stood still: the device slept", () => {
    expect(after([seen(HOUR, 0), { wall: HOUR + 300_000, count: 2000, hidden: true }]).now).toBe(
      HOUR + 300_000,
    );
  });

  it("keeps what it knew of a wrong clock over a reload", () => {
    const { offset, now } = after([seen(HOUR, 0), seen(0, 10_000)]);
    expect(after([seen(60_000, 500)], openClock({ offset, now })).now).toBe(HOUR + 60_000 + 10_000);
  });

  it("never goes back, not even where the clock was set back while the page was closed", () => {
    const reopened = after([seen(1000, 0)], openClock({ offset: 0, now: HOUR }));
    expect(reopened.now).toBe(HOUR);
    expect(after([seen(61_000, 60_000)], reopened).now).toBe(HOUR + 60_000);
  });
});

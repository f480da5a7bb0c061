import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { attemptConstants } from "../../../src/compute/lifting/attempt-constants.ts";
import {
  attemptCounts,
  attemptStarts,
  type AttemptWindow,
  firstStart,
} from "../../../src/compute/lifting/attempt-times.ts";

const constants = attemptConstants();
const windowOf = (more: Partial<AttemptWindow> = {}): AttemptWindow => ({
  earliest: 20,
  breath: 132,
  lastStart: 408,
  gap: 70,
  longestGap: 250,
  lift: 10,
  attempts: 6,
  ...more,
});

describe("the first attempt", () => {
  it("waits for breath where four lifts still fit after it", () => {
    // 408 - 135 = 273 s: three gaps of 70 s and more.
    expect(firstStart(windowOf(), constants)).toBe(135);
  });

  it("gives up a fifth and a sixth lift for breath, never the fourth", () => {
    // From 20 s five fit (20 + 4 x 70 = 300 of 308); with breath at 135 s only three: so the latest that keeps four, 308 - 210 = 98.
    expect(firstStart(windowOf({ lastStart: 308 }), constants)).toBe(95);
    // Three fit from 20 s: all are kept, 188 - 140 = 48.
    expect(firstStart(windowOf({ lastStart: 188 }), constants)).toBe(45);
  });

  it("comes as soon as it may where there is time for one only just", () => {
    expect(firstStart(windowOf({ lastStart: 20 }), constants)).toBe(20);
    expect(firstStart(windowOf({ lastStart: 23, earliest: 22 }), constants)).toBe(22);
  });
});

describe("the numbers of attempts compared", () => {
  it("are all that fit, and one or two fewer, not under three", () => {
    expect(attemptCounts(windowOf(), 65)).toEqual([5, 4, 3]);
    expect(attemptCounts(windowOf({ lastStart: 1000 }), 65)).toEqual([6, 5, 4]);
    expect(attemptCounts(windowOf({ lastStart: 100 }), 65)).toEqual([1]);
  });

  it("are those allowed and no fewer where rests would not grow", () => {
    expect(attemptCounts(windowOf({ longestGap: 70, lastStart: 5000, attempts: 16 }), 0)).toEqual([16]);
  });
});

describe("the starts", () => {
  it("by hand: five from 0 to 348 s, the last rest longer than the first", () => {
    // 87 s on average; at most 2 x (87 - 70) = 34 s of growth: gaps of 70, 81.3, 92.7, 104.
    expect(attemptStarts(windowOf({ lastStart: 348 }), 0, 5, constants)).toEqual([0, 70, 150, 240, 345]);
  });

  it("always keep to the least and the longest rest, and use the window to its end", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 60, max: 1500 }),
        fc.integer({ min: 60, max: 200 }),
        fc.integer({ min: 1, max: 8 }),
        (lastStart, gap, attempts) => {
          const window = windowOf({ lastStart, gap, longestGap: gap + 180, attempts, breath: 0 });
          const first = firstStart(window, constants);
          for (const count of attemptCounts(window, first)) {
            const starts = attemptStarts(window, first, count, constants);
            const gaps = starts.slice(1).map((start, at) => start - (starts[at] ?? 0));
            for (const each of gaps) {
              expect(each).toBeGreaterThanOrEqual(gap);
              expect(each).toBeLessThanOrEqual(Math.max(gap + 180, Math.ceil(gap / 5) * 5));
            }
            const last = starts.at(-1) ?? 0;
            expect(last).toBeLessThanOrEqual(lastStart);
            if (count > 1 && Math.max(...gaps) < gap + 150) expect(last).toBeGreaterThan(lastStart - 10);
          }
        },
      ),
    );
  });
});

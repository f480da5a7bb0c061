import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sayClock, sayCountdown, sayDuration, sayMinutes, sayTimeRange } from "../../src/wording/time.ts";

describe("a time", () => {
  it.each([
    [0, "0:00"],
    [425, "7:05"],
    [59.5, "1:00"],
    [59.4, "0:59"],
    [3599.5, "1:00:00"],
    [3850, "1:04:10"],
    [-30, "−0:30"],
    [-0.2, "0:00"],
  ])("of %d s reads %s on a clock", (seconds, text) => {
    expect(sayClock(seconds)).toBe(text);
  });

  it.each([
    [6, "6\u00a0s"],
    [89, "89\u00a0s"],
    [89.6, "1:30"],
    [130, "2:10"],
  ])("lasting %d s is said %s", (seconds, text) => {
    expect(sayDuration(seconds)).toBe(text);
  });

  it("in minutes is whole and at least one", () => {
    expect([sayMinutes(20), sayMinutes(660), sayMinutes(90)]).toEqual([
      "1\u00a0min",
      "11\u00a0min",
      "2\u00a0min",
    ]);
  });

  it("before the start counts down in minutes", () => {
    expect([sayCountdown(2400), sayCountdown(20)]).toEqual(["−40", "0"]);
  });
});

describe("a range of times", () => {
  // By hand: 486.8 down to 485 is 8:05, 540.3 up to 545 is 9:05; 1301 falls to 1290, 1385 rises to 1395 by fifteens.
  it.each([
    [486.8, 540.3, "8:05–9:05"],
    [425, 450, "7:05–7:30"],
    [1301, 1385, "21:30–23:15"],
    [3661, 3900, "1:01:00–1:05:00"],
  ])("from %d to %d s is rounded outwards to %s", (faster, slower, text) => {
    expect(sayTimeRange(faster, slower)).toBe(text);
  });

  it("never becomes narrower than it was", () => {
    const seconds = (text: string): number =>
      text.split(":").reduce((sum, part) => sum * 60 + Number(part), 0);
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 9e3, noNaN: true }),
        fc.double({ min: 0, max: 900, noNaN: true }),
        (low, width) => {
          const [from = "", to = ""] = sayTimeRange(low, low + width).split("–");
          expect(seconds(from)).toBeLessThanOrEqual(low);
          expect(seconds(to)).toBeGreaterThanOrEqual(low + width);
        },
      ),
    );
  });
});

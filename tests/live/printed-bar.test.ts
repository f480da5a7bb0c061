import { describe, expect, it } from "vitest";
import {
  type PrintedLift as Lift,
  type PrintedNow,
  printedNow,
  type PrintedStep,
  type PrintedTap,
} from "../../src/live/printed-bar.ts";

const load = (kilograms: number): Lift["attempts"][number]["load"] => ({
  mass: { value: kilograms, unit: "kg" },
  kilograms,
  pieces: 1,
});
const after = (
  kilograms: number,
  clock: number,
  direction: "same" | "lower",
): Lift["attempts"][number]["afterMiss"] => ({
  kind: "lift",
  load: load(kilograms),
  direction,
  restBefore: 60,
  clock,
  chance: 0.8,
});
/** Attempts at 60, 65 and 70 kg from a clock on, two minutes apart: a missed opener is followed by 55 kg, a later miss by the same load. */
const liftFrom = (from: number): Lift =>
  ({
    attempts: [60, 65, 70].map((kilograms, at) => ({
      number: at + 1,
      clock: from + 120 * at,
      restBefore: at === 0 ? from : 110,
      load: load(kilograms),
      afterMiss:
        at === 2
          ? { kind: "stop" }
          : after(at === 0 ? 55 : kilograms, from + 120 * (at + 1), at === 0 ? "lower" : "same"),
    })),
  }) as unknown as Lift;

/** Taps of a lift at the printed clocks of that from `from` on. */
const tapped = (lift: number, from: number, ...made: readonly boolean[]): readonly PrintedTap[] =>
  made.map((each, at) => ({ lift, made: each, start: from + 120 * at }));
const at = (lifts: readonly Lift[], taps: readonly PrintedTap[], now = 0): PrintedNow =>
  printedNow(lifts, { taps, now, lastStart: Infinity });
const told = (now: PrintedStep): unknown => (now.kind === "lift" ? [now.load.kilograms, now.clock] : now.why);
const next = (...made: readonly boolean[]): unknown => told(at([liftFrom(60)], tapped(0, 60, ...made)));

// By hand from the rules on the brief: what the plan says after a miss, two misses in a row end it.
describe("the bar by the printed plan", () => {
  it("follows the ladder while everything is made", () => {
    expect(next()).toEqual([60, 60]);
    expect(next(true)).toEqual([65, 180]);
    expect(next(true, true)).toEqual([70, 300]);
    expect(next(true, true, true)).toBe("all-done");
  });

  it("takes what the plan says after a miss, never the next load of the ladder", () => {
    expect(next(false)).toEqual([55, 180]);
    expect(next(false, true)).toEqual([60, 300]);
    expect(next(true, false)).toEqual([65, 300]);
    expect(next(true, false, true)).toBe("all-done");
  });

  it("ends a lift after two misses in a row, and after a last miss", () => {
    expect(next(true, false, false)).toBe("two-misses");
    expect(next(false, false)).toBe("none-made");
  });

  it("gives the last try of the plan where nothing is made, and goes back the same way once it is", () => {
    const lift = { ...liftFrom(60), lastTry: { load: load(50), clock: 300 } };
    const longer = {
      ...lift,
      attempts: [...lift.attempts, { ...lift.attempts[2], clock: 420 }] as unknown as Lift["attempts"],
    };
    expect(told(at([longer], tapped(0, 60, false, false)))).toEqual([50, 300]);
    expect(told(at([longer], tapped(0, 60, false, false, true)))).toEqual([55, 420]);
    expect(told(at([longer], tapped(0, 60, false, false, false)))).toBe("none-made");
    // A load made and two missed after it: no last try.
    expect(told(at([longer], tapped(0, 60, true, false, false)))).toBe("two-misses");
  });

  it("says what comes after the lift at hand, made or missed", () => {
    const now = at([liftFrom(60)], tapped(0, 60, true));
    if (now.kind === "stop") throw new Error(now.why);
    expect([told(now.ifMade), told(now.ifMissed)]).toEqual([
      [70, 300],
      [65, 300],
    ]);
    const last = at([liftFrom(60)], tapped(0, 60, false, true));
    expect(last.kind === "lift" && told(last.ifMissed)).toBe("all-done");
  });

  it("goes on with the other lift where one has ended", () => {
    const lifts = [liftFrom(60), liftFrom(600)];
    expect(at(lifts, tapped(0, 60, true))).toMatchObject({ lift: 0, clock: 180 });
    expect(at(lifts, tapped(0, 60, false, false))).toMatchObject({
      lift: 1,
      clock: 600,
      load: { kilograms: 60 },
    });
  });
});

describe("a bar that runs late", () => {
  it("rests as the plan does after a lift that came late", () => {
    expect(told(at([liftFrom(60)], [{ lift: 0, made: true, start: 150 }], 160))).toEqual([65, 260]);
  });

  it("leaves its time to the next lift, but only once something is made", () => {
    const lifts = [liftFrom(60), liftFrom(420)];
    const late = (made: boolean): readonly PrintedTap[] => [{ lift: 0, made, start: 400 }];
    expect(at(lifts, late(true), 405)).toMatchObject({ lift: 1, clock: 420 });
    // Of the first lift nothing is made: its lighter load comes with the rest it needs, the other lift before it.
    expect(at(lifts, late(false), 405)).toMatchObject({ lift: 1, clock: 420 });
    expect(at(lifts, [...late(false), ...tapped(1, 420, true)], 425)).toMatchObject({ lift: 0, clock: 510 });
  });

  it("ends where no lift may start any more", () => {
    const day = { taps: tapped(0, 60, true), now: 350, lastStart: 348 };
    expect(printedNow([liftFrom(60)], day)).toEqual({ kind: "stop", why: "no-time" });
  });
});

describe("a bar in windows that come back", () => {
  const windowed = {
    ...liftFrom(0),
    attempts: liftFrom(0).attempts.map((attempt, index) => ({ ...attempt, window: index + 1 })),
    windows: [0, 120, 240].map((opens, index) => ({ index: index + 1, opens, closes: opens + 120 })),
  };

  it("goes on in the next window after one without a lift, with the load that was not lifted", () => {
    expect(told(at([windowed], [], 130))).toEqual([60, 120]);
    expect(told(at([windowed], [{ lift: 0, made: true, start: 130 }], 200))).toEqual([65, 240]);
    expect(told(at([windowed], [{ lift: 0, made: true, start: 10 }], 250))).toEqual([65, 240]);
  });

  it("repeats a missed load in the next window, and ends with the last", () => {
    const taps = [
      { lift: 0, made: true, start: 5 },
      { lift: 0, made: false, start: 125 },
    ];
    expect(told(at([windowed], taps, 130))).toEqual([65, 240]);
    expect(told(at([windowed], taps, 365))).toBe("no-time");
  });
});

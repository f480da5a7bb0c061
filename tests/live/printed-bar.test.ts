import { describe, expect, it } from "vitest";
import { type PrintedLift as Lift, printedNow } from "../../src/live/printed-bar.ts";

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
      load: load(kilograms),
      afterMiss:
        at === 2
          ? { kind: "stop" }
          : after(at === 0 ? 55 : kilograms, from + 120 * (at + 1), at === 0 ? "lower" : "same"),
    })),
  }) as unknown as Lift;

const tapped = (lift: number, ...made: readonly boolean[]) =>
  made.map((each) => ({ lift, load: 0, made: each }));
const next = (...made: readonly boolean[]) => {
  const now = printedNow([liftFrom(60)], tapped(0, ...made));
  return now.kind === "lift" ? [now.load.kilograms, now.clock] : now.why;
};

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

  it("says what comes after a miss at the clock that is next", () => {
    expect(printedNow([liftFrom(60)], tapped(0, false, true))).toMatchObject({ afterMiss: { kind: "stop" } });
    expect(printedNow([liftFrom(60)], tapped(0, true))).toMatchObject({
      afterMiss: { kind: "lift", load: { kilograms: 65 }, clock: 300 },
    });
  });

  it("goes on with the other lift where one has ended", () => {
    const lifts = [liftFrom(60), liftFrom(600)];
    expect(printedNow(lifts, tapped(0, true))).toMatchObject({ lift: 0, clock: 180 });
    expect(printedNow(lifts, tapped(0, false, false))).toMatchObject({
      lift: 1,
      clock: 600,
      load: { kilograms: 60 },
    });
  });
});

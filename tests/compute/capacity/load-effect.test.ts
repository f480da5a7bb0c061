import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CAPACITY_CONSTANTS } from "../../../src/compute/capacity/constants.ts";
import {
  loadOnCycle,
  loadOnRate,
  loadOnRhythm,
  repeatSeconds,
  repsOverReference,
  setAtLoad,
  setAtReference,
} from "../../../src/compute/capacity/load-effect.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";

const constants = withOverrides(CAPACITY_CONSTANTS);
const share = fc.double({ min: 0.05, max: 1.1, noNaN: true });

describe("the effect of a load", () => {
  it("is none at the reference load", () => {
    const same = { task: 0.45, reference: 0.45 };
    expect(loadOnCycle(same, constants)).toBe(1);
    expect(repsOverReference(same, constants)).toBe(1);
    expect(loadOnRhythm(same, constants)).toBe(1);
    expect(loadOnRate(same, { task: 43, reference: 43, body: 80 }, constants)).toBe(1);
  });

  it("slows a cycle as bar speed falls: from 40 to 80 % of the best lift by (1 - 0.24) / (1 - 0.48)", () => {
    expect(loadOnCycle({ task: 0.8, reference: 0.4 }, constants)).toBeCloseTo(0.76 / 0.52, 12);
  });

  it("takes reps from a set in the proportion of Epley's equation: 30 (1 / share - 1)", () => {
    // 50 % allows 30 reps by the equation, 75 % ten, 90 % three and a third.
    expect(repsOverReference({ task: 0.75, reference: 0.5 }, constants)).toBeCloseTo(1 / 3, 12);
    expect(repsOverReference({ task: 0.9, reference: 0.5 }, constants)).toBeCloseTo(1 / 9, 12);
  });

  it("makes sets longer in that proportion where lighter, and close in on a single where heavier", () => {
    expect(setAtLoad(10, 3, constants)).toBe(30);
    // A third of the reps of a set of ten: 1.15 + 8.85 / 3 = 4.1.
    expect(setAtLoad(10, 1 / 3, constants)).toBeCloseTo(4.1, 12);
    expect(setAtLoad(10, 0, constants)).toBe(1.15);
  });

  it("lengthens the wait between reps from touch-and-go to singles", () => {
    // By hand: 1 / (1 + exp(-(share - 0.65) / 0.12)) over 1 - share^12. At 40 % 0.1107 / 1.0000, at 65 % 0.5 / 0.9943, at 80 %
    // 0.7773 / 0.9313, at 90 % 0.8893 / 0.7176.
    const over = (task: number): number => loadOnRhythm({ task, reference: 0.4 }, constants);
    expect(over(0.65)).toBeCloseTo(0.5028 / 0.1107, 1);
    expect(over(0.8)).toBeCloseTo(0.8347 / 0.1107, 1);
    expect(over(0.9)).toBeCloseTo(1.2393 / 0.1107, 1);
  });

  it("brings an own best set at a load to the reference load and back", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.2, max: 60, noNaN: true }),
        fc.double({ min: 0.05, max: 6, noNaN: true }),
        (set, reps) => {
          const atReference = setAtReference(set, reps, constants);
          fc.pre(atReference >= constants.unbrokenLeast);
          expect(setAtLoad(atReference, reps, constants)).toBeCloseTo(set, 9);
        },
      ),
    );
  });

  it("says how far apart reps near the best are: by hand 8 exp((share - 0.75) / 0.132) of a snatch", () => {
    const apart = (id: string, task: number): number =>
      repeatSeconds({ id, loading: { held: "bar" } }, task, constants);
    // exp(0.15 / 0.132) = 3.1153, exp(0.11 / 0.132) = 2.3010, exp(0.06 / 0.132) = 1.5755.
    expect(apart("power-snatch", 0.75)).toBeCloseTo(8, 12);
    expect(apart("power-snatch", 0.9)).toBeCloseTo(24.92, 2);
    expect(apart("clean-and-jerk", 0.9)).toBeCloseTo(24.92, 2);
    expect(apart("power-clean", 0.9)).toBeCloseTo(18.41, 2);
    expect(apart("back-squat", 0.9)).toBeCloseTo(12.6, 2);
  });

  it("puts no distance between light reps, between steps, nor where it is no bar", () => {
    // 8 exp(-0.05 / 0.132) = 5.48 s is less than 5.5.
    expect(repeatSeconds({ id: "power-snatch", loading: { held: "bar" } }, 0.7, constants)).toBe(0);
    expect(repeatSeconds({ id: "front-rack-lunge", loading: { held: "bar" } }, 0.9, constants)).toBe(0);
    expect(repeatSeconds({ id: "dumbbell-snatch", loading: { held: "single" } }, 0.9, constants)).toBe(0);
    expect(repeatSeconds({ id: "snatch" }, 0.9, constants)).toBe(0);
  });

  it("makes a rep dearer by the work of it, three tenths of the body going up with the load", () => {
    // (24 + 80) / (24 + 40) = 1.625 at the same share of the best lift.
    const work = { task: 80, reference: 40, body: 80 };
    expect(loadOnRate({ task: 0.5, reference: 0.5 }, work, constants)).toBeCloseTo(1.625, 12);
  });

  it("never makes a heavier load faster, nor allow more reps", () => {
    fc.assert(
      fc.property(share, share, share, (one, other, reference) => {
        const [light, heavy] = [Math.min(one, other), Math.max(one, other)];
        const at = (task: number) => ({ task, reference });
        const kilograms = (task: number) => ({ task: 100 * task, reference: 100 * reference, body: 75 });
        expect(loadOnCycle(at(heavy), constants)).toBeGreaterThanOrEqual(loadOnCycle(at(light), constants));
        expect(repsOverReference(at(heavy), constants)).toBeLessThanOrEqual(
          repsOverReference(at(light), constants),
        );
        expect(loadOnRhythm(at(heavy), constants)).toBeGreaterThanOrEqual(loadOnRhythm(at(light), constants));
        expect(loadOnRate(at(heavy), kilograms(heavy), constants)).toBeGreaterThanOrEqual(
          loadOnRate(at(light), kilograms(light), constants),
        );
      }),
    );
  });
});

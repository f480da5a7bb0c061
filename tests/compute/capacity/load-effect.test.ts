import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CAPACITY_CONSTANTS } from "../../../src/compute/capacity/constants.ts";
import { loadOnCycle, loadOnRate, loadOnUnbroken } from "../../../src/compute/capacity/load-effect.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";

const constants = withOverrides(CAPACITY_CONSTANTS);
const share = fc.double({ min: 0.05, max: 1.1, noNaN: true });

describe("the effect of a load", () => {
  it("is none at the reference load", () => {
    const same = { task: 0.45, reference: 0.45 };
    expect(loadOnCycle(same, constants)).toBe(1);
    expect(loadOnUnbroken(same, constants)).toBe(1);
    expect(loadOnRate(same, { task: 43, reference: 43, body: 80 }, constants)).toBe(1);
  });

  it("slows a cycle as bar speed falls: from 40 to 80 % of the best lift by (1 - 0.24) / (1 - 0.48)", () => {
    expect(loadOnCycle({ task: 0.8, reference: 0.4 }, constants)).toBeCloseTo(0.76 / 0.52, 12);
  });

  it("takes reps from a set in the proportion of Epley's equation: 30 (1 / share - 1)", () => {
    // 50 % allows 30 reps by the equation, 75 % ten, 90 % three and a third.
    expect(loadOnUnbroken({ task: 0.75, reference: 0.5 }, constants)).toBeCloseTo(1 / 3, 12);
    expect(loadOnUnbroken({ task: 0.9, reference: 0.5 }, constants)).toBeCloseTo(1 / 9, 12);
  });

  it("makes a rep dearer by the work of it, half of the body going up with the load", () => {
    // (40 + 80) / (40 + 40) = 1.5 at the same share of the best lift.
    const work = { task: 80, reference: 40, body: 80 };
    expect(loadOnRate({ task: 0.5, reference: 0.5 }, work, constants)).toBeCloseTo(1.5, 12);
  });

  it("never makes a heavier load faster, nor allow more reps", () => {
    fc.assert(
      fc.property(share, share, share, (one, other, reference) => {
        const [light, heavy] = [Math.min(one, other), Math.max(one, other)];
        const at = (task: number) => ({ task, reference });
        const kilograms = (task: number) => ({ task: 100 * task, reference: 100 * reference, body: 75 });
        expect(loadOnCycle(at(heavy), constants)).toBeGreaterThanOrEqual(loadOnCycle(at(light), constants));
        expect(loadOnUnbroken(at(heavy), constants)).toBeLessThanOrEqual(
          loadOnUnbroken(at(light), constants),
        );
        expect(loadOnRate(at(heavy), kilograms(heavy), constants)).toBeGreaterThanOrEqual(
          loadOnRate(at(light), kilograms(light), constants),
        );
      }),
    );
  });
});

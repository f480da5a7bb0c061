import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildShare, type BuildShareInput } from "../../../src/compute/warm-up/build-share.ts";
import { WARM_UP_CONSTANTS } from "../../../src/compute/warm-up/constants.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { kilograms } from "../../../src/models/quantity.ts";
import { LEVELS, RECOVERIES } from "../../../src/models/vocabulary.ts";
import { athlete } from "../../support/hand-made.ts";
import { barbell, movement } from "../../support/sample-movements.ts";

// A regular of 75 kg lifts 75 kg of it.
const lift = movement({
  id: "clean-and-jerk",
  kind: "barbell",
  loading: barbell({ female: 43, male: 61, typical: 1, needsCatching: false }),
});
const numbers = withOverrides(WARM_UP_CONSTANTS);
const share = (more: Partial<BuildShareInput> = {}) =>
  buildShare(
    {
      athlete: athlete(),
      movement: lift,
      best: { kilograms: 75, basis: "tested" },
      workBefore: 240,
      ...more,
    },
    numbers,
  );

describe("the height of a build", () => {
  it("is the middle of the band where nothing asks for more or less", () => {
    expect(share()).toEqual({
      share: 0.75,
      why: { kind: "middle", reasons: [] },
    });
  });

  it("is higher for the strong, the fast recovering and where the lift comes first", () => {
    // 95 kg against 75 kg is 1.27 times a regular's
    expect(share({ best: { kilograms: 95, basis: "tested" } }).share).toBeCloseTo(0.77, 9);
    expect(share({ athlete: athlete({ recovery: "fast" }) }).share).toBeCloseTo(0.76, 9);
    expect(share({ workBefore: 0 })).toEqual({
      share: 0.77,
      why: { kind: "high", reasons: ["lift-comes-first"] },
    });
  });

  it("is lower for the weaker, the slow recovering, a guessed best, after long work, the young and the old", () => {
    expect(share({ best: { kilograms: 60, basis: "tested" } }).share).toBeCloseTo(0.73, 9);
    expect(share({ athlete: athlete({ recovery: "slow" }) }).share).toBeCloseTo(0.73, 9);
    expect(share({ workBefore: 600 }).share).toBeCloseTo(0.73, 9);
    expect(share({ best: { kilograms: 75, basis: "level" } }).share).toBeCloseTo(0.72, 9);
    expect(share({ age: 17 }).share).toBeCloseTo(0.73, 9);
    expect(share({ age: 60 }).share).toBeCloseTo(0.73, 9);
  });

  it("names the two largest reasons on its side", () => {
    const low = share({
      athlete: athlete({ recovery: "slow" }),
      best: { kilograms: 75, basis: "related" },
      workBefore: 600,
    });
    expect(low).toEqual({
      share: 0.7,
      why: { kind: "low", reasons: ["best-estimated", "recovers-slowly"] },
    });
  });

  it("goes by level where the body mass is not known", () => {
    const { bodyMass: _, ...unknown } = { ...athlete(), bodyMass: kilograms(75) };
    expect(_).toBe(75);
    const best = { kilograms: 120, basis: "tested" };
    expect(share({ athlete: unknown, best }).share).toBe(0.75);
    expect(share({ athlete: { ...unknown, level: "elite" }, best }).share).toBeCloseTo(0.77, 9);
    expect(share({ athlete: { ...unknown, level: "new" }, best }).share).toBeCloseTo(0.73, 9);
  });

  it("never leaves the band of 70 to 80 %", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...LEVELS),
        fc.constantFrom(...RECOVERIES),
        fc.integer({ min: 20, max: 200 }),
        fc.constantFrom("tested", "estimated", "related", "level"),
        fc.integer({ min: 0, max: 3600 }),
        fc.integer({ min: 8, max: 90 }),
        (level, recovery, best, basis, workBefore, age) => {
          const { share: found } = share({
            athlete: athlete({ level, recovery }),
            best: { kilograms: best, basis },
            workBefore,
            age,
          });
          expect(found).toBeGreaterThanOrEqual(0.7);
          expect(found).toBeLessThanOrEqual(0.8);
        },
      ),
    );
  });
});

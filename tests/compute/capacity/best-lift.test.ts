import { sayGrounds } from "../../../src/wording/grounds.ts";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BestLift, bestLift } from "../../../src/compute/capacity/best-lift.ts";
import type { Athlete, LiftResult } from "../../../src/models/athlete.ts";
import type { Movement } from "../../../src/models/movement.ts";
import { kilograms } from "../../../src/models/quantity.ts";
import { liftResult, movementMap, sampleAthlete, sampleLift } from "../../support/sample-lifter.ts";

const snatch = sampleLift({ id: "snatch" });
const clean = sampleLift({ id: "clean" });
// Shares of the snatch measured by Czaplicki et al. 2019, 16 young weightlifters (abstract).
const powerSnatch = sampleLift({
  id: "power-snatch",
  ratios: [{ of: "snatch", ratio: 0.88, confidence: "measured" }],
});
const hangSnatch = sampleLift({
  id: "hang-snatch",
  ratios: [{ of: "snatch", ratio: 0.95, confidence: "measured" }],
});
const hangPowerSnatch = sampleLift({
  id: "hang-power-snatch",
  ratios: [{ of: "snatch", ratio: 0.79, confidence: "measured" }],
});
const all = movementMap(snatch, clean, powerSnatch, hangSnatch, hangPowerSnatch);
const today = "2026-11-25";

function loadingOf({ loading }: Movement): NonNullable<Movement["loading"]> {
  if (!loading) throw new Error("a lift has a load");
  return loading;
}

const undatedResult: LiftResult = {
  movement: "clean",
  load: { value: 100, unit: "kg" },
  reps: 1,
  inReserve: 0,
  approximate: false,
};

const bestOf = (movement: Movement, ...lifts: readonly LiftResult[]): BestLift => {
  const best = bestLift(sampleAthlete(lifts), movement, all, today);
  if (!best) throw new Error(`no best of ${movement.id}`);
  return best;
};

describe("the best lift today", () => {
  it("is the single as tested, within three months of the test", () => {
    const best = bestOf(clean, liftResult("clean", 100));
    expect(best.kilograms).toBe(100);
    expect(best.basis).toBe("tested");
    expect(sayGrounds(best.from)).toBe("1 rep at 100 kg of 2026-11-01");
    // A competitor's best of 100 kg, the best of many: half way between 5.4 % at 80 kg and 4.5 % at 120.
    expect(best.spread).toBeCloseTo(4.95, 6);
    expect(best.known).toBe("many-results");
  });

  it("of a set of five is 116.5 % of its load, less sure than a single", () => {
    const best = bestOf(clean, liftResult("clean", 80, { reps: 5 }));
    expect(best.kilograms).toBeCloseTo(80 * 1.1645, 1);
    expect(best.basis).toBe("estimated");
    expect(best.spread / best.kilograms).toBeGreaterThan(0.054);
  });

  it("counts reps left in reserve as reps that could have been done", () => {
    const best = bestOf(clean, liftResult("clean", 80, { reps: 3, inReserve: 2 }));
    const toFailure = bestOf(clean, liftResult("clean", 80, { reps: 5 }));
    expect(best.kilograms).toBeCloseTo(toFailure.kilograms, 9);
    expect(best.spread).toBeGreaterThan(toFailure.spread);
    expect(sayGrounds(best.from)).toBe("3 reps at 80 kg with 2 left of 2026-11-01");
  });

  it("says nothing from a set of more than 20 reps", () => {
    expect(bestOf(clean, liftResult("clean", 40, { reps: 21 })).basis).toBe("level");
  });

  it("shrinks with the age of the result: 1.8 % a year after the first 90 days, ten per cent at most", () => {
    const old = bestOf(clean, liftResult("clean", 100, { date: "2025-08-25" })); // on Monday 455 days, one year past the 90
    expect(old.kilograms).toBeCloseTo(98.2, 6);
    expect(bestOf(clean, liftResult("clean", 100, { date: "2010-01-01" })).kilograms).toBeCloseTo(90, 6);
  });

  it("takes a result without a date as a year old and says so", () => {
    const best = bestOf(clean, undatedResult);
    expect(best.kilograms).toBeCloseTo(100 * (1 - (0.018 * 275) / 365), 6);
    expect(sayGrounds(best.from)).toBe("1 rep at 100 kg, without a date");
  });

  it("is surer the more results are known of somebody new: 8.4, 6.5 and 5 % of a lift without overhead catch", () => {
    const results = Array.from({ length: 4 }, () => liftResult("clean", 100));
    const spreads = [1, 2, 4].map(
      (count) =>
        bestLift(sampleAthlete(results.slice(0, count), { level: "new" }), clean, all, today)?.spread,
    );
    // 4.95 % times 1.69, 1.31 and 1.
    expect(spreads).toEqual([expect.closeTo(8.3655, 6), expect.closeTo(6.4845, 6), expect.closeTo(4.95, 6)]);
  });

  it("takes, of several results, the highest after its doubt is taken off", () => {
    const doubtful = liftResult("clean", 78, { reps: 10 }); // about 102 kg, but less sure
    expect(sayGrounds(bestOf(clean, liftResult("clean", 100), doubtful).from)).toBe(
      "1 rep at 100 kg of 2026-11-01",
    );
    const strong = liftResult("clean", 95, { reps: 5 });
    expect(sayGrounds(bestOf(clean, liftResult("clean", 100), strong).from)).toBe(
      "5 reps at 95 kg of 2026-11-01",
    );
  });

  it("of a style is its share of the lift: from a snatch of 100 kg 88, 95 and 79 kg (Czaplicki et al. 2019)", () => {
    const result = liftResult("snatch", 100);
    expect(bestOf(powerSnatch, result).kilograms).toBeCloseTo(88, 6);
    expect(bestOf(hangSnatch, result).kilograms).toBeCloseTo(95, 6);
    expect(bestOf(hangPowerSnatch, result).kilograms).toBeCloseTo(79, 6);
    expect(bestOf(powerSnatch, result).basis).toBe("related");
    expect(sayGrounds(bestOf(powerSnatch, result).from)).toBe("snatch: 1 rep at 100 kg of 2026-11-01");
  });

  it("of a lift follows from its style, and of a style from another through the lift", () => {
    const result = liftResult("power-snatch", 88);
    expect(bestOf(snatch, result).kilograms).toBeCloseTo(100, 6);
    expect(bestOf(hangSnatch, result).kilograms).toBeCloseTo(95, 6);
    expect(sayGrounds(bestOf(hangSnatch, result).from)).toBe(
      "snatch, from power snatch: 1 rep at 88 kg of 2026-11-01",
    );
    expect(bestOf(hangSnatch, result).spread / 95).toBeGreaterThan(bestOf(snatch, result).spread / 100);
  });

  it("is a share of body mass by level where nothing else is known, with a fifth of doubt", () => {
    const best = bestOf(clean);
    // 64 kg x 1 (competitor) x 0.8 (women's share of the typical)
    expect(best.kilograms).toBeCloseTo(51.2, 6);
    expect(best.spread).toBeCloseTo(10.24, 6);
    expect(best.basis).toBe("level");
    expect(best.from).toEqual({ kind: "level", level: "competitor", bodyMass: "stated" });
  });

  it("is possible without a body mass or a sex, with more doubt", () => {
    const known = new Set(["bodyMass", "sex"]);
    const unknown = Object.fromEntries(Object.entries(sampleAthlete([])).filter(([key]) => !known.has(key)));
    const best = bestLift(unknown as unknown as Athlete, clean, all, today);
    expect(best?.kilograms).toBeCloseTo(72.5 * 0.9, 6);
    expect(best?.spread).toBeCloseTo(72.5 * 0.9 * 0.25, 6);
    expect(best?.from).toEqual({ kind: "level", level: "competitor", bodyMass: "not-stated" });
  });

  it("does not exist for a movement of which a single means nothing", () => {
    const carry = sampleLift({ id: "carry", lift: false });
    expect(bestLift(sampleAthlete([]), carry, movementMap(carry), today)).toBeUndefined();
  });

  it("of a load that is worn lifts the body with it", () => {
    const pullUp = sampleLift({ id: "weighted-pull-up", styleOf: "pull-up" });
    const worn: Movement = {
      ...pullUp,
      loading: { ...loadingOf(pullUp), held: "worn" },
      easier: ["strict-pull-up"],
    };
    const lifter = {
      ...sampleAthlete([liftResult("weighted-pull-up", 20, { reps: 5 })]),
      bodyMass: kilograms(80),
    };
    // Five reps at 100 kg in all are 116.45 kg for one, 36.45 of them added; a fifth more of 20 kg alone would be 23.3.
    const best = bestLift(lifter, worn, all, today);
    expect(best?.kilograms).toBeCloseTo(36.45, 1);
    // The doubt is that of all that is lifted: 4.95 % of it, and more for reps.
    expect(best?.spread).toBeGreaterThan(0.0495 * 116);
    const single = { ...lifter, lifts: [liftResult("strict-pull-up", 25, { added: true })] };
    expect(bestLift(single, worn, all, today)).toMatchObject({
      kilograms: 25,
      from: { kind: "lift", result: { added: true, load: { value: 25, unit: "kg" } } },
    });
    const other = { ...lifter, lifts: [liftResult("bar-dip", 25, { added: true })] };
    expect(bestLift(other, worn, all, today)?.basis).toBe("level");
  });

  it("follows the coach's own constants", () => {
    const old = sampleAthlete([liftResult("clean", 100, { date: "2025-08-27" })]);
    expect(bestLift(old, clean, all, today, { lossPerYear: 0 })?.kilograms).toBe(100);
  });

  it("never falls when the load or the reps of the only result rise", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 30, max: 200 }),
        fc.integer({ min: 1, max: 9 }),
        fc.integer({ min: 0, max: 20 }),
        (load, reps, more) => {
          const best = bestOf(clean, liftResult("clean", load, { reps }));
          expect(bestOf(clean, liftResult("clean", load + more, { reps })).kilograms).toBeGreaterThanOrEqual(
            best.kilograms,
          );
          expect(bestOf(clean, liftResult("clean", load, { reps: reps + 1 })).kilograms).toBeGreaterThan(
            best.kilograms,
          );
        },
      ),
    );
  });
});

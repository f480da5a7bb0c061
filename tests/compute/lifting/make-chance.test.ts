import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeChance, ratioOfNormals, updateBelief } from "../../../src/compute/lifting/make-chance.ts";
import { normalBelow } from "../../../src/numerics/normal.ts";

const belief = { mean: 100, spread: 6, noise: 8 };

/** The same by brute force: strengths of the day on a fine grid, each weighed by the chance of what happened. */
function byGrid(
  load: number,
  made: boolean,
  strength: number,
): { mean: number; spread: number; chance: number } {
  const points = Array.from({ length: 4001 }, (_, at) => -8 + at / 250);
  const days = points.map((z) => {
    const likely = normalBelow((strength * (belief.mean + belief.spread * z) - load) / belief.noise);
    return {
      day: belief.mean + belief.spread * z,
      weight: Math.exp((-z * z) / 2) * (made ? likely : 1 - likely),
      prior: Math.exp((-z * z) / 2),
    };
  });
  const total = days.reduce((sum, { weight }) => sum + weight, 0);
  const mean = days.reduce((sum, { day, weight }) => sum + day * weight, 0) / total;
  const variance = days.reduce((sum, { day, weight }) => sum + (day - mean) ** 2 * weight, 0) / total;
  return {
    mean,
    spread: Math.sqrt(variance),
    chance: total / days.reduce((sum, { prior }) => sum + prior, 0),
  };
}

describe("the chance of a load", () => {
  it("is even at the load made half the time, and 0.84 one spread below it (6 and 8 kg make 10)", () => {
    expect(makeChance(100, belief)).toBe(0.5);
    expect(makeChance(90, belief)).toBeCloseTo(0.8413, 4);
  });

  it("falls with the load and with strength lost", () => {
    expect(makeChance(101, belief)).toBeLessThan(makeChance(100, belief));
    expect(makeChance(100, belief, 0.95)).toBeLessThan(makeChance(100, belief));
  });

  it.each([
    [90, 1],
    [100, 0.93],
    [110, 1],
  ])("of %f kg at %f of strength is the mean over all days", (load, strength) => {
    expect(makeChance(load, belief, strength)).toBeCloseTo(byGrid(load, true, strength).chance, 5);
  });
});

describe("the belief after an attempt", () => {
  it.each([
    [90, true, 1],
    [100, true, 0.93],
    [100, false, 1],
    [85, false, 0.95],
    [112, true, 1],
  ])(
    "at %f kg, made %s, at %f of strength has the mean and spread of the exact posterior",
    (load, made, strength) => {
      const after = updateBelief(belief, load, made, strength);
      const exact = byGrid(load, made, strength);
      expect(after.mean).toBeCloseTo(exact.mean, 4);
      expect(after.spread).toBeCloseTo(exact.spread, 4);
      expect(after.noise).toBe(belief.noise);
    },
  );

  it("moves little: an even attempt teaches a third of what could be known here", () => {
    // gain = 36/10 = 3.6 kg; at even odds the mean moves by 3.6 x 0.798.
    expect(updateBelief(belief, 100, true).mean).toBeCloseTo(100 + 3.6 * 0.7979, 3);
  });

  it("goes up with a make, down with a miss, and is never less sure", () => {
    fc.assert(
      fc.property(fc.double({ min: 60, max: 140, noNaN: true }), (load) => {
        const made = updateBelief(belief, load, true);
        const missed = updateBelief(belief, load, false);
        expect(made.mean).toBeGreaterThanOrEqual(belief.mean);
        expect(missed.mean).toBeLessThanOrEqual(belief.mean);
        expect(Math.max(made.spread, missed.spread)).toBeLessThanOrEqual(belief.spread);
      }),
    );
  });

  it("stays a number where the attempt was all but impossible", () => {
    expect(ratioOfNormals(-50)).toBe(50);
    expect(updateBelief(belief, 1000, true).mean).toBeGreaterThan(100);
  });
});

import { describe, expect, it } from "vitest";
import { makeChance } from "../../../src/compute/lifting/make-chance.ts";
import { normalBelow } from "../../../src/numerics/normal.ts";

const belief = { mean: 100, spread: 6, noise: 8, slip: 0 };

/** The same by brute force: strengths of the day on a fine grid. */
function byGrid(load: number, strength: number): number {
  const points = Array.from({ length: 4001 }, (_, at) => -8 + at / 250);
  const weights = points.map((z) => Math.exp((-z * z) / 2));
  const made = points.map((z, at) => {
    const day = strength * (belief.mean + belief.spread * z);
    return (weights[at] ?? 0) * normalBelow((day - load) / belief.noise);
  });
  const sum = (values: readonly number[]): number => values.reduce((all, each) => all + each, 0);
  return sum(made) / sum(weights);
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
    expect(makeChance(load, belief, strength)).toBeCloseTo(byGrid(load, strength), 5);
  });
});

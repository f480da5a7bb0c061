import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalBelow, normalDensity, normalQuantile } from "../../src/numerics/normal.ts";

describe("the normal distribution", () => {
  // Values of the error function's tables (Abramowitz and Stegun, table 26.1, 15 decimals).
  it.each([
    [0, 0.5],
    [1, 0.841344746068543],
    [2, 0.977249868051821],
    [3, 0.99865010196837],
  ])("lies below %f with the tabulated chance %f", (x, chance) => {
    expect(normalBelow(x)).toBeCloseTo(chance, 13);
    expect(normalBelow(-x)).toBeCloseTo(1 - chance, 13);
  });

  it("has the tabulated chance far out in the tail", () => {
    // Q(5) = 2.866515719e-7 and Q(8) = 6.220960574e-16 (same tables, table 26.2 and its continuation).
    expect(normalBelow(-5) / 2.866515719e-7).toBeCloseTo(1, 8);
    expect(normalBelow(-8) / 6.220960574e-16).toBeCloseTo(1, 7);
    expect(normalBelow(-40)).toBe(0);
    expect(normalBelow(40)).toBe(1);
  });

  it("is 0.3989422804 high in the middle", () => {
    expect(normalDensity(0)).toBeCloseTo(0.3989422804, 10);
  });

  // Percentage points of any statistics table.
  it.each([
    [0.975, 1.959963984540054],
    [0.9, 1.2815515655446004],
    [0.5, 0],
    [0.001, -3.090232306167813],
  ])("has the quantile of %f at %f", (chance, x) => {
    expect(normalQuantile(chance)).toBeCloseTo(x, 10);
  });

  it("has its end quantiles at infinity", () => {
    expect([normalQuantile(0), normalQuantile(1)]).toEqual([-Infinity, Infinity]);
  });

  it("leads back from the quantile to the chance", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }), (chance) => {
        expect(Math.abs(normalBelow(normalQuantile(chance)) - chance)).toBeLessThan(1e-12);
      }),
    );
  });
});

import { describe, expect, it } from "vitest";
import { normalBelow, normalDensity } from "../../src/numerics/normal.ts";
import { quickNormalBelow, quickNormalRatio } from "../../src/numerics/normal-table.ts";

const points = Array.from({ length: 1201 }, (_, at) => -6 + at / 100 + 0.003);

describe("the normal distribution from a table", () => {
  it("differs from the exact one by less than 0.00002", () => {
    for (const z of points) expect(Math.abs(quickNormalBelow(z) - normalBelow(z))).toBeLessThan(2e-5);
  });

  it("is 0 and 1 beyond six deviations", () => {
    expect([quickNormalBelow(-7), quickNormalBelow(7)]).toEqual([0, 1]);
  });
});

describe("density over distribution from a table", () => {
  it("differs from the exact one by less than 0.0001", () => {
    for (const z of points.filter((each) => each < 6)) {
      expect(Math.abs(quickNormalRatio(z) - normalDensity(z) / normalBelow(z))).toBeLessThan(1e-4);
    }
  });

  it("goes over into minus z far below, and into 0 far above", () => {
    expect(quickNormalRatio(-20)).toBe(20);
    expect(quickNormalRatio(20)).toBe(0);
  });
});

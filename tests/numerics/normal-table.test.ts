import { describe, expect, it } from "vitest";
import { normalBelow } from "../../src/numerics/normal.ts";
import { quickNormalBelow } from "../../src/numerics/normal-table.ts";

const points = Array.from({ length: 1201 }, (_, at) => -6 + at / 100 + 0.003);

describe("the normal distribution from a table", () => {
  it("differs from the exact one by less than 0.00002", () => {
    for (const z of points) expect(Math.abs(quickNormalBelow(z) - normalBelow(z))).toBeLessThan(2e-5);
  });

  it("is 0 and 1 beyond six deviations", () => {
    expect([quickNormalBelow(-7), quickNormalBelow(7)]).toEqual([0, 1]);
  });
});

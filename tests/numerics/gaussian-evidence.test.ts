import { describe, expect, it } from "vitest";
import { gaussianEvidence } from "../../src/numerics/gaussian-evidence.ts";

const logNormal = (x: number, variance: number): number =>
  -0.5 * (Math.log(2 * Math.PI * variance) + x ** 2 / variance);

describe("the evidence of a linear model", () => {
  it("weighs one observation against its prior", () => {
    // Prior N(0, 2^2), noise 1: posterior mean 3 x 4/5 = 2.4, variance 4/5; the observation is N(0, 5).
    const { mean, covariance, logEvidence } = gaussianEvidence({
      rows: [[1]],
      values: [3],
      noise: [1],
      prior: [2],
    });
    expect(mean[0]).toBeCloseTo(2.4, 12);
    expect(covariance[0]?.[0]).toBeCloseTo(0.8, 12);
    expect(logEvidence).toBeCloseTo(logNormal(3, 5), 12);
  });

  it("is the density of the observations with the coefficients averaged out", () => {
    // Two observations share one coefficient of prior 1 and have noise 1 and 2: covariance [[2, 1], [1, 5]], determinant 9,
    // inverse [[5, -1], [-1, 2]] / 9; for (1, -2) the form is (5 + 4 + 8) / 9 = 17/9.
    const { logEvidence } = gaussianEvidence({
      rows: [[1], [1]],
      values: [1, -2],
      noise: [1, 2],
      prior: [1],
    });
    expect(logEvidence).toBeCloseTo(-0.5 * (2 * Math.log(2 * Math.PI) + Math.log(9) + 17 / 9), 12);
  });

  it("tells two coefficients apart where the rows do, and knows what it cannot tell", () => {
    const apart = gaussianEvidence({
      rows: [
        [1, 0],
        [0, 1],
      ],
      values: [5, -5],
      noise: [0.01, 0.01],
      prior: [10, 10],
    });
    expect(apart.mean[0]).toBeCloseTo(5, 3);
    expect(apart.mean[1]).toBeCloseTo(-5, 3);
    const together = gaussianEvidence({ rows: [[1, 1]], values: [4], noise: [0.01], prior: [10, 10] });
    expect(together.mean[0]).toBeCloseTo(2, 3);
    expect(Math.sqrt(together.covariance[0]?.[0] ?? 0)).toBeGreaterThan(7);
  });
});

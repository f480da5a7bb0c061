import { describe, expect, it } from "vitest";
import { ATTEMPT_CONSTANTS } from "../../../src/compute/lifting/attempt-constants.ts";
import { madeLine } from "../../../src/compute/lifting/describe-lift.ts";
import { percentageRule } from "../../../src/compute/lifting/percentage-rule.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { attemptProblem, everyAttempt, planned } from "../../support/attempt-problem.ts";

const constants = withOverrides(ATTEMPT_CONSTANTS);
const whole = Array.from({ length: 140 }, (_, at) => 70 + at);
const problem = attemptProblem({ loads: whole });

describe("the rule of fixed percentages", () => {
  it("lifts 85, 92 and 97 % of what the athlete can do today, one after the other", () => {
    expect(madeLine(percentageRule(problem, 0, constants)).map(({ load }) => load)).toEqual([85, 92, 97]);
  });

  it("repeats a missed load", () => {
    for (const { at, before } of everyAttempt(percentageRule(problem, 0, constants))) {
      const last = before.at(-1);
      if (last && !last.made) expect(at.load).toBe(last.load);
    }
  });

  it("goes on with 2.5 % more each where there are more attempts, and spreads them over the time", () => {
    const long = { ...problem, attempts: 5, step: 60, gaps: [2], lastStart: 12 };
    const line = madeLine(percentageRule(long, 0, constants));
    expect(line.map(({ load }) => load)).toEqual([85, 92, 97, 99, 102]);
    expect(line.map(({ start }) => start)).toEqual([0, 3, 6, 9, 12]);
  });

  it("takes only as many attempts as fit, and none where none does", () => {
    expect(madeLine(percentageRule({ ...problem, lastStart: 1 }, 0, constants))).toHaveLength(2);
    expect(percentageRule({ ...problem, lastStart: -1 }, 0, constants)).toEqual({ stop: "no-time" });
  });

  it("lifts what can be put on the bar, and no load twice once it is made", () => {
    const coarse = { ...problem, loads: [80, 90, 100] };
    expect(madeLine(percentageRule(coarse, 0, constants)).map(({ load }) => load)).toEqual([80, 90, 100]);
  });

  it("tells chances as believed: the opener of 85 kg is made 97 times in a hundred", () => {
    // (100 - 85) / sqrt(5² + 6²) = 1.92
    expect(planned(percentageRule(problem, 0, constants)).chance).toBeCloseTo(0.9726, 3);
  });

  it("with 91 %, 5 and 3 % more each gives lifts near 182, 191 and 197 of a third of 200 kg (Travis et al. 2021)", () => {
    const shares = { ruleFirst: 0.91, ruleSecond: 0.91 * 1.05, ruleThird: 0.91 * 1.05 * 1.03 };
    const lifter = { ...problem, belief: { mean: 200, spread: 8, noise: 8 } };
    const line = madeLine(percentageRule(lifter, 0, withOverrides(ATTEMPT_CONSTANTS, shares)));
    [182, 191, 197].forEach((load, at) => {
      expect(Math.abs((line[at]?.load ?? 0) - load)).toBeLessThanOrEqual(1);
    });
  });
});

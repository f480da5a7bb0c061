import { describe, expect, it } from "vitest";
import { ATTEMPT_CONSTANTS } from "../../../src/compute/lifting/attempt-constants.ts";
import { standardOpening } from "../../../src/compute/lifting/standard-opening.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { attemptProblem } from "../../support/attempt-problem.ts";

const constants = withOverrides(ATTEMPT_CONSTANTS);
const standard = { mean: 100, spread: 6, noise: 6 };
const opening = (more: Parameters<typeof attemptProblem>[0] = {}) =>
  standardOpening(attemptProblem(more), standard, 0, constants);

describe("how a standard athlete opens", () => {
  it("is as surely as asked at least, and surer where a missed load cannot be followed by a lighter one", () => {
    expect(opening().chance).toBeGreaterThanOrEqual(0.85);
    expect(opening({ rising: true }).chance).toBeGreaterThan(0.93);
    expect(opening({ attempts: 1 }).chance).toBeGreaterThan(0.93);
  });

  it("is at once when fresh, and later when strength comes back fast and only one lift fits", () => {
    const clock = { step: 30, gaps: [3], firsts: [0, 2, 4], lastStart: 4 };
    expect(opening(clock).wait).toBe(0);
    const tired = { ...clock, attempts: 1, strength: (since: number) => 1 - 0.3 * Math.exp(-since / 60) };
    expect(opening(tired).wait).toBe(4);
  });

  it("comes with the loads that may come up, the opener among them", () => {
    const { loads } = opening();
    expect(loads.length).toBeGreaterThan(2);
    // 0.85 or more is 1.04 spreads or more below 100 kg.
    expect(loads.some(({ load }) => load < 100 - 1.03 * Math.hypot(6, 6))).toBe(true);
    expect(new Set(loads.map(({ load }) => load)).size).toBe(loads.length);
  });

  it("has the chance a coach may set where nothing can be lifted", () => {
    expect(opening({ lastStart: -1 })).toEqual({ chance: 0.85, wait: 0, loads: [] });
  });
});

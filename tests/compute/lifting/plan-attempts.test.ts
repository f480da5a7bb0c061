import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectedWorth, outcomesOf } from "../../../src/compute/lifting/attempt-outcomes.ts";
import type { AttemptProblem } from "../../../src/compute/lifting/attempt-problem.ts";
import { planAttempts } from "../../../src/compute/lifting/plan-attempts.ts";
import { attemptProblem, bestByTryingAll, everyAttempt, planned } from "../../support/attempt-problem.ts";

/** So sure of the day that nothing is learnt from an attempt: then the states hold all there is to know. */
const known = (noise: number): AttemptProblem["belief"] => ({ mean: 100, spread: 1e-6, noise });

const valueOf = (problem: AttemptProblem): number =>
  expectedWorth(outcomesOf(planAttempts(problem).begin(0), problem.belief), problem.worth);

/** What is let go for a lighter load, over all attempts: 0.3 % of the range of loads each. */
const evenness = ({ loads, attempts, worth }: AttemptProblem): number =>
  0.003 * attempts * Math.abs(worth(loads.at(-1)) - worth(loads[0]));

describe("planning attempts", () => {
  it("by hand: two loads and two attempts, 100 kg made nine times in ten and 110 kg half the time", () => {
    // Strength 110, noise so that 100 is made with 0.9: 10 / 1.2816 = 7.803.
    // Open 100; then 110 if made, 100 again if missed: 0.9 x (0.5 x 110 + 0.5 x 100) + 0.1 x (0.9 x 100) = 103.5
    const problem = attemptProblem({
      loads: [100, 110],
      belief: { mean: 110, spread: 1e-6, noise: 10 / 1.2815516 },
      attempts: 2,
      lastStart: 1,
    });
    const plan = planned(planAttempts(problem).begin(0));
    expect(plan.load).toBe(100);
    expect(plan.chance).toBeCloseTo(0.9, 6);
    expect(planned(plan.made).load).toBe(110);
    expect(planned(plan.missed).load).toBe(100);
    expect(valueOf(problem)).toBeCloseTo(103.5, 2);
    expect(planAttempts(problem).worth(0)).toBeCloseTo(103.5, 2);
  });

  it("with a single attempt takes the load whose kilograms times chance are most", () => {
    // sqrt(5² + 6²) = 7.81: 90 x 0.900 = 81.0, 95 x 0.739 = 70.2, 100 x 0.5 = 50
    expect(planned(planAttempts(attemptProblem({ attempts: 1 })).begin(0)).load).toBe(90);
  });

  it("waits longer before a lift where rest is worth it and time is left", () => {
    const strength = (_since: number, rest: number): number => (rest < 100 ? 0.7 : 1);
    const plan = planned(
      planAttempts(
        attemptProblem({ step: 30, lift: 10, gaps: [2, 6], lastStart: 12, attempts: 2, strength }),
      ).begin(0),
    );
    expect(planned(plan.made).start).toBe(6);
  });

  it("starts no attempt after the last start, and says that no time is left", () => {
    const plan = planned(planAttempts(attemptProblem({ lastStart: 0 })).begin(0));
    expect(plan.made).toEqual({ stop: "no-time" });
    expect(plan.missed).toEqual({ stop: "no-time" });
  });

  it("says when the attempts are used up, and when nothing is to be gained", () => {
    const plan = planned(planAttempts(attemptProblem({ attempts: 1 })).begin(0));
    expect(plan.made).toEqual({ stop: "no-attempts" });
    const enough = attemptProblem({ worth: (best) => (best === undefined ? 0 : 1) });
    expect(planned(planAttempts(enough).begin(0)).made).toEqual({ stop: "no-gain" });
  });

  it("leaves time for the plates: a change that takes longer than the rest is not planned", () => {
    const change = (from: number | undefined, to: number): number =>
      from !== undefined && to !== from ? 500 : 0;
    const plan = planned(planAttempts(attemptProblem({ change })).begin(0));
    expect(plan.made).toEqual({ stop: "no-time" });
    expect(planned(plan.missed).load).toBe(plan.load);
  });

  it("opens with the load set by the coach", () => {
    expect(planned(planAttempts(attemptProblem({ opener: 105 })).begin(0)).load).toBe(105);
  });

  it("opens with the heaviest load made as surely as asked, or the lightest of all", () => {
    // sqrt(5² + 6²) = 7.81; 90 kg: 0.900, 95 kg: 0.739
    const openOf = (openerChance: number): number =>
      planned(planAttempts(attemptProblem({ openerChance })).begin(0)).load;
    expect(openOf(0.73)).toBe(95);
    expect(openOf(0.75)).toBe(90);
    expect(openOf(0.99)).toBe(90);
  });

  it("follows fixed jumps: from a made load the next one up, a missed one again", () => {
    const problem = attemptProblem({ jump: 5, opener: 95 });
    for (const { at, before } of everyAttempt(planAttempts(problem).begin(0))) {
      const last = before.at(-1);
      if (last) expect(at.load).toBe(last.made ? last.load + 5 : last.load);
    }
  });

  it("adds made loads where their sum counts, so a load may come again", () => {
    const problem = attemptProblem({ counts: "sum" });
    const plan = planned(planAttempts(problem).begin(0));
    const sums = outcomesOf(plan, problem.belief).map(({ sum }) => sum);
    expect(Math.max(...sums)).toBeGreaterThan(200);
    expect(
      everyAttempt(plan).some(({ at, before }) => before.some(({ load, made }) => made && load === at.load)),
    ).toBe(true);
  });

  it("hands over to the next lift when that is worth more", () => {
    // Beginning the other lift in time is worth 200 kg, later nothing.
    const handOver = (step: number): number => (step === 0 ? 200 : 0);
    const plan = planned(planAttempts(attemptProblem({ handOver })).begin(0));
    expect(plan.made).toEqual({ stop: "no-gain" });
  });

  /** Four loads from 1.6 spreads below to 0.7 above somebody's 100 kg. */
  const someProblem = fc
    .record({
      spread: fc.double({ min: 3, max: 8, noNaN: true }),
      noise: fc.double({ min: 4, max: 8, noNaN: true }),
      attempts: fc.integer({ min: 1, max: 3 }),
      rising: fc.boolean(),
      tired: fc.boolean(),
    })
    .map(({ spread, noise, attempts, rising, tired }) =>
      attemptProblem({
        loads: [-1.6, -0.8, -0.1, 0.7].map((z) => 100 + z * Math.hypot(spread, noise)),
        belief: { mean: 100, spread, noise },
        attempts,
        rising,
        step: 60,
        gaps: [2, 3],
        firsts: tired ? [0, 1] : [0],
        lastStart: 6,
        strength: tired
          ? (since, rest) => 1 - 0.05 * Math.exp(-since / 300) - 0.04 * Math.exp(-rest / 60)
          : () => 1,
      }),
    );

  it("agrees with trying everything to 0.05 kg where nothing is to be learnt of the day", () => {
    fc.assert(
      fc.property(someProblem, (problem) => {
        const sure = { ...problem, belief: { ...known(problem.belief.noise), mean: problem.belief.mean } };
        const best = bestByTryingAll(sure);
        expect(valueOf(sure)).toBeLessThanOrEqual(best + 0.01);
        expect(valueOf(sure)).toBeGreaterThan(best - evenness(sure) - 0.05);
        expect(planAttempts(sure).worth(0)).toBeGreaterThan(best - evenness(sure) - 0.05);
        expect(planAttempts(sure).worth(0)).toBeLessThanOrEqual(best + 0.05);
      }),
      { numRuns: 60, seed: 4 },
    );
  });

  it("agrees with trying everything to 0.3 kg where the day is learnt from every attempt", () => {
    fc.assert(
      fc.property(someProblem, (problem) => {
        const best = bestByTryingAll(problem);
        expect(valueOf(problem)).toBeLessThanOrEqual(best + 0.02);
        expect(valueOf(problem)).toBeGreaterThan(best - evenness(problem) - 0.3);
      }),
      { numRuns: 60, seed: 5 },
    );
  });

  it("loses less than a fiftieth against trying everything where hardly anything is known of the athlete", () => {
    fc.assert(
      fc.property(someProblem, (known) => {
        const belief = { ...known.belief, spread: 18 };
        const loads = [-1.6, -0.8, -0.1, 0.7].map((z) => 100 + z * Math.hypot(belief.spread, belief.noise));
        const problem = { ...known, belief, loads };
        expect(valueOf(problem)).toBeGreaterThan(0.98 * bestByTryingAll(problem));
      }),
      { numRuns: 40, seed: 8 },
    );
  });

  it("never lowers the load where loads must rise, and lifts no made load again", () => {
    fc.assert(
      fc.property(someProblem, (problem) => {
        for (const { at, before } of everyAttempt(planAttempts(problem).begin(0))) {
          const heaviest = Math.max(0, ...before.map(({ load }) => load));
          if (problem.rising) expect(at.load).toBeGreaterThanOrEqual(heaviest);
          for (const each of before) if (each.made) expect(at.load).toBeGreaterThan(each.load);
          expect(at.start).toBeLessThanOrEqual(problem.lastStart);
          expect(at.chance).toBeGreaterThanOrEqual(0);
          expect(at.chance).toBeLessThanOrEqual(1);
        }
      }),
      { numRuns: 60, seed: 6 },
    );
  });

  it("expects no less with one more attempt, with more time, or with a stronger athlete", () => {
    fc.assert(
      fc.property(someProblem, (problem) => {
        const worth = (more: Partial<AttemptProblem>): number =>
          planAttempts({ ...problem, ...more }).worth(0);
        const slack = evenness(problem) + 0.05;
        const { mean } = problem.belief;
        expect(worth({ attempts: problem.attempts + 1 })).toBeGreaterThan(worth({}) - slack);
        expect(worth({ lastStart: problem.lastStart + 2 })).toBeGreaterThan(worth({}) - slack);
        expect(worth({ belief: { ...problem.belief, mean: mean + 3 } })).toBeGreaterThan(worth({}) - slack);
      }),
      { numRuns: 60, seed: 7 },
    );
  });
});

import { describe, expect, it } from "vitest";
import { solveAttempts, spreadAfter } from "../../../src/compute/lifting/solve-attempts.ts";
import { attemptProblem } from "../../support/attempt-problem.ts";

describe("what a state is worth", () => {
  const problem = attemptProblem();
  const values = solveAttempts(problem);
  const stateOf = (best: number): number => values.states.all.findIndex((state) => state.best === best);

  it("is the made load where no attempt is left", () => {
    expect(values.value(3, 2, stateOf(2), 100)).toBe(100);
    expect(values.value(3, 2, stateOf(-1), 100)).toBe(0);
  });

  it("by hand with one attempt left, nothing made and a day of 100 kg: 90 kg is the best try", () => {
    // After two attempts the spread is about 4 kg; 90 kg: 90 x Phi(10 / sqrt(4² + 6²)).
    const spread = spreadAfter(problem, 2);
    const width = Math.hypot(spread, 6);
    const chances = { 90: 0.9192, 95: 0.7577 }; // Phi(10/7.15), Phi(5/7.15)
    expect(width).toBeCloseTo(7.15, 1);
    expect(values.value(2, 1, stateOf(-1), 100)).toBeCloseTo(90 * chances[90], 0);
  });

  it("never falls with the mean of the belief, nor with what is made already", () => {
    for (const best of [-1, 0, 1, 2, 3]) {
      for (const mean of [86, 90, 94, 98, 102, 106, 110]) {
        const value = values.value(1, 0, stateOf(best), mean);
        expect(values.value(1, 0, stateOf(best), mean + 2)).toBeGreaterThanOrEqual(value - 1e-9);
        expect(values.value(1, 0, stateOf(best + 1), mean)).toBeGreaterThanOrEqual(value - 1e-9);
      }
    }
  });

  it("holds on beyond the means looked at", () => {
    expect(values.value(1, 0, 0, 1000)).toBeCloseTo(values.value(1, 0, 0, 115), 6);
  });
});

describe("the spread of the belief", () => {
  it("shrinks with every attempt, by hand: 5 kg and noise of 6 kg", () => {
    // 25 x (1 - 0.55 x 25 / 61) = 19.36, whose root is 4.40
    expect(spreadAfter(attemptProblem(), 0)).toBe(5);
    expect(spreadAfter(attemptProblem(), 1)).toBeCloseTo(4.4, 2);
    expect(spreadAfter(attemptProblem(), 2)).toBeLessThan(4.4);
  });
});

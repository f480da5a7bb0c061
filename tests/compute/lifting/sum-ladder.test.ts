import { describe, expect, it } from "vitest";
import { sumLadder } from "../../../src/compute/lifting/sum-ladder.ts";
import { ladderProblem, slotsWith } from "../../support/ladder-problem.ts";

/** No doubt of the day and no slips: rounds do not tell of each other. */
const certain = { mean: 100, spread: 0, noise: 6, slip: 0 };
const rounds = ladderProblem({ belief: certain, slots: slotsWith(1, 1, 1, 1) });

describe("a lift in every round, all made loads added", () => {
  it("by hand: takes the load whose kilograms times its chance are most", () => {
    // 85 x 0.9938 = 84.5; 87.5 x 0.9814 = 85.9; 90 x 0.9522 = 85.7
    const { loads, rungs } = sumLadder(rounds);
    expect(loads).toEqual([87.5, 87.5, 87.5, 87.5]);
    expect(rungs[0]?.chance).toBeCloseTo(0.9814, 3);
  });

  it("expects the sum of these, with the spread of four independent rounds", () => {
    const { outcomes } = sumLadder(rounds);
    const mean = outcomes.reduce((sum, { best = 0, chance }) => sum + best * chance, 0);
    expect(mean).toBeCloseTo(4 * 85.87, 0);
    const variance = outcomes.reduce((sum, { best = 0, chance }) => sum + chance * (best - mean) ** 2, 0);
    expect(Math.sqrt(variance)).toBeCloseTo(2 * 87.5 * Math.sqrt(0.9814 * 0.0186), 0);
  });

  it("takes no heavier load after a miss, never goes down while all is made, and keeps to the bounds", () => {
    const { loads, rungs } = sumLadder(ladderProblem({ slots: slotsWith(0.93, 0.95, 0.97, 0.99) }));
    for (const [at, load] of loads.entries()) {
      expect(load).toBeGreaterThanOrEqual(loads[at - 1] ?? 0);
      expect(rungs[at]?.ifMissed?.load ?? 0).toBeLessThanOrEqual(load);
    }
    expect((loads[1] ?? 0) / loads[0]).toBeLessThanOrEqual(1.1);
  });
});

describe("after a miss in a lift of every round", () => {
  it("goes on lighter, so that a weak day still adds up to most of a good one", () => {
    const { outcomes, loads } = sumLadder(
      ladderProblem({ belief: { mean: 100, spread: 9, noise: 6, slip: 0.03 } }),
    );
    const all = loads.reduce((sum, load) => sum + load, 0);
    const sorted = outcomes.toSorted((a, b) => (a.best ?? 0) - (b.best ?? 0));
    let below = 0;
    const low = sorted.find(({ chance }) => (below += chance) >= 0.1)?.best ?? 0;
    // One round missed of four and the rest at a load not 15 % lighter: at least 0.85 x 3 / 4.
    expect(low / all).toBeGreaterThanOrEqual(0.6);
    expect(outcomes.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 9);
  });

  it("is never so light that it is another exercise", () => {
    const { rungs, loads } = sumLadder(
      ladderProblem({ belief: { mean: 100, spread: 15, noise: 6, slip: 0.03 } }),
    );
    for (const [at, { ifMissed }] of rungs.entries())
      if (ifMissed) expect(ifMissed.load).toBeGreaterThanOrEqual(0.85 * (loads[at] ?? 0));
  });
});

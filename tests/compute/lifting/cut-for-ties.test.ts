import { describe, expect, it } from "vitest";
import { chooseLadder } from "../../../src/compute/lifting/choose-ladder.ts";
import { cutAt } from "../../../src/compute/lifting/cut-for-ties.ts";
import { ladderProblem, slotsWith } from "../../support/ladder-problem.ts";

const cuts = [90, 95, 100, 105].map((over) => ({ load: over + 1, over }));
const ladder = { loads: [87.5, 95, 100, 102.5], lower: [82.5, 77.5] } as const;

describe("a load just over a round one", () => {
  it("may stand for the load aimed at, one kilogram over it", () => {
    expect(cutAt(ladder, 1, ladderProblem({ cuts }))).toEqual({ load: 96, over: 95 });
  });

  it("is none where the opener, a load off the round ones, or no small plate is", () => {
    expect(cutAt({ loads: [90, 95], lower: [] }, 0, ladderProblem({ cuts }))).toBeUndefined();
    expect(cutAt(ladder, 3, ladderProblem({ cuts }))).toBeUndefined();
    expect(cutAt(ladder, 1, ladderProblem())).toBeUndefined();
  });

  it("is none where the next load lies too close, or plates take longer than the rest", () => {
    // 102.5 is 1.5 kg over 101.
    expect(cutAt(ladder, 2, ladderProblem({ cuts }))).toBeUndefined();
    const change = (_: number, to: number): number => (to === 96 ? 300 : 0);
    expect(cutAt(ladder, 1, ladderProblem({ cuts, change }))).toBeUndefined();
  });

  it("keeps to the jumps", () => {
    // From 90 a tenth more is 99, but a later jump from 90 reaches 95.4.
    expect(cutAt({ loads: [85, 90, 95], lower: [] }, 2, ladderProblem({ cuts }))).toBeUndefined();
  });
});

describe("a ladder that is chosen where ties count", () => {
  it("aims just over a round load, and says over which", () => {
    const plain = chooseLadder(ladderProblem({ slots: slotsWith(1, 1, 1) }));
    const cut = chooseLadder(ladderProblem({ cuts, slots: slotsWith(1, 1, 1) }));
    expect(plain.loads[1]).toBe(95);
    expect(cut.loads).toEqual([plain.loads[0], 96, ...plain.loads.slice(2)]);
    expect(cut.cut).toEqual({ rung: 1, over: 95 });
    expect(cut.rungs[1]?.made).toBeGreaterThanOrEqual(0.5);
  });

  it("stays at the round load where the kilogram costs more than it may", () => {
    expect(chooseLadder(ladderProblem({ cuts, cutLoss: 0.001 })).cut).toBeUndefined();
  });
});

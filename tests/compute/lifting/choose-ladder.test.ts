import { describe, expect, it } from "vitest";
import { chooseLadder } from "../../../src/compute/lifting/choose-ladder.ts";
import { ladderProblem, slotsWith } from "../../support/ladder-problem.ts";

describe("the ladder chosen", () => {
  it("opens with the heaviest load made nine times in ten", () => {
    // 100 - 1.2816 x sqrt(5² + 6²) = 89.99: 87.5
    const { loads, rungs } = chooseLadder(ladderProblem());
    expect(loads[0]).toBe(87.5);
    expect(rungs[0]?.chance).toBeGreaterThan(0.9);
  });

  it("opens with what the coach sets", () => {
    expect(chooseLadder(ladderProblem({ opener: 95 })).loads[0]).toBe(95);
  });

  it("goes two loads down after a missed opener, and to four fifths with nothing made yet", () => {
    expect(chooseLadder(ladderProblem()).lower).toEqual([82.5, 70]);
  });

  it("repeats it where loads must rise or jumps are set", () => {
    expect(chooseLadder(ladderProblem({ rising: true })).lower).toEqual([87.5, 87.5]);
    expect(chooseLadder(ladderProblem({ jump: 5 })).lower).toEqual([87.5, 87.5]);
  });

  it("repeats it where nothing lighter can be loaded", () => {
    const openers = [87.5, 90];
    expect(chooseLadder(ladderProblem({ openers })).lower).toEqual([87.5, 87.5]);
  });

  it("says whether the programme or the usual steps chose", () => {
    expect(chooseLadder(ladderProblem({ gainWorthIt: 1 })).rule).toBe("steps");
    const crowd = ladderProblem({
      slots: slotsWith(1, 1),
      worth: (best = 0) => (best >= 92.5 ? 100 : 0) + best / 100,
    });
    expect(chooseLadder(crowd).rule).toBe("programme");
  });

  // Chances of a prototype fitted to the same public results: 120 kg, best of many, six lifts fresh, 75 s between.
  it("tells the chances of a fitted prototype within four points", () => {
    const rested = 1 - 0.04 * Math.exp(-75 / 60);
    const { rungs } = chooseLadder(
      ladderProblem({
        loads: Array.from({ length: 20 }, (_, at) => 95 + 2.5 * at),
        // Mean 0.999 and spread 4.5 % of 120 kg; noise 1.25 x sqrt(0.5105) x (3.1 + 0.033 x 119.9).
        belief: { mean: 119.9, spread: 5.4, noise: 6.303, slip: 0.03 },
        slots: slotsWith(1, ...[1, 2, 3, 4, 5].map((before) => rested - 0.004 * before)).map((slot) => ({
          ...slot,
          recovered: 1,
        })),
        limits: { best: 120, firstJump: 0.1, laterJump: 0.06, jumpOverBest: 0.04, step: 2.5, most: 1.063 },
        gainWorthIt: 1,
      }),
    );
    let reach = 100;
    const told = rungs.map(({ chance }) => {
      const row = [100 * chance, reach];
      reach *= chance;
      return row;
    });
    const prototype = [
      [93, 100],
      [67, 93],
      [48, 62],
      [44, 30],
      [38, 13],
      [32, 5],
    ];
    for (const [at, [chance = 0, all = 0]] of prototype.entries()) {
      expect(Math.abs((told[at]?.[0] ?? 0) - chance)).toBeLessThan(4);
      expect(Math.abs((told[at]?.[1] ?? 0) - all)).toBeLessThan(4);
    }
  });

  it("of sixty attempts is found in milliseconds", () => {
    const problem = ladderProblem({ slots: slotsWith(...Array.from({ length: 60 }, () => 1)) });
    expect(chooseLadder(problem).loads.length).toBeLessThan(15);
  });
});

describe("jumps of a chosen ladder", () => {
  const isGrowing = (loads: readonly number[]): boolean =>
    loads.some(
      (load, at) => at > 1 && load - (loads[at - 1] ?? 0) > (loads[at - 1] ?? 0) - (loads[at - 2] ?? 0),
    );

  it("never grow where all they gain is a little: a coach reads that as a slip of the pen", () => {
    // A lift reckoned from another: 90 kg give or take 9 %, six lifts a minute apart.
    const problem = ladderProblem({
      loads: Array.from({ length: 20 }, (_, at) => 60 + 2.5 * at),
      belief: { mean: 90, spread: 8, noise: 6.5, slip: 0.05 },
      slots: slotsWith(1, 0.98, 0.98, 0.98, 0.98, 0.98),
      limits: { best: 90, firstJump: 0.1, laterJump: 0.06, jumpOverBest: 0.04, step: 2.5, most: 1.063 },
    });
    expect(isGrowing(chooseLadder(problem).loads)).toBe(false);
  });

  it("are others where a crowd is passed by that", () => {
    const worth = (best = 0): number => best / 100 + (best >= 97.5 ? 30 : 0);
    const { loads, rule } = chooseLadder(ladderProblem({ worth }));
    expect(rule).toBe("programme");
    expect(loads).toContain(97.5);
    expect(chooseLadder(ladderProblem()).loads).not.toContain(97.5);
  });
});

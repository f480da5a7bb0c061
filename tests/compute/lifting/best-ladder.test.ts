import { describe, expect, it } from "vitest";
import { bestLadder } from "../../../src/compute/lifting/best-ladder.ts";
import { worthOf } from "../../../src/compute/lifting/choose-ladder.ts";
import { type DayChances, dayChances } from "../../../src/compute/lifting/day-grid.ts";
import { type LadderProblem, nextLoads } from "../../../src/compute/lifting/ladder-problem.ts";
import { stepLadder } from "../../../src/compute/lifting/step-ladder.ts";
import { createRandom } from "../../../src/numerics/random.ts";
import { ladderProblem, slotsWith } from "../../support/ladder-problem.ts";

const chancesOf = ({ slots, belief }: LadderProblem): DayChances => dayChances(slots, belief);

const worth = (loads: readonly number[], problem: LadderProblem): number => {
  const [first = 0, ...rest] = loads;
  return worthOf({ loads: [first, ...rest], lower: [] }, problem, chancesOf(problem));
};

/** The stupid method: every ladder the bounds allow, and the best of them. */
function bestByTryingAll(opener: number, problem: LadderProblem): number {
  const climb = (loads: readonly number[]): number => {
    const slot = problem.slots[loads.length];
    const next = slot ? nextLoads(loads.at(-1) ?? 0, loads.length === 1, slot, problem) : [];
    return Math.max(worth(loads, problem), ...next.map((load) => climb([...loads, load])));
  };
  return climb([opener]);
}

describe("the best ladder inside the bounds", () => {
  it("is worth what the best of all ladders is, to a thousandth, on seeded cases", () => {
    const random = createRandom(3);
    for (let run = 0; run < 12; run++) {
      const mean = 90 + 20 * random.uniform();
      const problem = ladderProblem({
        belief: { mean, spread: 3 + 4 * random.uniform(), noise: 4 + 4 * random.uniform(), slip: 0.03 },
        slots: slotsWith(0.94, 0.96, 0.97, 0.975).slice(0, 2 + (run % 3)),
      });
      const opener = 2.5 * Math.round((0.88 * mean) / 2.5);
      const found = worth(bestLadder(opener, problem, chancesOf(problem)), problem);
      const most = bestByTryingAll(opener, problem);
      expect(found).toBeGreaterThan(most * 0.999);
      expect(found).toBeLessThanOrEqual(most + 1e-9);
    }
  });

  it("passes a crowd where that is worth more than kilograms", () => {
    const problem = ladderProblem({
      slots: slotsWith(1, 1),
      worth: (best = 0) => (best >= 92.5 ? 100 : 0) + best / 100,
    });
    expect(bestLadder(87.5, problem, chancesOf(problem))).toEqual([87.5, 92.5]);
  });

  it("is worth no less than the usual steps", () => {
    for (const opener of [85, 87.5, 90]) {
      const problem = ladderProblem();
      const usual = worth(stepLadder(opener, problem), problem);
      expect(worth(bestLadder(opener, problem, chancesOf(problem)), problem)).toBeGreaterThan(usual - 0.05);
    }
  });
});

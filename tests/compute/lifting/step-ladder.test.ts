import { describe, expect, it } from "vitest";
import { stepLadder } from "../../../src/compute/lifting/step-ladder.ts";
import { ladderProblem, slotsWith } from "../../support/ladder-problem.ts";

const sixSlots = slotsWith(1, 1, 1, 1, 1, 1);

describe("the ladder by the usual steps", () => {
  it("by hand: + 8, 6, 4, 3 % of what stands on the bar, to the nearest load inside the bounds", () => {
    // 90 → 97.2: 97.5; 103.4 but no more than the best or 4 %: 100 (nearest of 100 and below); 104: 102.5 or 105, 4 % is 104: 102.5.
    expect(stepLadder(90, ladderProblem())).toEqual([90, 97.5, 100, 102.5]);
  });

  it("ends at the most of the day", () => {
    // 105.1 would be 105; 108.2 lies over 106.3.
    expect(stepLadder(90, ladderProblem({ slots: sixSlots }))).toEqual([90, 97.5, 100, 102.5, 105]);
  });

  it("climbs 10, 6, 6, 4 % where one result is known", () => {
    const one = ladderProblem({
      steps: [0.1, 0.06, 0.06, 0.04],
      limits: { best: 100, firstJump: 0.1, laterJump: 0.06, jumpOverBest: 0.06, most: 1.167, step: 2.5 },
      slots: sixSlots,
    });
    // 90 → 99: 97.5 or 100, a tenth is 99: 97.5; 103.35: 102.5; 108.65: 107.5; 111.8: 112.5; 117 is over 116.7: 115.
    expect(stepLadder(90, one)).toEqual([90, 97.5, 102.5, 107.5, 112.5, 115]);
  });

  it("is the opener alone with one attempt", () => {
    expect(stepLadder(90, ladderProblem({ slots: slotsWith(1) }))).toEqual([90]);
  });
});

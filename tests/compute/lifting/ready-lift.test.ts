import { describe, expect, it } from "vitest";
import { ATTEMPT_CONSTANTS } from "../../../src/compute/lifting/attempt-constants.ts";
import { type LiftingInput, withIron } from "../../../src/compute/lifting/lifting-input.ts";
import { windowOf } from "../../../src/compute/lifting/lifting-window.ts";
import { objectiveOf } from "../../../src/compute/lifting/objective.ts";
import { isFault, readyLift } from "../../../src/compute/lifting/ready-lift.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { seconds } from "../../../src/models/quantity.ts";
import { liftResult, sampleAthlete, sampleLift } from "../../support/sample-lifter.ts";
import { cleanAndJerk, liftingInput, liftPart, windowOfSeconds } from "../../support/sample-lifting.ts";

const constants = withOverrides(ATTEMPT_CONSTANTS);
const ready = (more: Partial<LiftingInput> = {}, movement = cleanAndJerk) => {
  const input = withIron(liftingInput(more));
  const line = { pieces: [{ movement, reps: 1 }], attempts: 4 } as const;
  return readyLift(input, line, windowOf(input), objectiveOf(input, false), constants);
};

describe("a lift made ready", () => {
  it("takes the attempts of the coach before those of the line", () => {
    const of = (more: Partial<LiftingInput>): number => {
      const lift = ready(more);
      return isFault(lift) ? NaN : lift.task.problem.attempts;
    };
    expect(of({})).toBe(4);
    expect(of({ bounds: { attempts: 2 } })).toBe(2);
  });

  it("begins at every finish the part before may have, and knows where the expected one lies", () => {
    const part = liftPart({
      kind: "max-load",
      length: { kind: "until", time: seconds(960) },
      order: "as-written",
    });
    const lift = ready({ part, opens: { mean: 560, spread: 40 }, before: { work: [], secondsSince: 0 } });
    if (isFault(lift)) throw new Error(lift.problem);
    // 400 s in 24 steps are 20 s each; 0.7 x 40 s are two of them
    expect(lift.offsets).toEqual([-4, -2, 0, 2, 4, 6]);
    expect(lift.lead).toBe(4);
    expect(lift.task.problem.begins).toEqual([0, 2, 4, 6, 8, 10]);
  });

  it.each([
    [
      "a movement that is no lift",
      {},
      sampleLift({ id: "plank", lift: false }),
      "no best lift can be derived of plank",
    ],
    [
      "a window too short",
      { part: liftPart(windowOfSeconds(8)) },
      cleanAndJerk,
      "leaves 8 s, too short for one lift",
    ],
    [
      "a bar too heavy",
      { athlete: sampleAthlete([liftResult("clean-and-jerk", 16)]) },
      cleanAndJerk,
      "the empty bar of 15 kg is heavier than what should be opened with",
    ],
  ])("says what is wrong with %s", (_what, more, movement, words) => {
    const lift = ready(more, movement);
    expect(isFault(lift) && lift.problem).toContain(words);
  });
});

import { describe, expect, it } from "vitest";
import { ATTEMPT_CONSTANTS } from "../../../src/compute/lifting/attempt-constants.ts";
import { madeLine } from "../../../src/compute/lifting/describe-lift.ts";
import { withIron } from "../../../src/compute/lifting/lifting-input.ts";
import { objectiveOf } from "../../../src/compute/lifting/objective.ts";
import { isFault, readyLift } from "../../../src/compute/lifting/ready-lift.ts";
import { shareWindow } from "../../../src/compute/lifting/share-window.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { liftResult, movementMap, sampleAthlete, sampleLift } from "../../support/sample-lifter.ts";
import { liftingInput, liftPart, windowOfSeconds } from "../../support/sample-lifting.ts";

const constants = withOverrides(ATTEMPT_CONSTANTS);
const snatch = sampleLift({ id: "snatch" });
const squat = sampleLift({ id: "back-squat" });

function tasksOf(length: number) {
  const input = withIron(
    liftingInput({
      part: liftPart(windowOfSeconds(length)),
      movements: movementMap(snatch, squat),
      athlete: sampleAthlete([liftResult("snatch", 70), liftResult("back-squat", 120)]),
    }),
  );
  return [snatch, squat].map((movement) => {
    const ready = readyLift(
      input,
      { pieces: [{ movement, reps: 1 }] },
      { opens: 0, closes: length, varies: false },
      objectiveOf(input, true),
      constants,
      30,
    );
    if (isFault(ready)) throw new Error(ready.problem);
    return ready.task;
  });
}

describe("lifts that share a window", () => {
  it("follow one another in it, with a minute or more for the change, none after the last start", () => {
    const [first, second] = shareWindow(tasksOf(720), false, constants);
    const [a, b] = [first, second].map((each) => (each ? madeLine(each.chosen.plan) : []));
    expect(first?.task.today.limiting.id).toBe("snatch");
    expect(a?.length).toBeGreaterThanOrEqual(2);
    expect(b?.length).toBeGreaterThanOrEqual(2);
    expect(((b?.[0]?.start ?? 0) - (a?.at(-1)?.start ?? 0)) * 30).toBeGreaterThanOrEqual(70);
    expect((b?.at(-1)?.start ?? 0) * 30).toBeLessThanOrEqual(708);
  });

  it("both get a lift even in a short one", () => {
    const planned = shareWindow(tasksOf(200), false, constants);
    for (const { chosen } of planned) expect(madeLine(chosen.plan).length).toBeGreaterThanOrEqual(1);
  });

  it("are worth no less in an order of one's own choice", () => {
    const worth = (freeOrder: boolean): number =>
      shareWindow(tasksOf(360), freeOrder, constants)[0]?.chosen.worthAt(0) ?? 0;
    expect(worth(true)).toBeGreaterThanOrEqual(worth(false));
  });
});

import { describe, expect, it } from "vitest";
import { attemptConstants } from "../../../src/compute/lifting/attempt-constants.ts";
import { withIron } from "../../../src/compute/lifting/lifting-input.ts";
import { objectiveOf } from "../../../src/compute/lifting/objective.ts";
import { isMissing, readyLift } from "../../../src/compute/lifting/ready-lift.ts";
import { planLadder } from "../../../src/compute/lifting/plan-ladder.ts";
import {
  oneAfterTheOther,
  type PlannedLift,
  shareWindow,
} from "../../../src/compute/lifting/share-window.ts";
import { liftResult, movementMap, sampleAthlete, sampleLift } from "../../support/sample-lifter.ts";
import { liftingInput, liftPart, windowOfSeconds } from "../../support/sample-lifting.ts";

const constants = attemptConstants();
const snatch = sampleLift({ id: "snatch" });
const squat = sampleLift({ id: "back-squat" });

function liftsOf(length: number) {
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
    );
    if (isMissing(ready)) throw new Error(ready.kind);
    return ready;
  });
}

/** Starts of the attempts that have a load. */
const startsOf = ({ chosen, problem }: PlannedLift): readonly number[] =>
  problem.slots.slice(0, chosen.loads.length).map(({ start }) => start);

const expected = (planned: readonly PlannedLift[]): number =>
  planned
    .flatMap(({ chosen }) => chosen.outcomes)
    .reduce((sum, { best = 0, chance }) => sum + best * chance, 0);

describe("lifts that share a window", () => {
  it("follow one another in it, with a minute or more for the change, none after the last start", () => {
    const planned = shareWindow(liftsOf(720), false, constants);
    const [a = [], b = []] = planned.map(startsOf);
    expect(planned[0]?.task.today.limiting.id).toBe("snatch");
    expect(a.length).toBeGreaterThanOrEqual(2);
    expect(b.length).toBeGreaterThanOrEqual(2);
    expect((b[0] ?? 0) - (a.at(-1) ?? 0)).toBeGreaterThanOrEqual(125);
    expect(b.at(-1)).toBeLessThanOrEqual(708);
    for (const starts of [a, b]) {
      for (const [at, start] of starts.slice(1).entries())
        expect(start - (starts[at] ?? 0)).toBeGreaterThanOrEqual(70);
    }
  });

  it("both get a lift even in a short one", () => {
    for (const lift of shareWindow(liftsOf(200), false, constants))
      expect(startsOf(lift).length).toBeGreaterThanOrEqual(1);
  });

  it("are worth no less in an order of one's own choice", () => {
    const [own, set] = [true, false].map((free) => expected(shareWindow(liftsOf(360), free, constants)));
    expect(own).toBeGreaterThanOrEqual((set ?? Infinity) * 0.995);
  });
});

describe("lifts with attempts of their own", () => {
  it("come one after the other, a full rest between", () => {
    const ready = liftsOf(720).map((lift) => ({ ...lift, window: { ...lift.window, attempts: 3 } }));
    const planned = oneAfterTheOther(
      ready,
      (lift) => planLadder(lift.task, lift.window, constants),
      constants,
    );
    const [a = [], b = []] = planned.map(startsOf);
    expect((b[0] ?? 0) - (a.at(-1) ?? 0)).toBe(190);
  });
});

describe("starts in a shared window", () => {
  // In 14 minutes the first start came out a hair under 0, and was told as five seconds before the window opens.
  it("never lie before it opens, whatever its length", () => {
    for (let length = 480; length <= 1200; length += 30) {
      const first = shareWindow(liftsOf(length), false, constants).flatMap(startsOf)[0];
      expect(first).toBeGreaterThanOrEqual(0);
    }
  });
});

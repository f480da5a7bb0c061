import { describe, expect, it } from "vitest";
import { type AttemptWindow, firstStart } from "../../../src/compute/lifting/attempt-times.ts";
import { attemptConstants } from "../../../src/compute/lifting/attempt-constants.ts";
import { type LiftingInput, withIron } from "../../../src/compute/lifting/lifting-input.ts";
import { windowOf } from "../../../src/compute/lifting/lifting-window.ts";
import { objectiveOf } from "../../../src/compute/lifting/objective.ts";
import { isMissing, readyLift } from "../../../src/compute/lifting/ready-lift.ts";
import { seconds } from "../../../src/models/quantity.ts";
import type { AttemptBounds } from "../../../src/models/workout.ts";
import { liftResult, sampleAthlete, sampleLift } from "../../support/sample-lifter.ts";
import { cleanAndJerk, liftingInput, liftPart, windowOfSeconds } from "../../support/sample-lifting.ts";

const constants = attemptConstants();
const ready = (more: Partial<LiftingInput> = {}, movement = cleanAndJerk) => {
  const input = withIron(liftingInput(more));
  const line = { pieces: [{ movement, reps: 1 }], attempts: 4 } as const;
  return readyLift(input, line, windowOf(input), objectiveOf(input, false), constants);
};

describe("a lift made ready", () => {
  it("takes the attempts of the coach before those of the line", () => {
    const of = (more: Partial<LiftingInput>): number => {
      const lift = ready(more);
      return isMissing(lift) ? NaN : lift.window.attempts;
    };
    expect(of({})).toBe(4);
    expect(of({ bounds: { attempts: 2 } })).toBe(2);
  });

  it("lifts first when there is breath after other work, and after the rest the coach sets", () => {
    const before = { work: [], secondsSince: 0 };
    const rested = ready({ before, bounds: { smallestRest: seconds(100) } });
    if (isMissing(rested)) throw new Error(rested.kind);
    expect(rested.window).toMatchObject({ earliest: 100, gap: 110 });
    expect(rested.window.breath).toBeCloseTo(132.35, 1);
  });

  it("lifts first when the coach says, sooner or later than there is breath, whatever the rest between lifts is", () => {
    const windowFor = (secondsSince: number, bounds: AttemptBounds): AttemptWindow => {
      const lift = ready({ before: { work: [], secondsSince }, bounds });
      if (isMissing(lift)) throw new Error(lift.kind);
      return lift.window;
    };
    const rest = { smallestRest: seconds(100), firstRest: seconds(60) };
    expect(windowFor(0, rest)).toMatchObject({ earliest: 60, breath: 60, gap: 110 });
    // A minute and a half of rest that the rules put between counts.
    expect(windowFor(90, { firstRest: seconds(200) })).toMatchObject({ earliest: 110, breath: 110 });
    const fresh = ready({ bounds: { firstRest: seconds(45) } });
    expect(!isMissing(fresh) && firstStart(fresh.window, constants)).toBe(45);
  });

  it.each([
    [
      "a movement that is no lift",
      {},
      sampleLift({ id: "plank", lift: false }),
      { kind: "no-lift", movements: ["plank"] },
    ],
    [
      "a window too short",
      { part: liftPart(windowOfSeconds(8)) },
      cleanAndJerk,
      { kind: "short-window", length: 8 },
    ],
    [
      "a bar too heavy",
      { athlete: sampleAthlete([liftResult("clean-and-jerk", 16)]) },
      cleanAndJerk,
      { kind: "heavy-bar", lift: "clean and jerk", bar: 15 },
    ],
  ])("says what is wrong with %s", (_what, more, movement, missing) => {
    const lift = ready(more, movement);
    expect(lift).toMatchObject(missing);
  });
});

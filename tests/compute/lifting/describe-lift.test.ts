import { describe, expect, it } from "vitest";
import { ATTEMPT_CONSTANTS } from "../../../src/compute/lifting/attempt-constants.ts";
import { chooseAttempts } from "../../../src/compute/lifting/choose-attempts.ts";
import { describeLift, madeLine } from "../../../src/compute/lifting/describe-lift.ts";
import { withIron } from "../../../src/compute/lifting/lifting-input.ts";
import { windowOf } from "../../../src/compute/lifting/lifting-window.ts";
import { objectiveOf } from "../../../src/compute/lifting/objective.ts";
import { isFault, readyLift } from "../../../src/compute/lifting/ready-lift.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { cleanAndJerk, liftingInput } from "../../support/sample-lifting.ts";

const constants = withOverrides(ATTEMPT_CONSTANTS);
const input = withIron(liftingInput({ opens: { mean: 600, spread: 0 } }));
const ready = readyLift(
  input,
  { pieces: [{ movement: cleanAndJerk, reps: 1 }] },
  windowOf(input),
  objectiveOf(input, false),
  constants,
);
if (isFault(ready)) throw new Error(ready.problem);
const { task } = ready;
const chosen = chooseAttempts(task.problem, task.iron.candidates, task.always, 0, constants);
const lift = describeLift(task.today, chosen, task.iron, { origin: 600, opens: 600, lastStart: 948 });
const line = madeLine(chosen.plan);

describe("a lift as the plan shows it", () => {
  it("is the line on which everything is made, with the clock of the part and of the workout", () => {
    expect(lift.attempts.map(({ load }) => load.kilograms)).toEqual(line.map(({ load }) => load));
    expect(lift.attempts.map(({ clock }) => clock)).toEqual(line.map(({ start }) => start * 15));
    expect(lift.attempts.map(({ number }) => number)).toEqual(line.map((_, at) => at + 1));
    expect(lift.firstLift).toBe(600);
    expect(lift.lastStart).toBe(948);
  });

  it("rests from the end of one lift to the start of the next, at least as long as the plates take", () => {
    lift.attempts.slice(1).forEach((attempt, at) => {
      expect(attempt.restBefore).toBe(attempt.clock - (lift.attempts[at]?.clock ?? 0) - 10);
      expect(attempt.restBefore).toBeGreaterThanOrEqual(attempt.change?.seconds ?? Infinity);
    });
    expect(lift.attempts[0]?.restBefore).toBe(0);
    expect(lift.attempts[0]?.change).toBeUndefined();
  });

  it("tells each load as a share of the best single", () => {
    for (const { load } of lift.attempts) expect(load.shareOfBest).toBeCloseTo(load.kilograms / 100, 9);
  });

  it("says what to do after each miss, with the direction that the loads have", () => {
    for (const [at, { afterMiss, load }] of lift.attempts.entries()) {
      const missed = line[at]?.missed;
      if (afterMiss.kind === "stop") {
        expect(missed).toEqual({ stop: afterMiss.reason });
      } else {
        expect(missed).toMatchObject({ load: afterMiss.load.kilograms });
        const side = Math.sign(afterMiss.load.kilograms - load.kilograms);
        expect(afterMiss.direction).toBe(["lower", "same", "higher"][side + 1]);
      }
    }
  });

  it("has a range in order, with the target inside, and a small chance of no lift at all", () => {
    const { cautious, middle, hopeful, target } = lift.expected;
    expect(cautious).toBeLessThanOrEqual(middle);
    expect(middle).toBeLessThanOrEqual(hopeful);
    expect(target).toBe(middle);
    expect(lift.chanceOfNone).toBeGreaterThan(0);
    expect(lift.chanceOfNone).toBeLessThan(0.01);
  });

  it("tells the best single and what it is today", () => {
    expect(lift.best).toMatchObject({
      kilograms: 100,
      basis: "tested",
      from: "1 rep at 100 kg of 2026-11-01",
    });
    expect(lift.today).toMatchObject({ kilograms: 100, lossShare: 0 });
    expect(lift).toMatchObject({
      movement: "clean-and-jerk",
      name: "clean and jerk",
      reps: 1,
      rule: "decision",
    });
  });
});

import { describe, expect, it } from "vitest";
import { ATTEMPT_CONSTANTS } from "../../../src/compute/lifting/attempt-constants.ts";
import { type LiftingInput, withIron } from "../../../src/compute/lifting/lifting-input.ts";
import { liftingTask, type LiftingTask } from "../../../src/compute/lifting/lifting-task.ts";
import { liftToday } from "../../../src/compute/lifting/lift-today.ts";
import { objectiveOf } from "../../../src/compute/lifting/objective.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { liftResult, movementMap, sampleAthlete } from "../../support/sample-lifter.ts";
import { cleanAndJerk, liftingInput, liftPart, windowOfSeconds } from "../../support/sample-lifting.ts";
import { kg } from "../../support/sample-gym.ts";
import { sampleField } from "../../support/sample-field.ts";

const clock = { step: 15, lift: 10, firsts: [0], gaps: [5], lastStart: 23, attempts: 6 };

function taskOf(more: Partial<LiftingInput> = {}, overrides: Readonly<Record<string, number>> = {}) {
  const input = withIron(liftingInput({ ...more, overrides }));
  const constants = withOverrides(ATTEMPT_CONSTANTS, overrides);
  const today = liftToday(
    { pieces: [{ movement: cleanAndJerk, reps: 1 }] },
    input.athlete,
    movementMap(cleanAndJerk),
    input.date,
    input.before,
    180,
    constants,
  );
  if (!today) throw new Error("no lift");
  return liftingTask(
    input,
    today,
    clock,
    objectiveOf(input, false),
    { begins: [0], counts: "best", lead: 0 },
    constants,
  );
}

const ready = (...given: Parameters<typeof taskOf>): LiftingTask => {
  const task = taskOf(...given);
  if (!("problem" in task)) throw new Error("no task");
  return task;
};

describe("a lift set up for planning", () => {
  it("looks at loads from well below to well above what is believed, in steps of 2.5 kg", () => {
    const { iron } = ready();
    const loads = iron.candidates.map(({ kilograms }) => kilograms);
    // 7.9 kg and 1.25 x 6.4 x 0.7145 = 5.7 kg make 9.7 kg: from 100 - 2.6 x 9.7 to 100 + 2 x 9.7
    expect(loads[0]).toBe(75);
    expect(loads.at(-1)).toBe(118.5 - 1);
    expect(loads.slice(1).every((load, at) => load - (loads[at] ?? 0) <= 2.5)).toBe(true);
  });

  it("knows how long plates take from one load to another, and to the first from an empty bar", () => {
    const { change } = ready().problem;
    // On a 15 kg bar 95 kg are 25 + 15 a side, 100 kg are 25 + 15 + 2.5: one pair, 15 s alone
    expect(change(95, 100)).toBe(15);
    expect(change(95, 95)).toBe(0);
    expect(change(undefined, 95)).toBe(0);
    const empty = ready({ part: liftPart(windowOfSeconds(360), { openingBar: "empty" }) });
    expect(empty.problem.change(undefined, 95)).toBe(22.5);
  });

  it("always looks at the load to be reached, and the loads that pass most of a field", () => {
    const reach = ready({ objective: "chance-of-load", objectiveLoad: kg(104) });
    expect(reach.always.map(({ kilograms }) => kilograms)).toEqual([105]);
    expect(reach.problem.standard).toBeUndefined();
    const field = sampleField({ 95: 1, 100: 500, 110: 1 });
    const places = ready({ objective: "expected-place", field });
    expect(places.always.map(({ kilograms }) => kilograms)).toContain(101);
  });

  it("takes the opener of the coach as a sign of the day, and as the only one", () => {
    const task = ready({ bounds: { opener: kg(90) } });
    expect(task.problem.opener).toBe(90);
    // 90 + 1.25 x (5.6 + 0.24 x 10)
    expect(task.problem.belief.mean).toBeCloseTo(100, 6);
    expect(task.problem.belief.spread).toBeLessThan(7.9);
    expect(ready({}, { openerShare: 0.9 }).problem.opener).toBe(90);
  });

  it("looks at every rung of fixed jumps", () => {
    const task = ready({ bounds: { opener: kg(80), jump: kg(5) } });
    expect(task.always.map(({ kilograms }) => kilograms).slice(0, 4)).toEqual([80, 85, 90, 95]);
  });

  it("prices a day without a lift at twice what the athlete can do, beyond nothing", () => {
    expect(ready().problem.worth(undefined)).toBeCloseTo(-200, 6);
  });

  it("says what should be opened with where the bar weighs more", () => {
    const task = taskOf({ athlete: sampleAthlete([liftResult("clean-and-jerk", 16)]) });
    expect("barIsHeavierThan" in task && task.barIsHeavierThan).toBeGreaterThan(8);
    expect("barIsHeavierThan" in task && task.barIsHeavierThan).toBeLessThan(15);
  });
});

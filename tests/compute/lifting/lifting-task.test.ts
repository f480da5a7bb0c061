import { describe, expect, it } from "vitest";
import { attemptConstants } from "../../../src/compute/lifting/attempt-constants.ts";
import { type LiftingInput, withIron } from "../../../src/compute/lifting/lifting-input.ts";
import { liftingTask, type LiftingTask } from "../../../src/compute/lifting/lifting-task.ts";
import { liftToday } from "../../../src/compute/lifting/lift-today.ts";
import { objectiveOf } from "../../../src/compute/lifting/objective.ts";
import { sampleField } from "../../support/sample-field.ts";
import { kg } from "../../support/sample-gym.ts";
import { liftResult, sampleAthlete } from "../../support/sample-lifter.ts";
import { cleanAndJerk, liftingInput } from "../../support/sample-lifting.ts";

const window = { earliest: 0, breath: 0, lastStart: 348, gap: 70, longestGap: 250, lift: 10, attempts: 6 };

function taskOf(more: Partial<LiftingInput> = {}, overrides: Readonly<Record<string, number>> = {}) {
  const input = withIron(liftingInput({ ...more, overrides }));
  const constants = attemptConstants(overrides);
  const today = liftToday({ pieces: [{ movement: cleanAndJerk, reps: 1 }] }, input, 180, constants);
  if (!today) throw new Error("no lift");
  return liftingTask(input, today, window, objectiveOf(input, false), constants);
}

const ready = (...given: Parameters<typeof taskOf>): LiftingTask => {
  const task = taskOf(...given);
  if (!("problem" in task)) throw new Error("no task");
  return task;
};

describe("a lift set up for planning", () => {
  it("looks at loads from well below the opener to the most of a day, in steps of 2.5 kg", () => {
    const { loads, openers } = ready().problem;
    // 4.98 kg and 1.25 x 6.42 x 0.7145 = 5.73 kg make 7.6 kg: 0.8 x (100.65 - 2.6 x 7.6) to 106.3
    expect(loads[0]).toBeGreaterThanOrEqual(64);
    expect(loads[0]).toBeLessThan(68);
    expect(loads.at(-1)).toBe(105);
    expect(loads.slice(1).every((load, at) => load - (loads[at] ?? 0) <= 2.5)).toBe(true);
    expect(openers).toEqual(loads);
  });

  it("has closer loads for light lifters, but opens with handy ones", () => {
    const { loads, openers } = ready({
      athlete: sampleAthlete([liftResult("clean-and-jerk", 38)]),
    }).problem;
    const apart = loads.slice(1).map((load, at) => load - (loads[at] ?? 0));
    expect(Math.max(...apart)).toBeLessThanOrEqual(0.06 * 38);
    expect(openers.length).toBeLessThan(loads.length);
  });

  it("knows how long plates take from one load to another", () => {
    const { change } = ready().problem;
    // On a 15 kg bar 95 kg are 25 + 15 a side, 100 kg are 25 + 15 + 2.5: one pair, 15 s alone
    expect(change(95, 100)).toBe(15);
    expect(change(95, 95)).toBe(0);
  });

  it("always looks at the load to be reached, and the loads that pass most of a field", () => {
    const reach = ready({ objective: "chance-of-load", objectiveLoad: kg(101) });
    expect(reach.problem.loads).toContain(101);
    const field = sampleField({ 95: 1, 100: 500, 105: 1 });
    expect(ready({ objective: "expected-place", field }).problem.loads).toContain(101);
    expect(ready({ objective: "expected-place", field }).problem.openers).not.toContain(101);
  });

  it("takes the opener of the coach as a sign of the day, and as the only one", () => {
    const task = ready({ bounds: { opener: kg(90) } });
    expect(task.problem.opener).toBe(90);
    // 90 + 1.25 x (5.8 - 2.1 + 0.45 x 10.65): of many results
    expect(task.problem.belief.mean).toBeCloseTo(100.615625, 6);
    expect(ready({}, { openerShare: 0.9 }).problem.opener).toBe(91);
  });

  it("looks at every rung of fixed jumps", () => {
    const { loads, jump } = ready({ bounds: { opener: kg(80), jump: kg(5) } }).problem;
    expect(jump).toBe(5);
    for (const rung of [80, 85, 90, 95, 100]) expect(loads).toContain(rung);
  });

  it("says what should be opened with where the bar weighs more", () => {
    const task = taskOf({ athlete: sampleAthlete([liftResult("clean-and-jerk", 16)]) });
    expect("barIsHeavierThan" in task && task.barIsHeavierThan).toBeGreaterThan(8);
    expect("barIsHeavierThan" in task && task.barIsHeavierThan).toBeLessThan(15);
  });
});

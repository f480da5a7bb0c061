import { describe, expect, it } from "vitest";
import { attemptConstants } from "../../../src/compute/lifting/attempt-constants.ts";
import { windowedLiftsOf } from "../../../src/compute/lifting/lift-line.ts";
import { type LiftingInput, withIron } from "../../../src/compute/lifting/lifting-input.ts";
import { planRounds } from "../../../src/compute/lifting/round-lifting.ts";
import type { Lifting } from "../../../src/models/plan/lifting.ts";
import { liftResult, sampleAthlete } from "../../support/sample-lifter.ts";
import { cleanAndJerk, liftingInput, liftPart, roundsCourse } from "../../support/sample-lifting.ts";

const constants = attemptConstants();

function planned(kind: "load" | "sum-of-loads", more: Partial<LiftingInput> = {}) {
  const course = roundsCourse(cleanAndJerk, 3, 5, 180);
  const rounds = windowedLiftsOf(course);
  const part = liftPart({ kind: "on-the-clock" }, { score: { kind, restCounts: true } });
  return planRounds(withIron(liftingInput({ course, part, ...more })), rounds, constants);
}

const lifting = (kind: "load" | "sum-of-loads"): Lifting => {
  const plan = planned(kind);
  if (!("lifts" in plan)) throw new Error(plan[0]?.kind);
  return plan;
};

describe("a lift in rounds", () => {
  it("has one attempt at the start of each round, of the reps asked for", () => {
    const plan = lifting("sum-of-loads");
    expect(plan.lifts[0]?.attempts.map(({ clock }) => clock)).toEqual([0, 180, 360, 540, 720]);
    expect(plan.lifts[0]?.reps).toBe(3);
    expect(plan.window).toEqual({ opens: 0, closes: 900 });
  });

  it("adds all made loads where the score does, and then keeps to loads that are made nearly every time", () => {
    const plan = lifting("sum-of-loads");
    expect(plan.sum).toBe(true);
    for (const { chance } of plan.lifts[0]?.attempts ?? []) expect(chance).toBeGreaterThan(0.85);
    expect(plan.lifts[0]?.expected.middle).toBeGreaterThan(300);
  });

  it("goes up to a heavy one where only the heaviest counts", () => {
    const plan = lifting("load");
    const attempts = plan.lifts[0]?.attempts ?? [];
    expect(plan.sum).toBe(false);
    expect(attempts.at(-1)?.load.kilograms).toBeGreaterThan(attempts[0]?.load.kilograms ?? Infinity);
    expect(plan.lifts[0]?.expected.hopeful).toBeLessThan(120);
  });

  it("cannot be planned where the bar is too heavy", () => {
    const plan = planned("load", { athlete: sampleAthlete([liftResult("clean-and-jerk", 16)]) });
    expect("lifts" in plan ? undefined : plan[0]).toMatchObject({ kind: "heavy-bar", bar: 15 });
  });
});

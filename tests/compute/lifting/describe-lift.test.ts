import { describe, expect, it } from "vitest";
import { attemptConstants } from "../../../src/compute/lifting/attempt-constants.ts";
import { describeLift, outcomeQuantile } from "../../../src/compute/lifting/describe-lift.ts";
import { withIron } from "../../../src/compute/lifting/lifting-input.ts";
import { windowOf } from "../../../src/compute/lifting/lifting-window.ts";
import { objectiveOf } from "../../../src/compute/lifting/objective.ts";
import { planLadder } from "../../../src/compute/lifting/plan-ladder.ts";
import { isMissing, readyLift } from "../../../src/compute/lifting/ready-lift.ts";
import { cleanAndJerk, liftingInput } from "../../support/sample-lifting.ts";

const constants = attemptConstants();
const input = withIron(liftingInput({ opens: { mean: 600, spread: 0 } }));
const ready = readyLift(
  input,
  { pieces: [{ movement: cleanAndJerk, reps: 1 }] },
  windowOf(input),
  objectiveOf(input, false),
  constants,
);
if (isMissing(ready)) throw new Error(ready.kind);
const planned = planLadder(ready.task, ready.window, constants);
const lift = describeLift(ready.task, planned, { opens: 600, lastStart: 948 });

describe("a lift as the plan shows it", () => {
  it("is the loads while everything is made, with the clock of the part and of the workout", () => {
    const { chosen, problem } = planned;
    expect(lift.attempts.map(({ load }) => load.kilograms)).toEqual(chosen.loads);
    expect(lift.attempts.map(({ clock }) => clock)).toEqual(problem.slots.map(({ start }) => start));
    expect(lift.attempts.map(({ number }) => number)).toEqual(chosen.loads.map((_, at) => at + 1));
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

  it("says what to do after each miss, at the time of the next attempt", () => {
    const [first, ...later] = lift.attempts;
    expect(first?.afterMiss).toMatchObject({ kind: "lift", direction: "lower", load: { kilograms: 85 } });
    for (const [at, { afterMiss, load, onlyIfWell }] of later.slice(0, -1).entries()) {
      // Over the load aimed at one miss ends it.
      if (onlyIfWell) expect(afterMiss).toEqual({ kind: "stop" });
      else expect(afterMiss).toMatchObject({ direction: "same", load, clock: later[at + 1]?.clock });
    }
    expect(later.at(-1)?.afterMiss).toEqual({ kind: "stop" });
  });

  it("aims at the heaviest load made on half of the days, and marks those beyond it", () => {
    const aim = lift.attempts[lift.target - 1];
    expect(aim?.load.kilograms).toBeLessThanOrEqual(lift.expected.middle);
    expect(lift.attempts.map(({ onlyIfWell }) => onlyIfWell)).toEqual(
      lift.attempts.map(({ number }) => number > lift.target),
    );
  });

  it("has a range in order, with the target inside, and a small chance of no lift at all", () => {
    const { cautious, middle, hopeful, target } = lift.expected;
    expect(cautious).toBeLessThanOrEqual(middle);
    expect(middle).toBeLessThanOrEqual(hopeful);
    expect(target).toBe(middle);
    expect(lift.chanceOfNone).toBeGreaterThan(0);
    expect(lift.chanceOfNone).toBeLessThan(0.01);
    expect(lift.misses).toBeLessThan(2);
  });

  it("tells the best single and what it is today", () => {
    expect(lift.best).toMatchObject({
      kilograms: 100,
      basis: "tested",
      from: { kind: "lift", result: { load: { value: 100, unit: "kg" }, date: "2026-11-01" }, through: [] },
    });
    expect(lift.today.kilograms).toBeCloseTo(100.65, 6);
    expect(lift.today.lossShare).toBe(0);
    expect(lift).toMatchObject({ movement: "clean-and-jerk", name: "clean and jerk", reps: 1 });
  });
});

describe("a quantile of the ends of a day", () => {
  it("counts days without a lift as nothing", () => {
    const ends = [
      { best: 100, misses: 0, chance: 0.6 },
      { best: undefined, misses: 3, chance: 0.1 },
      { best: 90, misses: 1, chance: 0.3 },
    ];
    expect([0.1, 0.3, 0.5, 0.9].map((share) => outcomeQuantile(ends, share))).toEqual([0, 90, 100, 100]);
  });
});

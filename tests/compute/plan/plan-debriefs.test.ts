import { describe, expect, it } from "vitest";
import { makePlan } from "../../../src/compute/make-plan.ts";
import type { Athlete, LoggedResult } from "../../../src/models/athlete.ts";
import { planSchema } from "../../../src/models/plan/plan.ts";
import { seconds } from "../../../src/models/quantity.ts";
import { demoData } from "../../support/demo-data.ts";

const data = demoData();
const workout = data.workouts.find(({ parts }) => parts[0]?.clock.kind === "for-time") ?? data.workouts[0];
const athlete = data.athletes[0];
if (!workout || !athlete) throw new Error("the demonstration has athletes and workouts");
const part = workout.parts[0]?.name ?? "";
const planOf = (results: readonly LoggedResult[], more: Partial<Athlete> = {}) =>
  makePlan({ athlete: { ...athlete, ...more, results }, workout, data, date: "2026-11-29" });
const logged = (more: Partial<LoggedResult>): LoggedResult => ({
  workout: workout.id,
  part,
  splits: [],
  attempts: [],
  version: "prescribed",
  ...more,
});

describe("results of a plan", () => {
  const plain = planOf([]);
  const target = plain.parts[0]?.pacing?.result.target ?? 0;

  it("are none before the workout is done, nor from another workout", () => {
    expect(plain.debriefs).toBeUndefined();
    expect(planOf([logged({ workout: "something-else", time: seconds(500) })]).debriefs).toBeUndefined();
  });

  it("are held against their part, the last try first in say", () => {
    const plan = planOf([logged({ time: seconds(2 * target) }), logged({ time: seconds(target) })]);
    expect(plan.debriefs).toHaveLength(1);
    const [debrief] = plan.debriefs ?? [];
    expect(debrief?.logged.time).toBeCloseTo(target, 6);
    expect(debrief?.standing).toBe("inside");
    expect(() => planSchema.parse(plan)).not.toThrow();
  });

  it("conclude nothing from a scaled version", () => {
    const [debrief] = planOf([logged({ time: seconds(0.8 * target), version: "scaled" })]).debriefs ?? [];
    expect([debrief?.causes, debrief?.secondTry.why]).toEqual([[], "not-known"]);
  });

  it("leave no second try where the deadline is hours away", () => {
    // The competition of the demonstration closes in the evening of a day: a result of that noon leaves no night.
    const closes = data.competitions.get(workout.competition ?? "")?.closes ?? "";
    const day = closes.slice(0, 10);
    const [debrief] = planOf([logged({ time: seconds(1.4 * target), date: day })]).debriefs ?? [];
    expect([debrief?.secondTry.answer, debrief?.secondTry.why]).toEqual(["leave-it", "no-time"]);
  });
});

import { describe, expect, it } from "vitest";
import { planSchema } from "../../src/models/plan/plan.ts";
import { samplePlans } from "./sample-plan.ts";

describe.each(Object.entries(samplePlans))("the sample plan %s", (_name, plan) => {
  it("is a plan by the schema", () => {
    expect(planSchema.safeParse(plan).error).toBeUndefined();
  });

  it("has clocks that follow one another and sets that add up", () => {
    for (const { pacing } of plan.parts) {
      for (const [index, row] of (pacing?.rows ?? []).entries()) {
        expect(row.end).toBeGreaterThan(row.start);
        expect(row.start).toBe(pacing?.rows[index - 1]?.end ?? 0);
        expect(row.sets.reduce((sum, set) => sum + set.amount, 0)).toBe(row.amount);
      }
    }
  });

  it("has bars whose plates add up to the load", () => {
    const attempts = plan.parts.flatMap((part) => part.lifting?.lifts.flatMap((lift) => lift.attempts) ?? []);
    for (const { load } of attempts) {
      const side = (load.perSide ?? []).reduce((sum, { plate, count }) => sum + plate.value * count, 0);
      expect((load.bar?.value ?? 0) + 2 * side).toBeCloseTo(load.mass.value, 9);
    }
  });
});

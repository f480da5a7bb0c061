import { describe, expect, it } from "vitest";
import { planTotal, resultOf } from "../../../src/compute/plan/plan-total.ts";
import { samplePlans } from "../../support/sample-plan.ts";
import { without } from "../../support/without.ts";

const [first, lifted] = samplePlans.forTimeThenLift.parts;
if (!first?.pacing || !lifted?.lifting) throw new Error("the sample has a part for time and a lift");
const [lift] = lifted.lifting.lifts;
if (!lift) throw new Error("the sample has a lift");
const sum = { ...lifted.lifting, sum: true, lifts: [lift, lift] };
const heavier = { ...lift, expected: { ...lift.expected, target: lift.expected.target + 1 } };

describe("the result of a part", () => {
  it("is that of its pace, or the sum of its lifts", () => {
    expect(resultOf(first)).toEqual(first.pacing?.result);
    expect(resultOf(lifted)).toEqual(lift.expected);
    expect(resultOf({ ...lifted, lifting: sum })?.cautious).toBe(2 * lift.expected.cautious);
    // Of several lifts that are not added the heaviest counts.
    const heaviest = { ...sum, sum: false, lifts: [lift, heavier] };
    expect(resultOf({ ...lifted, lifting: heaviest })).toEqual(heavier.expected);
    expect(resultOf(without(first, "pacing"))).toBeUndefined();
  });

  it("is in loads where loads are lifted for reps in rounds that are paced too", () => {
    const paced = {
      ...lifted,
      ...(first.pacing && { pacing: first.pacing }),
      score: "load-times-reps" as const,
      lifting: { ...sum, lifts: [{ ...lift, reps: 3 }] },
    };
    // 63 kg expected, three reps each.
    expect(resultOf(paced)?.target).toBe(3 * 63);
  });
});

describe("a total", () => {
  it("adds target and percentiles, and is not told where a part has no result", () => {
    expect(planTotal(["B", "B"], [lifted])?.result.hopeful).toBe(2 * lift.expected.hopeful);
    expect(planTotal(["A", "B"], [without(first, "pacing"), lifted])).toBeUndefined();
    expect(planTotal(undefined, [lifted])).toBeUndefined();
  });
});

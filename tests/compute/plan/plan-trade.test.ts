import { describe, expect, it } from "vitest";
import { type ComparedPart, planTrade } from "../../../src/compute/plan/plan-trade.ts";
import { sampleField } from "../../support/sample-field.ts";
import { samplePlans } from "../../support/sample-plan.ts";

const [first, lifted] = samplePlans.forTimeThenLift.parts;
if (!first?.pacing || !lifted?.lifting) throw new Error("the sample has a part for time and a lift");
const finish = first.pacing.duration;
const range = (target: number) => ({ target, cautious: target, middle: target, hopeful: target });
const a: ComparedPart = {
  plan: first,
  part: "A",
  field: sampleField({ [finish]: 1 }, { kind: "time" }),
  results: [{ side: "finished", range: range(finish), chance: 1 }],
};
const b: ComparedPart = {
  plan: lifted,
  part: "B",
  field: sampleField({ 140: 1 }, { unit: "lb" }),
  results: [{ side: "finished", range: range(140), chance: 1 }],
  plate: 5,
};

describe("what holding back trades", () => {
  it("is what of the strength is still lost at the last lift, and plates in kilograms", () => {
    const trade = planTrade(a, b, false);
    // 66.5 kg with 6.3 % lost are 70.97 kg fresh; 3 % of that is still lost at the last lift.
    expect(trade?.lift.kilogramsLost).toBeCloseTo((66.5 / 0.937) * 0.03, 9);
    expect(trade?.lift.plate).toEqual({ inField: 5, kilograms: 5 * 0.45359237 });
    expect(trade?.first).toMatchObject({ target: first.pacing?.result.target, unit: "second" });
    expect(trade?.first.later(0.1)).toBeCloseTo(0.1 * finish, 9);
  });

  it("costs what the finish-time table says of a later end", () => {
    const table = [
      { finish, until: finish, firstLift: 600, lifts: 3, loads: [], expected: 62 },
      { finish: finish + 60, until: finish + 60, firstLift: 660, lifts: 3, loads: [], expected: 61 },
    ];
    const lifting = { ...lifted.lifting, finishTable: table } as NonNullable<typeof lifted.lifting>;
    const trade = planTrade(a, { ...b, plan: { ...lifted, lifting } }, false);
    // A kilogram a minute.
    expect(trade?.lift.costOfLater(30)).toBeCloseTo(0.5, 9);
    expect(trade?.lift.costOfLater(0)).toBe(0);
  });

  it("is nothing before a part that is no lift, or where no strength is lost", () => {
    expect(planTrade(b, a, false)).toBeUndefined();
    const lifts = (lifted.lifting?.lifts ?? []).map((lift) => ({
      ...lift,
      today: { ...lift.today, lossAtLast: 0 },
    }));
    const fresh = { ...lifted, lifting: { ...lifted.lifting, lifts } } as typeof lifted;
    expect(planTrade(a, { ...b, plan: fresh }, false)).toBeUndefined();
  });
});

import { describe, expect, it } from "vitest";
import { heldBack } from "../../../src/compute/plan/held-back.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { PLACES_CONSTANTS } from "../../../src/compute/places/constants.ts";
import type { PartPlan } from "../../../src/models/plan/plan.ts";
import { samplePlans } from "../../support/sample-plan.ts";

const constants = withOverrides(PLACES_CONSTANTS);
const [first, second] = samplePlans.forTimeThenLift.parts;
if (!first?.pacing || !second?.lifting) throw new Error("the sample has a part for time and a lift");
const { pacing } = first;
const { lifting } = second;
const above = (load: number): number => load + 2.5;
const lifted = (finishTable: typeof lifting.finishTable): PartPlan => ({
  ...second,
  start: { ...second.start, kind: "after", after: first.name },
  lifting: { ...lifting, finishTable },
});
const row = (finish: number, expected: number) => ({
  finish,
  until: finish,
  firstLift: finish,
  lifts: 3,
  loads: [],
  expected,
});
// 66.5 kg with 6.3 % lost are 70.97 kg fresh; 3 % of that is still lost at the last lift.
const lost = (66.5 / 0.937) * 0.03;

describe("what holding back buys at the lift after it", () => {
  it("is twice the share of effort of the strength still lost, by ten seconds where the part is for time", () => {
    const held = heldBack(first, lifted([]), above, constants);
    expect(held).toMatchObject({ lift: second.name, held: 10, unit: "second", step: 2.5 });
    expect(held?.kilograms).toBeCloseTo((2 * 10 * lost) / pacing.result.target, 9);
    // A step of 2.5 kg takes 2.5 / (2 x 2.13) of the part: more than half.
    expect(held?.stepShare).toBeCloseTo(2.5 / (2 * lost), 9);
  });

  it("is less where a later end takes time from the window: here two kilograms a minute", () => {
    const table = [row(pacing.duration, 62), row(pacing.duration + 60, 60)];
    const [free, dear] = [
      heldBack(first, lifted([]), above, constants),
      heldBack(first, lifted(table), above, constants),
    ];
    expect((free?.kilograms ?? 0) - (dear?.kilograms ?? 0)).toBeCloseTo(2 / 6, 9);
  });

  it("is told by reps where the clock ends the part, which takes no time from the lift", () => {
    const amrap: PartPlan = {
      ...first,
      pacing: { ...pacing, score: "reps", result: { ...pacing.result, target: 200 } },
    };
    const held = heldBack(
      amrap,
      lifted([row(pacing.duration, 62), row(pacing.duration + 60, 60)]),
      above,
      constants,
    );
    // One rep in forty of 200.
    expect(held).toMatchObject({ held: 5, unit: "rep" });
    expect(held?.kilograms).toBeCloseTo(2 * 0.025 * lost, 9);
  });

  it("is nothing where no lift follows right after", () => {
    expect(heldBack(second, first, above, constants)).toBeUndefined();
    const later = { ...second, start: { ...second.start, kind: "after" as const, after: "another" } };
    expect(heldBack(first, later, above, constants)).toBeUndefined();
  });
});

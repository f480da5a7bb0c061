import { describe, expect, it } from "vitest";
import { type BoardRow, flagsOf, lookAt, sharedCare } from "../../src/components/board-row.ts";
import { samplePlans } from "../support/sample-plan.ts";

const rowOf = (plan: BoardRow["plan"]): BoardRow => ({
  plan,
  goal: undefined,
  link: "",
  gaps: [],
  since: "new",
  groups: [],
  message: "",
});
const plan = samplePlans.forTimeThenLift;
const lift = rowOf(plan);
const careful = rowOf({
  ...plan,
  cautions: [...plan.cautions, { id: "x", title: "Heat", say: "Drink.", weight: "care", onSheet: false }],
});

describe("a row of the board", () => {
  it("says once what every athlete is to be careful about", () => {
    expect(sharedCare([lift, careful])).toEqual(["Miss safely"]);
    expect(lookAt(careful, ["Miss safely"])).toEqual(["Caution: Heat"]);
    expect(lookAt(lift, ["Miss safely"])).toEqual([]);
  });

  it("says everything where there is one athlete", () => {
    expect(sharedCare([lift])).toEqual([]);
    expect(sharedCare([])).toEqual([]);
    expect(lookAt(lift, [])).toEqual(["Caution: Miss safely"]);
  });

  it("begins with what is withheld and what could not be planned", () => {
    const withheld = rowOf(samplePlans.almostNothingKnown);
    const first = lookAt(withheld, []);
    expect(first[0]).toMatch(/^Withheld: /);
    expect(first[1]).toMatch(/^Not planned: /);
  });

  it("is filtered by what of it wants to be looked at", () => {
    expect(flagsOf({ ...rowOf(samplePlans.almostNothingKnown), gaps: ["Body mass"] })).toEqual(
      expect.arrayContaining(["withheld", "not-planned", "level-alone", "to-send"]),
    );
    expect(flagsOf({ ...lift, since: "same" })).not.toContain("to-send");
    expect(flagsOf(lift)).toContain("not-done");
  });
});

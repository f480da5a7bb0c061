import { expect, it } from "vitest";
import { isUnfinished } from "../../src/wording/unfinished.ts";
import { samplePlans } from "../support/sample-plan.ts";

const done = samplePlans.forTimeThenLift.parts[0]?.pacing;
const cut = samplePlans.almostNothingKnown.parts[0]?.pacing;
const endless = samplePlans.twentyRounds.parts[0]?.pacing;
if (!done || !cut || !endless) throw new Error("the samples have pacing");

it("a round whose work is all done is finished", () => {
  expect(done.rounds.map(({ round }) => isUnfinished(done, round))).toEqual([
    false,
    false,
    false,
    false,
    false,
  ]);
});

it("a round in which a visit is cut short is not", () => {
  expect(isUnfinished(cut, 1)).toBe(true);
});

it("a round beyond those that count is not, even where no visit is cut", () => {
  expect([isUnfinished(endless, 20), isUnfinished({ ...endless, rows: [] }, 21)]).toEqual([false, true]);
});

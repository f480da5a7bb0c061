import { expect, it } from "vitest";
import { groupSets } from "../../src/sheet/set-lines.ts";
import { samplePlans } from "../support/sample-plan.ts";

const twenty = samplePlans.twentyRounds.parts[0]?.pacing;
const five = samplePlans.forTimeThenLift.parts[0]?.pacing;
if (!twenty || !five) throw new Error("the samples have pacing");

it("neighbouring rounds of equal sets stand together", () => {
  expect(groupSets(twenty, "push-up")).toEqual([
    { rounds: "1–12", sets: "8" },
    { rounds: "13–20", sets: "5-3" },
  ]);
  expect(groupSets(five, "pull-up")).toEqual([
    { rounds: "1–2", sets: "7-5" },
    { rounds: "3–4", sets: "5-4-3" },
    { rounds: "5", sets: "4-4-4" },
  ]);
});

it("a movement that is not there has no groups", () => {
  expect(groupSets(five, "rowing")).toEqual([]);
});

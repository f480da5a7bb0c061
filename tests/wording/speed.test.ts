import { expect, it } from "vitest";
import { saySpeed } from "../../src/wording/speed.ts";
import { samplePlans } from "../support/sample-plan.ts";

const pacing = samplePlans.forTimeThenLift.parts[0]?.pacing;
if (!pacing) throw new Error("the sample has pacing");

it("says where speed is cheap and where it is dear", () => {
  const speed = { cheapest: { name: "burpee", cost: 0.017 }, dearest: { name: "row", cost: 0.21 } };
  expect(saySpeed({ ...pacing, speed })).toBe(
    "If you hurry, hurry in the burpee; the same gain costs many times as much in the row.",
  );
});

it("says nothing where the movements are alike", () => {
  expect(saySpeed({ ...pacing, speed: undefined })).toBeUndefined();
});

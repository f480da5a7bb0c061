import { expect, it } from "vitest";
import { placesBlock } from "../../src/sheet/blocks-places.ts";
import { sayPlaces } from "../../src/wording/places.ts";
import { samplePlans } from "../support/sample-plan.ts";

it("the field is told part by part where there is one", () => {
  const plan = samplePlans.forTimeThenLift;
  const places = plan.parts[0]?.places;
  const block = placesBlock(plan);
  expect(block?.title).toBe("In the field");
  expect(block?.lines.map(({ runs }) => runs.map(({ text }) => text))).toEqual([
    ["A:", places && sayPlaces(places, "kg").join(" ")],
  ]);
  expect(placesBlock(samplePlans.twentyRounds)).toBeUndefined();
});

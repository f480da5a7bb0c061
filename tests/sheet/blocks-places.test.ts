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

it("without a field it still says which part breaks ties, in short too, and what holding back buys", () => {
  const { forTimeThenLift } = samplePlans;
  const [first, second] = forTimeThenLift.parts;
  if (!first || !second) throw new Error("two parts are needed");
  const { places, ...unplaced } = first;
  expect(places).toBeDefined();
  const heldBack = {
    lift: "b",
    held: 10,
    unit: "second",
    kilograms: 0.4,
    step: 2.5,
    stepShare: 0.05,
  } as const;
  const plan = {
    ...forTimeThenLift,
    parts: [
      { ...unplaced, heldBack },
      { ...second, tiesBy: "a" },
    ],
  };
  const block = placesBlock(plan);
  expect(block?.title).toBe("What it is worth");
  expect(block?.lines.map(({ runs }) => runs[0]?.text)).toEqual(["A:", "B:"]);
  expect(placesBlock(plan, "short")?.lines.map(({ runs }) => runs.map(({ text }) => text))).toEqual([
    ["B:", "Ties here go by part a: at the same result the better one there is placed first."],
  ]);
});

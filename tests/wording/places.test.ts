import { expect, it } from "vitest";
import { sayExpectedPlace, sayHoldBack, sayWorth } from "../../src/wording/places.ts";
import { samplePlans } from "../support/sample-plan.ts";

const nb = (text: string): string => text.replaceAll("_", "\u00a0");
const places = samplePlans.forTimeThenLift.parts[0]?.places;
const holdBack = places?.holdBack;
if (!places || !holdBack) throw new Error("the sample has places");

it("the expected place stands among the size of the field", () => {
  expect(sayExpectedPlace(places)).toBe("About place 96 of 412; 23% of the field is ahead.");
});

it("a second or a step of plates is told in places", () => {
  expect(sayWorth(places)).toBe(nb("5_seconds better is worth about 6 places."));
  expect(sayWorth({ ...places, perUnit: { unit: "plate", amount: 1, places: 1 } })).toBe(
    nb("1_step of plates better is worth about 1 place."),
  );
  const { part, fieldSize, expected, shareAhead, crowds } = places;
  expect(sayWorth({ part, fieldSize, expected, shareAhead, crowds })).toBeUndefined();
});

it("holding back is answered with its numbers, either way", () => {
  expect(sayHoldBack(places, "kg")).toBe(
    nb("Do not hold back: 20 s slower would lift about 1_kg more, 14 places worse."),
  );
  expect(sayHoldBack({ ...places, holdBack: { ...holdBack, pays: true, placesDifference: 1 } }, "kg")).toBe(
    nb("Holding back pays: 20 s slower lifts about 1_kg more, 1 place better."),
  );
});

import { describe, expect, it } from "vitest";
import {
  sayCrowds,
  sayExpectedPlace,
  sayHoldBack,
  sayPlaces,
  sayTogether,
  sayWorth,
} from "../../src/wording/places.ts";
import { samplePlans } from "../support/sample-plan.ts";
import { without } from "../support/without.ts";

const nb = (text: string): string => text.replaceAll("_", "\u00a0");
const places = samplePlans.forTimeThenLift.parts[0]?.places;
const holdBack = places?.holdBack;
if (!places || !holdBack) throw new Error("the sample has places");

it("the expected place stands among the size of the field", () => {
  expect(sayExpectedPlace(places)).toBe("About place 96 of 412; 23% of the field is ahead.");
  for (const expected of [411.6, 412.7])
    expect(sayExpectedPlace({ ...places, expected })).toBe("Behind nearly all of a field of 412.");
});

it("a second or a step of plates is told in places", () => {
  expect(sayWorth(places)).toBe(nb("5_seconds better is worth about 6 places."));
  const plate = { unit: "plate", amount: 1 } as const;
  expect(sayWorth({ ...places, perUnit: { ...plate, places: 1 } })).toBe(
    "The next load that can be made is worth about 1 place.",
  );
  expect(sayWorth({ ...places, perUnit: { ...plate, places: 0.3 } })).toBe(
    "The next load that can be made is worth less than a place.",
  );
  expect(sayWorth(without(places, "perUnit"))).toBeUndefined();
});

it("crowds are told with what passes them, loads in the unit of the field and of the reader", () => {
  expect(sayCrowds(places, "kg")).toBe("11 share 8:00, 7:59 passes them.");
  const loads = { ...places, scored: "lb" as const, crowds: [{ score: 225, count: 63, passWith: 226.8 }] };
  expect(sayCrowds(loads, "lb")).toBe(nb("63 share 225_lb, 227_lb passes them."));
  // 225 lb are 102.06 kg, 226.8 lb are 102.87 kg
  expect(sayCrowds(loads, "kg")).toBe(nb("63 share 225_lb (102_kg), 103_kg passes them."));
  const reps = { ...places, scored: "reps" as const, crowds: [{ score: 78, count: 340, passWith: 79 }] };
  expect(sayCrowds(reps, "kg")).toBe(nb("340 share 78_reps, 79_reps passes them."));
  expect(sayCrowds({ ...places, crowds: [] }, "kg")).toBeUndefined();
});

describe("holding back", () => {
  const say = (more: Partial<typeof holdBack>) =>
    sayHoldBack({ ...places, holdBack: { ...holdBack, ...more } }, "kg");

  it("is answered with its numbers", () => {
    expect(say({})).toBe(
      nb(
        "Do not hold back here for the lift in part B: going 2.5% easier costs about 20_s and 18 places of 412, and adds about 0.8_kg and 4 places of 398 there.",
      ),
    );
    expect(say({ answer: "yes", liftFieldSize: 412, placesLost: 0.2, unit: "rep", lost: 3.4 })).toBe(
      nb(
        "Holding back here for the lift in part B should pay: going 2.5% easier costs about 3_reps and less than a place, and adds about 0.8_kg and 4 places there.",
      ),
    );
  });

  it("says where it is open, where it takes more than it gives, and that ties were counted", () => {
    expect(say({ answer: "unsure", tiesCounted: true })).toBe(
      nb(
        "Whether to hold back here for the lift in part B is open: going 2.5% easier costs about 20_s and 18 places of 412, and adds about 0.8_kg and 4 places of 398 there. It pays only if strength comes back as reckoned, which nobody has measured; in doubt, do not. Ties in part B go by this part; that is counted.",
      ),
    );
    expect(say({ kilogramsGained: -0.6 })).toBe(
      nb(
        "Do not hold back here for the lift in part B: going 2.5% easier costs about 20_s and 18 places of 412, and the time it takes from the lift costs more than the strength it saves, about 0.6_kg.",
      ),
    );
  });

  it("is not spoken of without the numbers", () => {
    const alone = without(places, "holdBack");
    expect(sayHoldBack(alone, "kg")).toBeUndefined();
    expect(sayPlaces(alone, "kg")).toHaveLength(3);
  });
});

describe("parts that hang together without a field", () => {
  const held = { lift: "B", held: 10, unit: "second", kilograms: 0.4, step: 2.5, stepShare: 0.09 } as const;
  const say = (heldBack: Parameters<typeof sayTogether>[0]["heldBack"]): string =>
    sayTogether({ heldBack }, "kg").join(" ");

  it("say what ten seconds held back buy, and what one step of plates costs", () => {
    expect(say(held)).toBe(
      nb(
        "Each 10_s held back here buy about 0.4_kg at the lift in part B, so one step of plates there (2.5_kg) costs about 63_s here.",
      ),
    );
    expect(say({ ...held, unit: "rep", held: 3 })).toBe(
      nb(
        "Each 3_reps held back here buy about 0.4_kg at the lift in part B, so one step of plates there (2.5_kg) costs about 19_reps here.",
      ),
    );
    expect(say({ ...held, unit: "rep", held: 1 })).toContain("Every 1\u00a0rep held back here buys");
  });

  it("say not to, where a step of plates takes more than anybody gives for it", () => {
    const dear =
      "Do not hold back here for the lift in part B: 10_s would add about 0.4_kg there, and a step of plates is 2.5_kg.";
    expect(say({ ...held, stepShare: 0.4 })).toBe(nb(dear));
    expect(sayTogether({ heldBack: without(held, "stepShare") }, "kg")).toEqual([nb(dear)]);
  });

  it("say where it buys nothing, and how ties are broken", () => {
    expect(say({ ...held, kilograms: -0.2 })).toBe(
      "Do not hold back here for the lift in part B: what it saves in strength the shorter window takes.",
    );
    // No window is shorter for it: there is only too little to gain.
    expect(say({ ...held, kilograms: 0.04 })).toBe(
      "Do not hold back here for the lift in part B: it would add nothing there.",
    );
    expect(sayTogether({ tiesBy: "A" }, "kg")).toEqual([
      "Ties here go by part A: at the same result the better one there is placed first.",
    ]);
    expect(sayTogether({}, "kg")).toEqual([]);
  });
});

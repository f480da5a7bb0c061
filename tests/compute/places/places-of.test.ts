import { PLACES_CONSTANTS } from "../../../src/compute/places/constants.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { describe, expect, it } from "vitest";
import { placeOfLoad, placesOf } from "../../../src/compute/places/places-of.ts";
import { rankField } from "../../../src/compute/places/rank-field.ts";
import { near } from "../../support/near.ts";
import { sampleField, scores } from "../../support/sample-field.ts";

const constants = withOverrides(PLACES_CONSTANTS);

const range = (cautious: number, middle: number, hopeful: number) => ({
  target: middle,
  cautious,
  middle,
  hopeful,
});

describe("what a result is worth", () => {
  it("among loads: the place, the places one plate more gains, the crowd and what passes it", () => {
    const field = sampleField({ 80: 1, 85: 1, 90: 1, 95: 1, 100: 14, 105: 1, 110: 1 });
    const places = placesOf(
      {
        part: "b",
        field,
        results: [{ side: "finished", range: range(100, 100, 100), chance: 1 }],
        plate: 2.5,
        loadAbove: (load) => load + 2.5,
      },
      constants,
    );
    expect(places).toEqual({
      part: "b",
      fieldSize: 20,
      expected: near(10), // two better, half of fourteen
      shareAhead: near(0.45),
      perUnit: { unit: "plate", amount: 1, places: near(7) },
      scored: "kg",
      crowds: [{ score: 100, count: 14, passWith: 102.5 }],
    });
  });

  it("for time: places per second, and a second less passes a crowd", () => {
    const field = sampleField({ 590: 1, 600: 10, 610: 1, 620: 1 }, { kind: "time" });
    const places = placesOf(
      {
        part: "a",
        field,
        results: [{ side: "finished", range: range(600, 600, 600), chance: 1 }],
      },
      constants,
    );
    expect(places?.perUnit).toEqual({ unit: "second", amount: 1, places: near(5) });
    expect(places?.crowds).toEqual([{ score: 600, count: 10, passWith: 599 }]);
  });

  it("where the cap will probably stop the athlete: places per rep", () => {
    const field = sampleField(
      { 600: 4 },
      { kind: "time", capped: scores({ 100: 1, 101: 1, 102: 1, 103: 1 }) },
    );
    const places = placesOf(
      {
        part: "a",
        field,
        results: [
          { side: "capped", range: range(101.5, 101.5, 101.5), chance: 0.75 },
          { side: "finished", range: range(650, 650, 650), chance: 0.25 },
        ],
      },
      constants,
    );
    // capped: 4 finished and two capped ahead, 7th; finished: 5th
    expect(places?.expected).toBeCloseTo(0.75 * 7 + 0.25 * 5, 9);
    expect(places?.perUnit).toEqual({ unit: "rep", amount: 1, places: near(1) });
  });

  it("is not told without a field", () => {
    const results = [{ side: "finished", range: range(1, 1, 1), chance: 1 }] as const;
    expect(placesOf({ part: "a", field: sampleField({}), results }, constants)).toBeUndefined();
    expect(placesOf({ part: "a", field: sampleField({ 1: 1 }), results: [] }, constants)).toBeUndefined();
  });

  it("counts of those equal as many ahead as the tie-break says", () => {
    const field = sampleField({ 100: 10 });
    const results = [{ side: "finished", range: range(100, 100, 100), chance: 1 }] as const;
    expect(placesOf({ part: "b", field, results, tied: 0.2 }, constants)?.expected).toBeCloseTo(3, 9);
  });

  it("takes days on which the cap stops the athlete as that, not as a late finish", () => {
    const field = sampleField({ 500: 4 }, { kind: "time", capped: scores({ 90: 1, 100: 1 }) });
    const results = [{ side: "finished", range: range(660, 590, 580), chance: 1 }] as const;
    // Better and middle days finish fifth; on the worst 600/660 of 105 reps are 95, one of the capped ahead: sixth.
    const places = placesOf({ part: "a", field, results, cap: { seconds: 600, work: 105 } }, constants);
    expect(places?.expected).toBeCloseTo(0.7 * 5 + 0.3 * 6, 9);
  });

  it("tells the trade between a part and the lift only where one is given", () => {
    const field = sampleField({ 100: 1 });
    const part = {
      part: "b",
      field,
      results: [{ side: "finished", range: range(90, 90, 90), chance: 1 }] as const,
    };
    expect(placesOf(part, constants)).not.toHaveProperty("holdBack");
    const ranked = rankField(field);
    const possible = [{ side: "finished", score: 90, chance: 1 }] as const;
    const trade = {
      first: { field: ranked, results: possible, target: 90, unit: "rep" as const, later: () => 0 },
      lift: {
        part: "c",
        field: ranked,
        results: possible,
        plate: { inField: 1, kilograms: 1 },
        kilogramsLost: 1,
        costOfLater: () => 0,
      },
      tiesByFirst: false,
    };
    expect(placesOf({ ...part, trade }, constants)?.holdBack).toMatchObject({ lift: "c", answer: "no" });
  });
});

describe("the place of a load", () => {
  it("is behind everyone when nothing was made", () => {
    const place = placeOfLoad(sampleField({ 90: 2, 100: 1 }));
    expect([undefined, 80, 95, 120].map(place)).toEqual([4, 4, 2, 1]);
  });
});

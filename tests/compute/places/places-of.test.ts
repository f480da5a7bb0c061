import { describe, expect, it } from "vitest";
import { placeOfLoad, placesOf } from "../../../src/compute/places/places-of.ts";
import { near } from "../../support/near.ts";
import { sampleField, scores } from "../../support/sample-field.ts";

const range = (cautious: number, middle: number, hopeful: number) => ({
  target: middle,
  cautious,
  middle,
  hopeful,
});

describe("what a result is worth", () => {
  it("among loads: the place, the places one plate more gains, the crowd and what passes it", () => {
    const field = sampleField({ 80: 1, 85: 1, 90: 1, 95: 1, 100: 14, 105: 1, 110: 1 });
    const places = placesOf({
      part: "b",
      field,
      results: [{ side: "finished", range: range(100, 100, 100), chance: 1 }],
      plate: 2.5,
      loadAbove: (load) => load + 2.5,
    });
    expect(places).toEqual({
      part: "b",
      fieldSize: 20,
      expected: near(10), // two better, half of fourteen
      shareAhead: near(0.45),
      perUnit: { unit: "plate", amount: 1, places: near(7) },
      crowds: [{ score: 100, count: 14, passWith: 102.5 }],
    });
  });

  it("for time: places per second, and a second less passes a crowd", () => {
    const field = sampleField({ 590: 1, 600: 10, 610: 1, 620: 1 }, { kind: "time" });
    const places = placesOf({
      part: "a",
      field,
      results: [{ side: "finished", range: range(600, 600, 600), chance: 1 }],
    });
    expect(places?.perUnit).toEqual({ unit: "second", amount: 1, places: near(5) });
    expect(places?.crowds).toEqual([{ score: 600, count: 10, passWith: 599 }]);
  });

  it("where the cap will probably stop the athlete: places per rep", () => {
    const field = sampleField(
      { 600: 4 },
      { kind: "time", capped: scores({ 100: 1, 101: 1, 102: 1, 103: 1 }) },
    );
    const places = placesOf({
      part: "a",
      field,
      results: [
        { side: "capped", range: range(101.5, 101.5, 101.5), chance: 0.75 },
        { side: "finished", range: range(650, 650, 650), chance: 0.25 },
      ],
    });
    // capped: 4 finished and two capped ahead, 7th; finished: 5th
    expect(places?.expected).toBeCloseTo(0.75 * 7 + 0.25 * 5, 9);
    expect(places?.perUnit).toEqual({ unit: "rep", amount: 1, places: near(1) });
  });

  it("is not told without a field", () => {
    const results = [{ side: "finished", range: range(1, 1, 1), chance: 1 }] as const;
    expect(placesOf({ part: "a", field: sampleField({}), results })).toBeUndefined();
    expect(placesOf({ part: "a", field: sampleField({ 1: 1 }), results: [] })).toBeUndefined();
  });

  it("tells the trade between a part and the lift where one is given", () => {
    const field = sampleField({ 100: 1 });
    expect(
      placesOf({ part: "b", field, results: [{ side: "finished", range: range(90, 90, 90), chance: 1 }] }),
    ).not.toHaveProperty("holdBack");
  });
});

describe("the place of a load", () => {
  it("is behind everyone when nothing was made", () => {
    const place = placeOfLoad(sampleField({ 90: 2, 100: 1 }));
    expect([undefined, 80, 95, 120].map(place)).toEqual([4, 4, 2, 1]);
  });
});

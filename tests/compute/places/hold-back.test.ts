import { PLACES_CONSTANTS } from "../../../src/compute/places/constants.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { describe, expect, it } from "vitest";
import { holdBack, type HoldBackInput } from "../../../src/compute/places/hold-back.ts";
import { rankField } from "../../../src/compute/places/rank-field.ts";
import { near } from "../../support/near.ts";
import { sampleField, scores } from "../../support/sample-field.ts";

const constants = withOverrides(PLACES_CONSTANTS);

/** One athlete at each whole score from `from` on. */
const even = (from: number, many: number): Readonly<Record<number, number>> =>
  Object.fromEntries(Array.from({ length: many }, (_, i): [number, number] => [from + i, 1]));

const seconds = rankField(sampleField(even(500, 200), { kind: "time" }));
const kilos = rankField(sampleField(even(60, 200)));

const input: HoldBackInput = {
  first: {
    field: seconds,
    results: [{ side: "finished", score: 600.5, chance: 1 }],
    target: 600.5,
    unit: "second",
    later: (share) => share * 600.5,
  },
  lift: {
    part: "b",
    field: kilos,
    results: [{ side: "finished", score: 90.5, chance: 1 }],
    plate: { inField: 1, kilograms: 1 },
    kilogramsLost: 10,
    costOfLater: () => 0,
  },
  tiesByFirst: false,
};

describe("holding back before a lift", () => {
  it("does not pay where a second costs as much as a place and a kilo gains one", () => {
    // 2.5 % of 600.5 s is 15 s, 15 places; 5 % of 10 kg regained is 0.5 kg, half a step of plates and half a place.
    expect(holdBack(input, constants)).toEqual({
      lift: "b",
      answer: "no",
      share: 0.025,
      lost: near(15.0125),
      unit: "second",
      placesLost: near(15),
      kilogramsGained: near(0.5),
      placesWon: near(0.5),
      liftFieldSize: 200,
      tiesCounted: false,
    });
  });

  it("pays where hardly anyone is near in the first part and many are near in the lift", () => {
    const sparse = rankField(sampleField({ 400: 100, 900: 100 }, { kind: "time" }));
    // Up to 10 % slower stays between 400 and 900 s; 20 % of 10 kg is 2 kg: two places, half of which are as sure as that.
    expect(holdBack({ ...input, first: { ...input.first, field: sparse } }, constants)).toMatchObject({
      answer: "yes",
      share: 0.1,
      placesLost: 0,
      kilogramsGained: near(2),
      placesWon: near(2),
    });
  });

  it("is open where it pays only with all the strength that is counted on", () => {
    // At 10 % 60 s and one place are lost; 2 kg are two places, half of that is one: no more than is lost.
    const one = rankField(sampleField({ 400: 99, 610: 1, 900: 100 }, { kind: "time" }));
    const trade = holdBack({ ...input, first: { ...input.first, field: one } }, constants);
    expect(trade).toMatchObject({ answer: "unsure", placesLost: near(1), placesWon: near(2) });
  });

  it("weighs places by the size of each field", () => {
    // 10 % (660.5 s) loses one place of 20 for two of 2,000 and is worse; 2.5 % (615.5 s) loses none for half a place.
    const few = rankField(sampleField({ 400: 9, 630: 1, 900: 10 }, { kind: "time" }));
    const many = rankField(sampleField(even(60, 2000)));
    const trade = holdBack(
      {
        ...input,
        first: { ...input.first, field: few },
        lift: { ...input.lift, field: many },
      },
      constants,
    );
    expect(trade).toMatchObject({ share: 0.025, placesLost: 0, placesWon: near(0.5) });
  });

  it("counts the time that a later start takes from the lift", () => {
    const lift = { ...input.lift, costOfLater: (late: number) => late / 10 };
    // 15 s later costs 1.5 kg, and half a kilogram comes back.
    expect(holdBack({ ...input, lift }, constants)).toMatchObject({
      answer: "no",
      kilogramsGained: near(0.5 - 1.50125),
      placesWon: near(0.5 - 1.50125),
    });
  });

  it("counts the ties of the lift that the first part breaks", () => {
    const tied = rankField(sampleField({ 90: 40 }));
    const lift = {
      ...input.lift,
      field: tied,
      results: [{ side: "finished", score: 90, chance: 1 }] as const,
      kilogramsLost: 0,
    };
    const broken = holdBack({ ...input, lift, tiesByFirst: true }, constants);
    const notBroken = holdBack({ ...input, lift }, constants);
    // 15 places of 200 further back in the first part is 15/201 of 40 equals at the lift.
    expect(notBroken.placesWon - broken.placesWon).toBeCloseTo((15 / 201) * 40, 9);
  });

  it("means fewer reps where the first part is not for time", () => {
    const reps = rankField(sampleField(even(100, 100), { kind: "reps" }));
    const first = {
      ...input.first,
      field: reps,
      results: [{ side: "finished", score: 150.5, chance: 1 }] as const,
      target: 150.5,
      unit: "rep" as const,
    };
    // 2.5 % of 150.5 reps is 3.76: 146.74, four places further back.
    expect(holdBack({ ...input, first }, constants)).toMatchObject({
      placesLost: near(4),
      lost: near(3.7625),
      unit: "rep",
    });
  });

  it("is stopped by the cap where it would end later", () => {
    const capped = rankField(sampleField({ 500: 10 }, { kind: "time", capped: scores({ 98: 5, 90: 5 }) }));
    const first = { ...input.first, field: capped, cap: { seconds: 605, work: 100 } };
    // Planned last of those who finish, 11th; 615.5 s are 98 of 100 reps in 605 s, tied with five: 13.5th.
    expect(holdBack({ ...input, first }, constants).placesLost).toBeCloseTo(2.5, 9);
  });
});

import { describe, expect, it } from "vitest";
import { holdBack, type HoldBackInput } from "../../../src/compute/places/hold-back.ts";
import { rankField } from "../../../src/compute/places/rank-field.ts";
import { near } from "../../support/near.ts";
import { sampleField } from "../../support/sample-field.ts";

/** One athlete at each whole score from `from` on. */
const even = (from: number, many: number): Readonly<Record<number, number>> =>
  Object.fromEntries(Array.from({ length: many }, (_, i): [number, number] => [from + i, 1]));

const seconds = rankField(sampleField(even(500, 200), { kind: "time" }));
const kilos = rankField(sampleField(even(60, 60)));

const input: HoldBackInput = {
  first: { field: seconds, results: [{ side: "finished", score: 600.5, chance: 1 }], seconds: 600.5 },
  lift: {
    field: kilos,
    results: [{ side: "finished", score: 90.5, chance: 1 }],
    perKilogram: 1,
    kilogramsLost: 10,
  },
  tiesByFirst: false,
};

describe("holding back before a lift", () => {
  it("does not pay where a second costs as much as a place and a kilo gains one", () => {
    // 2.5 % of 600.5 s is 15 s, 15 places; 5 % of 10 kg regained is 0.5 kg: 91 kg instead of 90.5, half a place.
    const trade = holdBack(input);
    expect(trade.pays).toBe(false);
    expect(trade.secondsLost).toBeCloseTo(15.0125, 9);
    expect(trade.kilogramsGained).toBeCloseTo(0.5, 9);
    expect(trade.placesDifference).toBeCloseTo(15 - 0.5, 9);
  });

  it("pays where hardly anyone is near in the first part and many are near in the lift", () => {
    const sparse = rankField(sampleField({ 400: 100, 900: 100 }, { kind: "time" }));
    const trade = holdBack({ ...input, first: { ...input.first, field: sparse } });
    // Up to 10 % slower stays between 400 and 900 s; 20 % of 10 kg is 2 kg, 92.5 kg instead of 90.5: two places.
    expect(trade).toEqual({
      pays: true,
      secondsLost: near(60.05),
      kilogramsGained: near(2),
      placesDifference: near(-2),
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
    const broken = holdBack({ ...input, lift, tiesByFirst: true });
    const notBroken = holdBack({ ...input, lift });
    // 15 places of 200 further back in the first part is 15/201 of 40 equals at the lift.
    expect(broken.placesDifference - notBroken.placesDifference).toBeCloseTo((15 / 201) * 40, 9);
  });

  it("means fewer reps where the first part is not for time", () => {
    const reps = rankField(sampleField(even(100, 100), { kind: "reps" }));
    const first = {
      field: reps,
      results: [{ side: "finished", score: 150.5, chance: 1 }] as const,
      seconds: 600,
    };
    // 2.5 % of 150.5 reps is 3.76: 146.74, four places further back, against half a place.
    expect(holdBack({ ...input, first }).placesDifference).toBeCloseTo(4 - 0.5, 9);
  });
});

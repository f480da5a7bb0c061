import { describe, expect, it } from "vitest";
import { expectedPlace } from "../../../src/compute/places/expected-place.ts";
import { resultsOfRange } from "../../../src/compute/places/possible-results.ts";
import { rankField } from "../../../src/compute/places/rank-field.ts";
import { sampleField, scores } from "../../support/sample-field.ts";

const field = rankField(sampleField({ 90: 4, 100: 4, 110: 2 }));

describe("the expected place", () => {
  it("is the mean of the places: 95 kg (7th) or 105 kg (3rd), evenly, is 5th", () => {
    const results = [
      { side: "finished", score: 95, chance: 0.5 },
      { side: "finished", score: 105, chance: 0.5 },
    ] as const;
    expect(expectedPlace(field, results)).toBe(5);
  });

  it("averages places over the two sides of a cap, never scores", () => {
    const timed = rankField(sampleField({ 600: 3 }, { kind: "time", capped: scores({ 150: 4 }) }));
    const results = [
      { side: "finished", score: 590, chance: 0.5 }, // 1st
      { side: "capped", score: 160, chance: 0.5 }, // 4th
    ] as const;
    expect(expectedPlace(timed, results)).toBe(2.5);
  });

  it("improves seconds by taking off and reps by adding", () => {
    const timed = rankField(sampleField({ 600: 2 }, { kind: "time", capped: scores({ 150: 2 }) }));
    expect(expectedPlace(timed, [{ side: "finished", score: 601, chance: 1 }], { better: 2 })).toBe(1);
    expect(expectedPlace(timed, [{ side: "capped", score: 149, chance: 1 }], { better: 2 })).toBe(3);
  });

  it("of a range weighs its ends with three and its middle with four chances in ten", () => {
    const range = { target: 105, cautious: 95, middle: 105, hopeful: 115 };
    // 7th, 3rd and 1st: 0.3 x 7 + 0.4 x 3 + 0.3 x 1
    expect(expectedPlace(field, resultsOfRange(range, "finished"))).toBeCloseTo(3.6, 12);
  });
});

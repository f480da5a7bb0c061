import { describe, expect, it } from "vitest";
import { resultsOfRange, stoppedByCap } from "../../../src/compute/places/possible-results.ts";

describe("a range as possible results", () => {
  it("has the chances 0.3, 0.4 and 0.3, shared out where another side may happen too", () => {
    const range = { target: 2, cautious: 3, middle: 2, hopeful: 1 };
    expect(resultsOfRange(range, "finished", 0.5)).toEqual([
      { side: "finished", score: 3, chance: 0.15 },
      { side: "finished", score: 2, chance: 0.2 },
      { side: "finished", score: 1, chance: 0.15 },
    ]);
  });
});

describe("a finish later than the cap", () => {
  it("is as much work as fits into the cap at that pace", () => {
    const late = { side: "finished", score: 660, chance: 0.3 } as const;
    // 105 x 600 / 660 = 95.45
    expect(stoppedByCap(late, { seconds: 600, work: 105 })).toEqual({
      side: "capped",
      score: 95,
      chance: 0.3,
    });
    expect(stoppedByCap(late, { seconds: 700, work: 105 })).toBe(late);
    expect(stoppedByCap(late, undefined)).toBe(late);
  });
});

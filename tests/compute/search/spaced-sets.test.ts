import { describe, expect, it } from "vitest";
import { rulesFor } from "../../../src/compute/motion/rules.ts";
import type { SetQuestion } from "../../../src/compute/search/largest-sets.ts";
import { planSets } from "../../../src/compute/search/plan-sets.ts";
import { spacedSets } from "../../../src/compute/search/spaced-sets.ts";
import { seconds } from "../../../src/models/quantity.ts";

const rules = rulesFor({ level: "regular", reserve: seconds(60), recoverySpeed: 1 });

/** Ten reps of 2 s with a muscle that does four in a set and is back at once. */
const question = (more: Partial<SetQuestion> = {}): SetQuestion => ({
  amount: 10,
  fastest: 2,
  unbroken: 4,
  apart: 12,
  held: true,
  muscleRecovery: 20,
  fast: 0.6,
  slow: 0.4,
  full: 1,
  time: 0,
  unbrokenOnly: false,
  mayBreathe: true,
  ...more,
});

describe("sets of a load near the best", () => {
  it("are singles of a heavy bar from the floor where reps are far apart: by hand three at once and seven of 10 s more", () => {
    // 0.8 x 4 reps are easily done in a set, so three come at once; 10 x 2 + 7 x (12 - 2) = 90 s, of which 70 s are nine rests.
    const sets = spacedSets(question({ singly: true }), rules, 0);
    expect(sets?.sizes).toEqual(Array.from({ length: 10 }, () => 1));
    expect(sets?.total).toBeCloseTo(90, 9);
    expect(sets?.rest).toBeCloseTo(70 / 9, 9);
  });

  it("are threes with the same mean distance where it is short", () => {
    // 10 x 2 + 7 x (6 - 2) = 48 s, of which 28 s are three rests.
    const sets = spacedSets(question({ apart: 6 }), rules, 0);
    expect(sets?.sizes).toEqual([3, 3, 3, 1]);
    expect(sets?.total).toBeCloseTo(48, 9);
    expect(sets?.rest).toBeCloseTo(28 / 3, 9);
  });

  it("are threes of a bar that would have to be brought up again for every single", () => {
    // The same 90 s in three rests of 70 / 3 s.
    const sets = spacedSets(question({ singly: false }), rules, 0);
    expect(sets?.sizes).toEqual([3, 3, 3, 1]);
    expect(sets?.rest).toBeCloseTo(70 / 3, 9);
  });

  it("are none of its own where the muscles ask for as much, where nothing is apart, or where breaks are forbidden", () => {
    expect(spacedSets(question(), rules, 90)).toBeUndefined();
    expect(spacedSets(question({ apart: 2 }), rules, 0)).toBeUndefined();
    expect(spacedSets(question({ unbrokenOnly: true }), rules, 0)).toBeUndefined();
  });

  it("take more time as a longer distance, not as a slower rep", () => {
    const plan = planSets(question({ singly: true, time: 108 }), rules);
    expect([plan.sizes.length, plan.cycle, plan.total]).toEqual([10, 2, 108]);
    expect(plan.rest).toBeCloseTo(88 / 9, 9);
  });
});

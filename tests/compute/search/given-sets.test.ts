import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { givenSets } from "../../../src/compute/search/given-sets.ts";
import type { SetQuestion } from "../../../src/compute/search/largest-sets.ts";
import { rulesFor } from "../../../src/compute/motion/rules.ts";
import { seconds } from "../../../src/models/quantity.ts";

const rules = rulesFor({ level: "regular", reserve: seconds(60), recoverySpeed: 1 });

const question = (given: SetQuestion["given"], more: Partial<SetQuestion> = {}): SetQuestion => ({
  amount: 15,
  fastest: 2,
  unbroken: 16,
  apart: 0,
  held: true,
  muscleRecovery: 1,
  fast: 0.6,
  slow: 0.4,
  full: 1,
  time: 0,
  unbrokenOnly: false,
  mayBreathe: true,
  ...(given === undefined ? {} : { given }),
  ...more,
});

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

describe("givenSets", () => {
  it("gives nothing where nothing is given, or where the work must be unbroken", () => {
    expect(givenSets(question(undefined), rules, 40)).toBeUndefined();
    expect(givenSets(question({ sizes: [5] }, { unbrokenOnly: true }), rules, 40)).toBeUndefined();
  });

  it("repeats one size until the amount is done, with the shortest rest that is enough", () => {
    const sets = givenSets(question({ sizes: [6] }), rules, 0);
    expect(sets?.sizes).toEqual([6, 6, 3]);
    // 15 reps of 2 s and two rests; 6 + 6 + 3 of 16 go with the shortest.
    expect(sets?.rest).toBe(rules.breakShortest);
    expect(sets?.total).toBeCloseTo(30 + 2 * rules.breakShortest, 9);
  });

  it("leaves reps of a load near the best as far apart as without a word, whatever the muscle could do", () => {
    // Ten singles of 2 s, three of them easily done at once (0.8 x 4 of a set): the other seven take 12 s each, so 10 s more.
    const heavy = { amount: 10, unbroken: 4, apart: 12, muscleRecovery: 20 };
    const sets = givenSets(question({ sizes: [1] }, heavy), rules, 0);
    expect(sets?.total).toBeCloseTo(20 + 7 * 10, 9);
    expect(sets?.rest).toBeCloseTo(70 / 9, 9);
    // More time makes the distance longer, not the rep slower; a rest that is given holds.
    const slower = givenSets(question({ sizes: [1] }, heavy), rules, 108);
    expect([slower?.cycle, slower?.rest]).toEqual([2, expect.closeTo(88 / 9, 9)]);
    expect(givenSets(question({ sizes: [1], rest: 5 }, heavy), rules, 0)?.total).toBeCloseTo(20 + 9 * 5, 9);
  });

  it("is not possible with a rest that leaves the muscle too little", () => {
    const tired = { fast: 0.1, slow: 0.25 };
    expect(givenSets(question({ sizes: [5], rest: 4 }, tired), rules, 0)).toBeUndefined();
    const longer = givenSets(question({ sizes: [5] }, tired), rules, 0);
    expect(longer?.rest).toBeGreaterThan(4);
  });

  it("takes all the time there is, the amount once, and leaves a rest that is given alone", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 40 }),
        fc.integer({ min: 1, max: 8 }),
        fc.double({ min: 0, max: 120, noNaN: true }),
        fc.option(fc.integer({ min: 4, max: 30 }), { nil: undefined }),
        (amount, size, spare, rest) => {
          const given = { sizes: [size], ...(rest === undefined ? {} : { rest }) };
          const time = amount * 2 + spare;
          const sets = givenSets(question(given, { amount }), rules, time);
          if (!sets) return;
          expect(sum(sets.sizes)).toBe(amount);
          const spent = sets.restFirst + amount * sets.cycle + (sets.sizes.length - 1) * sets.rest;
          expect(spent).toBeCloseTo(Math.max(time, sets.leastTotal), 6);
          expect(sets.cycle).toBeGreaterThanOrEqual(2 - 1e-9);
          if (rest !== undefined) expect(sets.rest).toBe(rest);
        },
      ),
      { seed: 17, numRuns: 200 },
    );
  });
});

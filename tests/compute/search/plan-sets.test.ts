import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { SetQuestion } from "../../../src/compute/search/largest-sets.ts";
import { planSets } from "../../../src/compute/search/plan-sets.ts";
import type { SetPlan } from "../../../src/compute/search/set-plan.ts";
import { rulesFor } from "../../../src/compute/motion/rules.ts";
import { seconds } from "../../../src/models/quantity.ts";

const rules = rulesFor({ level: "regular", reserve: seconds(60), recoverySpeed: 1 });

const question = (more: Partial<SetQuestion> = {}): SetQuestion => ({
  amount: 21,
  fastest: 1.3,
  unbroken: 18,
  apart: 0,
  held: true,
  muscleRecovery: 1,
  fast: 0.6,
  slow: 0.4,
  full: 1,
  time: 0,
  unbrokenOnly: false,
  mayBreathe: true,
  ...more,
});

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Reps the muscle could still do before each set, by the refill law; two seconds of each break rest nothing. */
function possibleBefore(
  asked: SetQuestion,
  plan: Pick<SetPlan, "sizes" | "rest" | "restFirst">,
): readonly number[] {
  let { fast, slow } = asked;
  const refill = (time: number): void => {
    const free = time * asked.muscleRecovery;
    fast = 0.6 - (0.6 - fast) * Math.exp(-free / 15);
    slow = 0.4 - (0.4 - slow) * Math.exp(-free / 240);
  };
  refill(plan.restFirst);
  return plan.sizes.map((size, i) => {
    if (i > 0) refill(Math.max(0, plan.rest - 2));
    const possible = (fast + slow) * asked.unbroken;
    const kept = Math.max(0, 1 - size / possible);
    fast *= kept;
    slow *= kept;
    return possible;
  });
}

const anything = {
  amount: fc.integer({ min: 1, max: 120 }),
  unbroken: fc.double({ min: 2, max: 60, noNaN: true }),
  fastest: fc.double({ min: 0.8, max: 4, noNaN: true }),
  muscleRecovery: fc.double({ min: 0.3, max: 2, noNaN: true }),
};
const asked = fc.record({ ...anything, held: fc.boolean() });
const slack = fc.double({ min: 1, max: 3, noNaN: true });

describe("breaking an amount into sets", () => {
  it("leaves an amount well inside the best set unbroken at the fastest cycle", () => {
    const plan = planSets(question({ amount: 12 }), rules);
    expect(plan.sizes).toEqual([12]);
    expect(plan.total).toBeCloseTo(12 * 1.3, 9);
  });

  it("breaks before failure: 16 of 18 possible reps are too many for one set", () => {
    // Four fifths of 18 are 14.4.
    expect(planSets(question({ amount: 14 }), rules).sizes).toEqual([14]);
    expect(planSets(question({ amount: 16 }), rules).sizes.length).toBeGreaterThan(1);
  });

  it("takes singles where a load allows hardly two", () => {
    const plan = planSets(question({ amount: 10, unbroken: 2, fastest: 3.5 }), rules);
    expect(plan.sizes).toEqual(Array.from({ length: 10 }, () => 1));
  });

  it("never waits longer for a single than that after which any single comes again", () => {
    // Three minutes (Matuszak et al. 2003), however slowly the muscle refills: 29 of them and 30 reps of 1.3 s,
    // with the 3 % that fewer breaks to keep count of are worth.
    const plan = planSets(question({ amount: 30, unbroken: 1, muscleRecovery: 0.02 }), rules);
    expect(plan.sizes).toEqual(Array.from({ length: 30 }, () => 1));
    expect(plan.rest).toBeLessThanOrEqual(180);
    expect(plan.leastTotal).toBeLessThanOrEqual(1.03 * (29 * 180 + 30 * 1.3) + 1e-9);
  });

  it("drops a heavy bar after a rep or two, but cycles a light one, because it is faster", () => {
    const heavy = planSets(question({ amount: 12, unbroken: 3, fastest: 3 }), rules);
    const light = planSets(question({ amount: 12, unbroken: 25, fastest: 2 }), rules);
    expect(heavy.sizes.every((size) => size <= 2)).toBe(true);
    expect(light.sizes).toEqual([12]);
  });

  it("never plans a set larger than what is possible then, nor larger than the one before", () => {
    fc.assert(
      fc.property(fc.record(anything), slack, (more, factor) => {
        const least = planSets(question(more), rules).leastTotal;
        const here = question({ ...more, time: least * factor });
        const plan = planSets(here, rules);
        expect(sum(plan.sizes)).toBeCloseTo(more.amount, 6);
        expect([...plan.sizes].sort((a, b) => b - a)).toEqual(plan.sizes);
        const possible = possibleBefore(here, plan);
        // Whole reps may pass the share that is allowed, never what is possible.
        plan.sizes.forEach((size, i) => {
          expect(size).toBeLessThanOrEqual(Math.max(1, (possible[i] ?? 0) + 1e-6));
        });
      }),
      { numRuns: 300 },
    );
  });

  it("takes just the time it is given, when that is enough", () => {
    fc.assert(
      fc.property(asked, slack, (more, factor) => {
        const { leastTotal } = planSets(question(more), rules);
        const plan = planSets(question({ ...more, time: leastTotal * factor }), rules);
        const spent = sum(plan.sizes) * plan.cycle + (plan.sizes.length - 1) * plan.rest + plan.restFirst;
        expect(spent).toBeCloseTo(leastTotal * factor, 6);
        expect(plan.cycle).toBeGreaterThanOrEqual(more.fastest - 1e-9);
      }),
      { numRuns: 300 },
    );
  });

  it("is no faster for more reps, nor slower for a better best set or a quicker recovery", () => {
    fc.assert(
      fc.property(asked, (more) => {
        const least = (change: Partial<SetQuestion>): number =>
          planSets(question({ ...more, ...change }), rules).leastTotal;
        const now = least({});
        // Three in a hundred is what fewer sets may cost.
        expect(least({ amount: more.amount + 5 })).toBeGreaterThan(now * 0.97);
        expect(least({ unbroken: more.unbroken * 1.3 })).toBeLessThan(now * 1.03);
        expect(least({ muscleRecovery: more.muscleRecovery * 1.3 })).toBeLessThan(now * 1.03);
      }),
      { numRuns: 300 },
    );
  });

  it("is nearly as fast as the best of all ways with equal rests, found by trying every one", () => {
    // All falling sets of 12 reps with 8 possible, and every rest from 4 to 60 s in steps of half a second.
    const here = question({ amount: 12, unbroken: 8 });
    const ways = (left: number, most: number): readonly (readonly number[])[] =>
      left === 0
        ? [[]]
        : Array.from({ length: Math.min(left, most) }, (_, i) => i + 1).flatMap((size) =>
            ways(left - size, size).map((rest) => [size, ...rest]),
          );
    let best = Infinity;
    for (const sizes of ways(12, 12)) {
      for (let rest = 4; rest <= 60; rest += 0.5) {
        const total = 12 * 1.3 + (sizes.length - 1) * rest;
        if (total >= best) continue;
        const possible = possibleBefore(here, { sizes, rest, restFirst: 0 });
        const fits = sizes.every((size, i) => {
          const now = possible[i] ?? 0;
          return size <= 0.8 * now || (size === 1 && now >= 1);
        });
        if (fits) best = total;
      }
    }
    expect(planSets(here, rules).leastTotal).toBeLessThan(best * 1.03);
  });

  it("needs no longer from a tired start than one at a time with the shortest rest that is enough", () => {
    const tired = fc.record({
      ...anything,
      amount: fc.integer({ min: 4, max: 30 }),
      fast: fc.double({ min: 0, max: 0.6, noNaN: true }),
      slow: fc.double({ min: 0.02, max: 0.4, noNaN: true }),
    });
    fc.assert(
      fc.property(tired, (more) => {
        const here = question(more);
        const plan = planSets(here, rules);
        const singles = Array.from({ length: more.amount }, () => 1);
        // The shortest rest from 4 s in half seconds, tried one after the other.
        let rest = 4;
        const enough = (): boolean =>
          possibleBefore(here, { sizes: singles, rest, restFirst: plan.restFirst }).every((now) => now >= 1);
        while (!enough() && rest < 600) rest += 0.5;
        const total = plan.restFirst + more.amount * more.fastest + (more.amount - 1) * rest;
        // In 40,000 tries planning in parts of units cost at most 36 % over exact singles.
        expect(plan.leastTotal).toBeLessThan(total * 1.5);
      }),
      { numRuns: 300 },
    );
  });

  it("uses more time for the rhythm, then breathes before a set instead of breaking it", () => {
    // A natural rhythm is 1.15 x 1.3 = 1.495 s a rep: 16 - 14.95 = 1.05 s are left for a breath.
    const calm = planSets(question({ amount: 10, time: 16 }), rules);
    expect(calm.sizes).toEqual([10]);
    expect(calm.cycle).toBeCloseTo(1.495, 9);
    expect(calm.restFirst).toBeCloseTo(1.05, 9);
    // Nobody waits at the start: the rhythm alone is slower.
    const atStart = planSets(question({ amount: 10, time: 16, mayBreathe: false }), rules);
    expect(atStart).toMatchObject({ sizes: [10], cycle: 1.6, restFirst: 0 });
    // A small set is not broken for a breath of 5 s: at 1.495 s a rep 12 - 7.475 = 4.5 s are left.
    const small = planSets(question({ amount: 5, time: 12 }), rules);
    expect(small.sizes).toEqual([5]);
    expect(small.restFirst).toBeLessThanOrEqual(5);
    // Of 40 s more than 30 s would be stood before it: nobody does, the rest is worth more between its parts.
    const long = planSets(question({ amount: 5, time: 40 }), rules);
    expect(long.sizes.length).toBeGreaterThan(1);
    expect(long.restFirst).toBeLessThanOrEqual(5);
  });

  it("breaks into even sets, as few as keep breath and rests below the longest", () => {
    // 24 reps of 40 possible in 75 s leave 39 s for breath and rests at 1.495 s a rep: more than a breath of 5 s before one set, and in two
    // sets 31 s of standing between them. A coach writes three eights, a breath before each and a quieter rhythm.
    const three = planSets(question({ amount: 24, unbroken: 40, time: 75 }), rules);
    expect(three.sizes).toEqual([8, 8, 8]);
    expect(three.rest).toBeLessThanOrEqual(15);
    expect(three.restFirst).toBeLessThanOrEqual(5);
    // Large amounts in fives, where they fit.
    const fifty = planSets(question({ amount: 50, unbroken: 40, time: 120 }), rules).sizes;
    expect(fifty.map((size) => size % 5)).toEqual(fifty.map(() => 0));
  });

  it("draws a movement that holds nothing out where there is time, and never needs longer than if it held something", () => {
    const free = question({ amount: 60, unbroken: 40, fastest: 2.4, held: false });
    const plan = planSets({ ...free, time: 60 * 3.4 }, rules);
    expect(plan.sizes).toEqual([60]);
    expect(plan.cycle).toBeCloseTo(3.4, 9);
    const held = planSets({ ...free, held: true }, rules);
    expect(planSets(free, rules).leastTotal).toBeLessThanOrEqual(held.leastTotal + 1e-9);
  });

  it("rests first when not even one rep is left in the muscle", () => {
    // One of four possible reps needs a quarter. From 0 and 0.05: 0.6 (1 - e^(-t/15)) + 0.05 + 0.35 (1 - e^(-t/240)) is 0.128 at
    // 2 s, 0.197 at 4 s and 0.256 at 6 s.
    expect(planSets(question({ amount: 3, unbroken: 4, fast: 0, slow: 0.05 }), rules).restFirst).toBe(6);
  });

  it("keeps what must be unbroken in one set", () => {
    expect(planSets(question({ amount: 17, unbrokenOnly: true }), rules).sizes).toEqual([17]);
  });

  it("has no sets where nothing is put down", () => {
    const plan = planSets(question({ amount: 500.5, unbroken: Infinity, fastest: 0.2, time: 120 }), rules);
    expect(plan.sizes).toEqual([500.5]);
    expect(plan.cycle).toBeCloseTo(120 / 500.5, 9);
  });
});

import { describe, expect, it } from "vitest";
import {
  chanceOfAtLeast,
  chanceOfNone,
  expectedWorth,
  outcomeQuantile,
  outcomesOf,
} from "../../../src/compute/lifting/attempt-outcomes.ts";
import type { AttemptPlan } from "../../../src/compute/lifting/attempt-problem.ts";
import { createRandom } from "../../../src/numerics/random.ts";

const stop = { stop: "no-attempts" } as const;
const then = (load: number, more: Partial<AttemptPlan> = {}): AttemptPlan => ({
  load,
  start: 0,
  strength: 1,
  chance: 0.5,
  made: stop,
  missed: stop,
  ...more,
});
/** 100 kg; then 105 if made, 100 again if missed. */
const plan = then(100, { made: then(105), missed: then(100) });

describe("how a plan may end", () => {
  it("by hand where the day is known: even odds at 100 kg, three in ten at 105", () => {
    // Strength 100, noise 5 / 0.5244 = 9.535
    const outcomes = outcomesOf(plan, { mean: 100, spread: 0, noise: 5 / 0.524401 });
    const chances = outcomes.map(({ best, sum, chance }) => ({
      best,
      sum,
      chance: Number(chance.toFixed(4)),
    }));
    expect(chances).toEqual([
      { best: 105, sum: 205, chance: 0.15 },
      { best: 100, sum: 100, chance: 0.35 },
      { best: 100, sum: 100, chance: 0.25 },
      { best: undefined, sum: 0, chance: 0.25 },
    ]);
    expect(chanceOfNone(outcomes)).toBeCloseTo(0.25, 4);
    expect(chanceOfAtLeast(outcomes, 105)).toBeCloseTo(0.15, 4);
    expect(expectedWorth(outcomes, (best) => best ?? 0)).toBeCloseTo(0.15 * 105 + 0.6 * 100, 2);
  });

  it("agrees with simulated days where the day is not known", () => {
    const world = { mean: 100, spread: 6, noise: 5 };
    const random = createRandom(11);
    let none = 0;
    let heaviest = 0;
    const days = 200_000;
    for (let day = 0; day < days; day++) {
      const strength = world.mean + world.spread * random.normal();
      const lifts = (load: number): boolean => strength + world.noise * random.normal() >= load;
      if (lifts(100)) heaviest += lifts(105) ? 1 : 0;
      else none += lifts(100) ? 0 : 1;
    }
    const outcomes = outcomesOf(plan, world);
    // Four standard errors of a share near a third over 200,000 days are 0.004.
    expect(Math.abs(chanceOfNone(outcomes) - none / days)).toBeLessThan(0.004);
    expect(Math.abs(chanceOfAtLeast(outcomes, 105) - heaviest / days)).toBeLessThan(0.004);
  });

  it("has chances that add up to one", () => {
    const sum = outcomesOf(plan, { mean: 90, spread: 8, noise: 7 }).reduce(
      (all, { chance }) => all + chance,
      0,
    );
    expect(sum).toBeCloseTo(1, 9);
  });

  it("has quantiles that are results: the tenth of four ways to end", () => {
    const outcomes = outcomesOf(plan, { mean: 100, spread: 0, noise: 5 / 0.524401 });
    const at = (share: number): number => outcomeQuantile(outcomes, share, ({ best }) => best ?? 0);
    expect([0.1, 0.5, 0.9].map(at)).toEqual([0, 100, 105]);
    expect(outcomeQuantile([], 0.5, ({ sum }) => sum)).toBe(0);
  });

  it("is nothing where nothing is lifted", () => {
    expect(outcomesOf(stop, { mean: 100, spread: 5, noise: 5 })).toEqual([
      { best: undefined, sum: 0, chance: expect.closeTo(1, 9) as number },
    ]);
  });
});

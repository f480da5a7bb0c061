import { describe, expect, it } from "vitest";
import { REP_EQUATIONS, shareForReps, singleOverLoad } from "../../../src/compute/capacity/rep-equations.ts";

const equation = (name: string): (typeof REP_EQUATIONS)[number] => {
  const found = REP_EQUATIONS.find((each) => each.name === name);
  if (!found) throw new Error(name);
  return found;
};

describe("the published equations", () => {
  // Arithmetic from the standard forms, for a load of 100 kg and 1, 3, 5, 8, 10, 12 reps.
  it.each([
    ["Epley", [103.3, 110.0, 116.7, 126.7, 133.3, 140.0]],
    ["Brzycki", [100.0, 105.9, 112.5, 124.1, 133.3, 144.0]],
    ["Mayhew", [108.9, 114.0, 119.0, 126.3, 130.9, 135.4]],
    ["Wathen", [101.3, 109.0, 116.6, 127.7, 134.7, 141.5]],
  ])("%s gives the singles of its standard form", (name, singles) => {
    [1, 3, 5, 8, 10, 12].forEach((reps, at) => {
      expect(100 * equation(name).single(reps)).toBeCloseTo(singles[at] ?? NaN, 1);
    });
  });

  // The same forms turned round: reps at 95, 90, 85, 80, 75, 70, 65, 60, 50 % of a single; NaN where there is none.
  it.each([
    ["Epley", [1.6, 3.3, 5.3, 7.5, 10.0, 12.9, 16.2, 20.0, 30.0]],
    ["Brzycki", [2.8, 4.6, 6.4, 8.2, 10.0, 11.8, 13.6, 15.4, 19.0]],
    ["Mayhew", [NaN, 1.9, 4.5, 7.5, 11.1, 15.6, 21.6, 30.6, NaN]],
    ["Wathen", [2.0, 3.6, 5.3, 7.3, 9.6, 12.4, 16.0, 20.9, 50.7]],
  ])("%s gives the reps of its standard form", (name, reps) => {
    [0.95, 0.9, 0.85, 0.8, 0.75, 0.7, 0.65, 0.6, 0.5].forEach((share, at) => {
      const expected = reps[at] ?? NaN;
      const value = equation(name).reps(share);
      if (Number.isNaN(expected)) expect(value >= 0).toBe(false);
      // The table is rounded to a tenth.
      else expect(Math.abs(value - expected)).toBeLessThanOrEqual(0.0501);
    });
  });
});

describe("a single from a rep set", () => {
  it("is the load itself for one rep, as only Brzycki and Lombardi are used there", () => {
    expect(singleOverLoad(1)).toEqual({ mean: 1, disagreement: 0, equations: 2 });
  });

  it("of five reps is the mean of five equations: 116.7, 112.5, 119.0, 116.6 and 117.5 make 116.5", () => {
    expect(100 * (singleOverLoad(5)?.mean ?? 0)).toBeCloseTo(116.45, 1);
    expect(singleOverLoad(5)?.equations).toBe(5);
  });

  it("lies within the standard error (2.98 kg) of a regression on 70 people: bench 5RM of 100 kg, 113.8 kg (Reynolds, Gordon and Robergs 2006)", () => {
    expect(Math.abs(100 * (singleOverLoad(5)?.mean ?? 0) - (1.1307 * 100 + 0.6999))).toBeLessThan(2.98);
  });

  it("grows with every rep while the same equations are used, and ends at 20 reps", () => {
    for (let reps = 1; reps < 10; reps++) {
      expect(singleOverLoad(reps + 1)?.mean).toBeGreaterThan(singleOverLoad(reps)?.mean ?? Infinity);
    }
    expect(singleOverLoad(20)?.equations).toBe(2);
    expect(singleOverLoad(21)).toBeUndefined();
  });

  it("turned round gives the share that can be lifted for so many reps", () => {
    expect(shareForReps(1)).toBe(1);
    expect(shareForReps(5)).toBeCloseTo(1 / 1.1645, 2);
    expect(shareForReps(60)).toBe(shareForReps(20));
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { aimedCost } from "../../../src/compute/motion/aimed-cost.ts";

const effort = fc.double({ min: 0.05, max: 5, noNaN: true });
const kappa = fc.double({ min: 1.05, max: 4, noNaN: true });
const worth = fc.double({ min: 0.1, max: 1, noNaN: true });

/** The argument at which a rising function passes a value, by eighty halvings. */
function passes(of: (x: number) => number, value: number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let i = 0; i < 80; i += 1) {
    const middle = (low + high) / 2;
    if (of(middle) > value) high = middle;
    else low = middle;
  }
  return low;
}

describe("the cost aimed at for one held effort", () => {
  it("is the effort over kappa less one where work spends the reserve", () => {
    // 0.6 / (1.5 - 1) = 1.2.
    expect(aimedCost(0.6, 1.5, 0.4)).toBeCloseTo(1.2, 12);
  });

  it("is the plain closed form everywhere when all that is saved refills", () => {
    fc.assert(
      fc.property(effort, kappa, (held, dear) => {
        expect(aimedCost(held, dear, 1)).toBeCloseTo(held / (dear - 1), 9);
      }),
    );
  });

  it("holds a dear movement at the critical rate, not below it, when little of what is saved refills", () => {
    // 0.5 / 2 = 0.25 would be the plain form; with 0.4 refilled (1 + 0.5 - 0.4) / (0.4 x 2) = 1.375, so it is held at 1.
    expect(aimedCost(0.5, 3, 0.4)).toBe(1);
    // With 0.9 refilled (1.5 - 0.9) / (0.9 x 2) = 0.333: now slowing down pays.
    expect(aimedCost(0.5, 3, 0.9)).toBeCloseTo(1 / 3, 9);
  });

  it("rises with the effort and falls with kappa", () => {
    fc.assert(
      fc.property(effort, effort, kappa, kappa, worth, (one, other, cheap, dear, back) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        expect(aimedCost(low, cheap, back)).toBeLessThanOrEqual(aimedCost(high, cheap, back) + 1e-12);
        const [less, more] = [Math.min(cheap, dear), Math.max(cheap, dear)];
        expect(aimedCost(one, more, back)).toBeLessThanOrEqual(aimedCost(one, less, back) + 1e-12);
      }),
    );
  });

  it("shares out a reserve between two movements as well as a fine grid of every other way", () => {
    // Work of 100 and 60 s at kappa 1.5 and 2.5 with 50 s of reserve and no drift; the grid is over the rate of the first movement,
    // the second spending just what is left.
    const spent = (work: number, rate: number, dear: number): number => (work / rate) * (rate ** dear - 1);
    const ratesAt = (held: number): readonly [number, number] => [
      aimedCost(held, 1.5, 1) ** (1 / 1.5),
      aimedCost(held, 2.5, 1) ** (1 / 2.5),
    ];
    const used = (held: number): number => {
      const [first, second] = ratesAt(held);
      return spent(100, first, 1.5) + spent(60, second, 2.5);
    };
    const [first, second] = ratesAt(passes(used, 50, 0.1, 5));
    let best = Infinity;
    for (let rate = 0.7; rate < 1.6; rate += 0.001) {
      const left = 50 - spent(100, rate, 1.5);
      best = Math.min(best, 100 / rate + 60 / passes((other) => spent(60, other, 2.5), left, 0.3, 3));
    }
    expect(100 / first + 60 / second).toBeLessThan(best + 1e-3);
  });
});

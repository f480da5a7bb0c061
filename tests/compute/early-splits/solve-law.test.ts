import { describe, expect, it } from "vitest";
import { EARLY_SPLITS_CONSTANTS } from "../../../src/compute/early-splits/constants.ts";
import { type LawPoint, solveLaw } from "../../../src/compute/early-splits/solve-law.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";

const points = (rounds: readonly number[], group = 0): readonly LawPoint[] =>
  rounds.map((seconds, steps) => ({ group, seconds, ratio: 1, steps, last: false }));
const constants = withOverrides(EARLY_SPLITS_CONSTANTS, {
  clockError: 0,
  roundNoise: 0.03,
  driftBefore: 0,
  driftSpread: 0.05,
  finishSpread: 0.1,
  fixedShareSpread: 0.2,
});

describe("the law for a given share", () => {
  it("shrinks the slope towards what was believed, as worked by hand", () => {
    // Logs 0, 0, 0.06 about steps -1, 0, 1: products sum to 0.06, squares to 2. Told 2 / 0.0009 = 2222.2, believed
    // 1 / 0.0025 = 400, so the slope is (0.06 / 0.0009) / 2622.2 = 0.025424 and its error 1 / sqrt(2622.2) = 0.019528.
    const law = solveLaw(points([1, 1, Math.exp(0.06)]), 0, 0.0009, constants);
    expect(law.values[1]).toBeCloseTo(0.025424, 6);
    expect(Math.sqrt(law.covariance[1]?.[1] ?? Number.NaN)).toBeCloseTo(0.019528, 6);
    // The mean log is 0.02, one step of slope above the start.
    expect(law.levels.get(0)?.log).toBeCloseTo(0.02 - 0.025424, 6);
    // Hat matrix: 2222.2 / 2622.2.
    expect(law.used).toBeCloseTo(0.847458, 6);
    // Left over: -0.02 + 0.025424, -0.02 and 0.04 - 0.025424, squared.
    expect(law.squares).toBeCloseTo(0.005424 ** 2 + 0.02 ** 2 + 0.014576 ** 2, 6);
  });

  it("keeps to what was believed where nothing is told", () => {
    const law = solveLaw(points([60]), 0, 0.0009, constants);
    expect(law.values).toEqual([0, 0, 0]);
    expect(law.covariance.map((row, i) => Math.sqrt(row[i] ?? Number.NaN))).toEqual(
      [0.2, 0.05, 0.1].map((spread) => expect.closeTo(spread, 9) as number),
    );
  });

  it("gives every group a level of its own: who is slower throughout changes no slope", () => {
    const once = solveLaw(points([1, 1, Math.exp(0.06)]), 0, 0.0009, constants);
    const both = solveLaw(
      [...points([1, 1, Math.exp(0.06)]), ...points([7, 7, 7 * Math.exp(0.06)], 1)],
      0,
      0.0018,
      constants,
    );
    expect(both.values[1]).toBeCloseTo(once.values[1], 12);
    expect((both.levels.get(1)?.log ?? 0) - (both.levels.get(0)?.log ?? 0)).toBeCloseTo(Math.log(7), 12);
  });

  it("weighs short rounds less, by the error of the clock", () => {
    // Error of 0.3 s: of 10 s a share of 0.03, as much as the noise, so weight 1/2; of 1000 s next to nothing.
    const weighed = solveLaw(points([10]), 0, 0.0009, { ...constants, clockError: 0.3 });
    const long = solveLaw(points([1000]), 0, 0.0009, { ...constants, clockError: 0.3 });
    expect(weighed.levels.get(0)?.weight).toBeCloseTo(0.5, 12);
    expect(long.levels.get(0)?.weight).toBeCloseTo(1, 3);
  });
});

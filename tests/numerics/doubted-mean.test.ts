import { describe, expect, it } from "vitest";
import { doubtedMean } from "../../src/numerics/doubted-mean.ts";

const plain = { prior: 1, mistaken: 0, wider: 4 };
const robust = { prior: 0.12, mistaken: 0.12, wider: 6 };

describe("the mean of observations that may be mistakes", () => {
  it("is the textbook posterior where none is a mistake", () => {
    // Precision 1 + 1 + 4, mean (1 x 1 + 4 x 2) / 6.
    const { mean, spread } = doubtedMean(
      [
        { value: 1, error: 1 },
        { value: 2, error: 0.5 },
      ],
      plain,
    );
    expect(mean).toBeCloseTo(9 / 6, 3);
    expect(spread).toBeCloseTo(1 / Math.sqrt(6), 3);
  });

  it("is the prior where nothing is seen", () => {
    expect(doubtedMean([], plain)).toMatchObject({ sound: [] });
    expect(doubtedMean([], plain).mean).toBeCloseTo(0, 9);
    expect(doubtedMean([], plain).spread).toBeCloseTo(1, 3);
  });

  it("is moved less by an observation far off than by one not so far, and never by much", () => {
    const movedBy = (value: number): number => doubtedMean([{ value, error: 0.12 }], robust).mean;
    expect(movedBy(0.2)).toBeGreaterThan(0.07);
    expect(movedBy(1)).toBeLessThan(movedBy(0.3));
    const most = Math.max(...Array.from({ length: 60 }, (_, at) => movedBy(at / 20)));
    expect(most).toBeLessThan(0.16);
  });

  it("tells which observation is likely a mistake", () => {
    const seen = [0.1, 0.12, 0.08, 0.9].map((value) => ({ value, error: 0.1 }));
    const { mean, sound } = doubtedMean(seen, robust);
    expect(sound.map((chance) => chance > 0.5)).toEqual([true, true, true, false]);
    expect(mean).toBeGreaterThan(0.06);
    expect(mean).toBeLessThan(0.13);
  });

  it("does not mind which side of nought things lie on", () => {
    const at = (sign: number): number =>
      doubtedMean(
        [0.1, 0.3].map((value) => ({ value: sign * value, error: 0.1 })),
        robust,
      ).mean;
    expect(at(1)).toBeCloseTo(-at(-1), 9);
  });
});

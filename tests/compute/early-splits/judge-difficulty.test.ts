import { describe, expect, it } from "vitest";
import { DIFFICULTY_CONSTANTS } from "../../../src/compute/early-splits/difficulty-constants.ts";
import { judgeDifficulty } from "../../../src/compute/early-splits/judge-difficulty.ts";
import type { SeenPerformance } from "../../../src/compute/early-splits/seen-performance.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";

const constants = withOverrides(DIFFICULTY_CONSTANTS, {});
const shares = [
  { movement: "row", share: 0.5 },
  { movement: "burpee", share: 0.5 },
];
const seen = (value: number, error = 0.12, more: Partial<SeenPerformance> = {}): SeenPerformance => ({
  part: "a",
  source: "early",
  slower: { value, error },
  movements: [],
  shares,
  scores: 1,
  ...more,
});
const allOf = (performances: readonly SeenPerformance[]): number =>
  judgeDifficulty(performances, constants)?.all.value ?? Number.NaN;

describe("how hard a workout is, from who has done it", () => {
  it("is not judged where nobody was seen", () => {
    expect(judgeDifficulty([], constants)).toBeUndefined();
  });

  it("one performance as doubtful as the model itself is worth about half of what it shows", () => {
    // Equal variances: 0.1 / 2, a little less as it may be a mistake.
    expect(allOf([seen(0.1)])).toBeGreaterThan(0.04);
    expect(allOf([seen(0.1)])).toBeLessThan(0.051);
  });

  it("more performances are worth more, of known athletes more than of known levels", () => {
    const three = allOf([seen(0.15), seen(0.15), seen(0.15)]);
    expect(allOf([seen(0.15)])).toBeLessThan(three);
    expect(three).toBeLessThan(allOf(Array.from({ length: 10 }, () => seen(0.15))));
    expect(allOf([seen(0.15, 0.06)])).toBeGreaterThan(allOf([seen(0.15, 0.14)]));
  });

  it("one that lies far off is told as odd and moves everybody by little", () => {
    const good = [seen(0.02), seen(-0.03), seen(0.01)];
    const spoilt = judgeDifficulty([...good, seen(0.9)], constants);
    expect(spoilt?.odd).toBe(1);
    expect(Math.abs((spoilt?.all.value ?? 1) - allOf(good))).toBeLessThan(0.03);
  });

  it("movements are told beside all of the work, and cancel out over it", () => {
    const movements = [
      { movement: "row", value: -0.1, error: 0.05 },
      { movement: "burpee", value: 0.1, error: 0.05 },
    ];
    const told = judgeDifficulty([seen(0, 0.12, { movements })], constants)?.movements ?? [];
    const [row, burpee] = told.map(({ value }) => value);
    expect(row).toBeLessThan(-0.03);
    expect(burpee).toBeGreaterThan(0.03);
    expect((row ?? 1) + (burpee ?? 1)).toBeCloseTo(0, 9);
  });

  it("counts early performances, results and scores of fields apart", () => {
    expect(
      judgeDifficulty(
        [seen(0), seen(0, 0.1, { source: "result" }), seen(0, 0.1, { source: "field", scores: 40 })],
        constants,
      ),
    ).toMatchObject({ early: 1, results: 1, scores: 40 });
  });
});

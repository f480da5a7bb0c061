import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sayCount, sayList, sayNumber } from "../../src/wording/number.ts";

describe("a number in words", () => {
  it.each([
    [102.5, 2, "102.5"],
    [100, 2, "100"],
    [1.25, 2, "1.25"],
    [1.005, 2, "1.01"],
    [0.5, 0, "1"],
    [-3, 0, "−3"],
    [-0.04, 1, "0"],
    [1200, 0, "1200"],
  ])("%d with at most %d decimals is %s", (value, decimals, text) => {
    expect(sayNumber(value, decimals)).toBe(text);
  });

  it("is never further from the value than half of its last decimal", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.integer({ min: 0, max: 3 }),
        (value, decimals) => {
          const read = Number(sayNumber(value, decimals).replace("−", "-"));
          expect(Math.abs(read - value)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-9);
        },
      ),
    );
  });
});

describe("counts and lists", () => {
  it("one is singular, all else plural, on one line with its noun", () => {
    expect([sayCount(1, "lift", "lifts"), sayCount(0, "lift", "lifts")]).toEqual([
      "1\u00a0lift",
      "0\u00a0lifts",
    ]);
  });

  it("words are joined by commas and a last and", () => {
    expect([sayList([]), sayList(["a"]), sayList(["a", "b"]), sayList(["a", "b", "c"], "or")]).toEqual([
      "",
      "a",
      "a and b",
      "a, b or c",
    ]);
  });
});

import { describe, expect, it } from "vitest";
import { isSameDivision, sexOfDivision } from "../../src/models/sex-words.ts";

describe("the words for a sex", () => {
  it.each([
    ["ladies", "female"],
    ["Masters Women 40+", "female"],
    ["women's scaled", "female"],
    ["gentlemen", "male"],
    ["boys 14-15", "male"],
    ["rx", undefined],
    ["men and women", undefined],
    ["constructor", undefined],
  ] as const)("tell of %s", (name, sex) => {
    expect(sexOfDivision(name)).toBe(sex);
  });

  it("make one division of names that differ in them or in the order of words", () => {
    expect(isSameDivision("Masters Ladies", "women masters")).toBe(true);
    expect(isSameDivision("ladies", "men")).toBe(false);
    expect(isSameDivision("masters women", "women")).toBe(false);
  });
});

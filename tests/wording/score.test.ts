import { describe, expect, it } from "vitest";
import { SCORE_KINDS } from "../../src/models/vocabulary.ts";
import { sayRange, sayScore, sayWholeScore } from "../../src/wording/score.ts";

const nb = (text: string): string => text.replaceAll("_", "\u00a0");
const kg = { units: "kg" } as const;

describe("a score", () => {
  it("of rounds and reps is taken apart where a round's score is constant", () => {
    // 489 = 20 x 24 + 9
    const context = { ...kg, perRound: 24 };
    expect(sayScore("rounds-and-reps", 489, context)).toEqual({
      figure: nb("20_+_9"),
      unit: "rounds + reps",
    });
    expect(sayWholeScore("rounds-and-reps", 489, context)).toBe(nb("20_rounds + 9_reps"));
    expect(sayScore("rounds-and-reps", 489, kg)).toEqual({ figure: "489", unit: "reps" });
  });

  it("of one is said in the singular", () => {
    expect(sayScore("intervals-completed", 1, { units: "kg" })).toEqual({ figure: "1", unit: "interval" });
    expect(sayWholeScore("reps", 1.2, { units: "kg" })).toBe("1\u00a0rep");
    expect(sayWholeScore("rounds-and-reps", 25, { units: "kg", perRound: 24 })).toBe(
      "1\u00a0round + 1\u00a0rep",
    );
    expect(sayWholeScore("rounds-and-reps", 120, { units: "kg", perRound: 24 })).toBe("5\u00a0rounds");
  });

  it("of a load is said in the reader's unit", () => {
    // 63 / 0.45359237 = 138.89 lb
    expect(sayScore("load", 63, { units: "lb" })).toEqual({ figure: "139", unit: "lb" });
    expect(sayWholeScore("sum-of-loads", 150.5, kg)).toBe(nb("150.5_kg in all"));
  });

  it("of time is a clock", () => {
    expect(sayWholeScore("time", 509.7, kg)).toBe("8:30");
  });

  it.each(SCORE_KINDS)("of kind %s has a figure", (kind) => {
    expect(sayScore(kind, 120, kg).figure).toMatch(/^\d/);
  });
});

describe("a range", () => {
  const range = { target: 101, cautious: 93.7, middle: 100, hopeful: 108.2 };

  it("of counts goes from low to high, rounded outwards", () => {
    expect(sayRange("reps", range, kg)).toBe("93–109");
  });

  it("of loads in pounds ends at loads that exist, though they were kilograms in between", () => {
    const [low, high] = [250 * 0.45359237, 280 * 0.45359237 + 1e-9];
    const range = { target: low, cautious: low, middle: low, hopeful: high };
    expect(sayRange("load", range, { units: "lb" })).toBe("250–280");
  });

  it("of times goes from fast to slow", () => {
    expect(sayRange("time", { target: 509.7, cautious: 540.3, middle: 512, hopeful: 486.8 }, kg)).toBe(
      "8:05–9:05",
    );
  });

  it("of a time whose bad day a door or a cap ends is what is done then", () => {
    const range = { target: 676, cautious: 960, middle: 680, hopeful: 578, cautiousDone: 89 };
    expect(sayRange("time", range, kg)).toBe(nb("9:35 to 89_reps"));
  });

  it("of rounds and reps uses a word between, because plus and dash together mislead", () => {
    // 456 = 19 x 24, 516 = 21 x 24 + 12
    const wide = { target: 489, cautious: 456, middle: 486, hopeful: 516 };
    expect(sayRange("rounds-and-reps", wide, { ...kg, perRound: 24 })).toBe(nb("19_+_0 to 21_+_12"));
  });

  it("with equal ends is one number", () => {
    expect(sayRange("intervals-completed", { target: 9, cautious: 9, middle: 9, hopeful: 9 }, kg)).toBe("9");
  });

  it("of loads is rounded outwards to the half", () => {
    expect(sayRange("load", { target: 63, cautious: 58.2, middle: 63, hopeful: 66.1 }, kg)).toBe("58–66.5");
  });
});

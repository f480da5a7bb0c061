import { describe, expect, it } from "vitest";
import { sayTooHeavy } from "../../src/wording/too-heavy.ts";

const load = (kilograms: number, shareOfBest: number, pieces = 1) => ({
  mass: { value: kilograms, unit: "kg" as const },
  kilograms,
  pieces,
  shareOfBest,
});
const said = (reps: number, of: ReturnType<typeof load>, units: "kg" | "lb" = "kg"): string =>
  sayTooHeavy({ name: "snatch", plural: "snatches", load: of, reps }, [], units).replaceAll("\u00a0", " ");

describe("a load too heavy to repeat", () => {
  // 54 kg are 90 % of 60 kg; 70 % of 60 are 42, on the bar 40 kg.
  it("names the version to ask for", () => {
    expect(said(12, load(54, 0.9))).toMatch(
      /If this is training, ask for 40 kg or less, 70% of your best\.$/,
    );
  });

  it("says where to stop when there are more than a heavy session has", () => {
    expect(said(28, load(54, 0.9))).toMatch(
      /28 of them are too many for a day's work: ask for 40 kg or less, 70% of your best\. In a competition stop after 10, and before that as soon as one turns slow\.$/,
    );
  });

  // 42 kg are 92.6 lb; two dumbbells of 27 kg that are 90 % of 30 each: 21 kg, in pairs of 20.
  it("speaks in the reader's unit, and of pairs", () => {
    expect(said(12, load(54, 0.9), "lb")).toContain("ask for 90 lb or less");
    expect(said(12, load(27, 0.9, 2))).toContain("ask for 2 × 20 kg or less");
  });
});

import { describe, expect, it } from "vitest";
import { drawLoadedBar } from "../../src/charts/loaded-bar.ts";
import { approximateWidth } from "../../src/charts/measure.ts";
import type { Shape } from "../../src/charts/drawing.ts";
import { collidingTexts, strays } from "../support/shape-bounds.ts";

type Load = Parameters<typeof drawLoadedBar>[0];
const size = { width: 160, textSize: 13.5, measure: approximateWidth };
const kg = (value: number, count = 1) => ({ plate: { value, unit: "kg" as const }, count });
const lb = (value: number, count = 1) => ({ plate: { value, unit: "lb" as const }, count });
const loaded = (value: number, perSide: Load["perSide"], unit: "kg" | "lb" = "kg"): Load => ({
  mass: { value, unit },
  kilograms: value,
  pieces: 1,
  ...(perSide && { perSide }),
});
const fillsOf = (shapes: readonly Shape[] = []): readonly string[] =>
  shapes.flatMap((shape) => (shape.kind === "rect" && shape.fill !== "ink" ? [shape.fill] : []));
const wordsOf = (shapes: readonly Shape[] = []): readonly string[] =>
  shapes.flatMap((shape) => (shape.kind === "text" ? [shape.text] : []));

describe("a loaded bar", () => {
  const full = drawLoadedBar(loaded(160, [kg(25, 2), kg(15), kg(2.5), kg(1.25)]), size, 92);

  it("shows every plate from the inside out with its number and the colour of the federation's rules", () => {
    // Discs of 25 kg red, 15 kg yellow, 2.5 kg red; the rules know none of 1.25 kg.
    expect(fillsOf(full?.shapes)).toEqual([
      "plate-red",
      "plate-red",
      "plate-yellow",
      "plate-red",
      "plate-white",
    ]);
    expect(wordsOf(full?.shapes)).toEqual(["25", "25", "15", "2.5", "1.25"]);
  });

  it("keeps everything inside and its numbers apart", () => {
    expect(full && strays(full, approximateWidth)).toEqual([]);
    expect(full && collidingTexts(full, approximateWidth)).toEqual([]);
  });

  it("gives plates in pounds no colour", () => {
    expect(fillsOf(drawLoadedBar(loaded(135, [lb(45)], "lb"), size, 92)?.shapes)).toEqual(["plate-white"]);
  });

  it("says the same in words", () => {
    expect(drawLoadedBar(loaded(70, [kg(25)]), size, 92)?.textAlternative).toBe(
      "70\u00a0kg: 25\u00a0kg a side",
    );
  });

  it("is not drawn for an empty bar, nor without one", () => {
    expect(drawLoadedBar(loaded(20, []), size, 92)).toBeUndefined();
    expect(drawLoadedBar(loaded(24, undefined), size, 92)).toBeUndefined();
  });
});

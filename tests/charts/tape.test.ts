import { describe, expect, it } from "vitest";
import { approximateWidth } from "../../src/charts/measure.ts";
import { drawTape } from "../../src/charts/tape.ts";
import { collidingTexts, strays } from "../support/shape-bounds.ts";
import { samplePlans } from "../support/sample-plan.ts";

const sizes = [
  { width: 720, textSize: 14, strip: 52 },
  { width: 320, textSize: 12, strip: 44 },
  { width: 186, textSize: 3.7, strip: 14 },
];
const cases = Object.entries(samplePlans).flatMap(([name, plan]) =>
  sizes.map((size) => ({ name, plan, ...size })),
);

describe.each(cases)("the tape of $name at a width of $width", ({ plan, width, textSize, strip }) => {
  const drawing = drawTape(plan, { width, textSize, measure: approximateWidth }, strip);
  if (!drawing) throw new Error("every sample has a tape");

  it("keeps every shape inside", () => {
    expect(strays(drawing, approximateWidth)).toEqual([]);
  });

  it("has no two labels over one another", () => {
    expect(collidingTexts(drawing, approximateWidth)).toEqual([]);
  });
});

describe("the tape", () => {
  const drawing = drawTape(
    samplePlans.forTimeThenLift,
    { width: 960, textSize: 10, measure: approximateWidth },
    40,
  );

  it("is to the scale of time: equal times are equally wide", () => {
    const squareEnds = drawing?.shapes.flatMap((shape) =>
      shape.kind === "rect" && shape.fill === "accent" ? [shape.width] : [],
    );
    // Pull-ups of round one: 7 x 1.8 s and 5 x 1.8 s, each a hair (0.06 text sizes) narrower than its time.
    const [seven = 0, five = 0] = squareEnds ?? [];
    expect((seven + 0.6) / (five + 0.6)).toBeCloseTo(7 / 5, 6);
  });

  it("labels half the work, each cut, each attempt", () => {
    const texts = drawing?.shapes.flatMap((shape) => (shape.kind === "text" ? [shape.text] : []));
    expect(texts).toEqual([
      "swing",
      "pull-up",
      "box over",
      "half the work 4:28",
      "58",
      "63",
      "66",
      "1:36",
      "3:13",
      "4:58",
      "6:43",
      "8:30",
      "16:00",
      "10:15",
      "12:25",
      "15:05",
    ]);
  });

  it("says the same in words", () => {
    expect(drawing?.textAlternative).toBe(
      "Kiln Road to the scale of time, 0:00 to 16:00. Part A from 0:00 to 8:30, cut at 1:36, 3:13, 4:58 and 6:43. Half of the work is done at 4:28. Part B from 8:30 to 16:00: 58\u00a0kg at 10:15, 63\u00a0kg at 12:25 and 66\u00a0kg at 15:05.",
    );
  });

  it("is not drawn where nothing is planned", () => {
    const plan = { ...samplePlans.forTimeThenLift, parts: [] };
    expect(drawTape(plan, { width: 100, textSize: 10, measure: approximateWidth }, 40)).toBeUndefined();
  });
});

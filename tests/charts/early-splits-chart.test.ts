import { describe, expect, it } from "vitest";
import { drawEarlySplits } from "../../src/charts/early-splits-chart.ts";
import { approximateWidth } from "../../src/charts/measure.ts";
import { samplePlans } from "../support/sample-plan.ts";
import { collidingTexts, strays } from "../support/shape-bounds.ts";

const five = samplePlans.forTimeThenLift.parts[0]?.pacing?.earlySplits;
if (!five) throw new Error("the sample has early splits");
const size = (width: number) => ({ width, textSize: 12, measure: approximateWidth });
/** Rounds of an even pace of 60 s that slow by a hundredth each; a ladder down from 60 s. */
const many = (count: number) => ({
  ...five,
  shape: Array.from({ length: count }, (_, i) => ({
    round: i + 1,
    seconds: 60 * (1 + i / 100),
    relative: 1 + i / 100,
  })),
});
const ladder = {
  ...five,
  shape: Array.from({ length: 6 }, (_, i) => ({
    round: i + 1,
    seconds: 60 - 10 * i,
    relative: 0.9 + i / 25,
  })),
};

describe.each([
  ["five rounds", five, 720],
  ["five rounds", five, 320],
  ["thirty rounds", many(30), 720],
  ["thirty rounds", many(30), 320],
  ["a ladder", ladder, 320],
] as const)("early splits of %s, %s wide", (_name, early, width) => {
  const drawing = drawEarlySplits(early, size(width), 160);
  if (!drawing) throw new Error("there are rounds");

  it("stay inside and keep their labels apart", () => {
    expect(strays(drawing, approximateWidth)).toEqual([]);
    expect(collidingTexts(drawing, approximateWidth)).toEqual([]);
  });
});

it("a slower round stands higher, and the even pace of equal rounds is level", () => {
  const shapes = drawEarlySplits(many(4), size(320), 160)?.shapes ?? [];
  const [, ...points] = shapes.flatMap((shape) => (shape.kind === "rect" ? [shape.y] : [])).toReversed();
  expect(points).toEqual(points.toSorted((a, b) => a - b));
  const dashes = shapes.filter((shape) => shape.kind === "line" && shape.dashed === true);
  // Three between four rounds, one in the legend.
  expect(dashes).toHaveLength(4);
  const levels = dashes.slice(0, 3).flatMap((line) => (line.kind === "line" ? [line.y1, line.y2] : []));
  for (const level of levels) expect(level).toBeCloseTo(levels[0] ?? Number.NaN, 9);
});

it("says each round as seen and at an even pace", () => {
  // 92 s / 0.95 = 96.8 s, 95 / 0.98 = 96.9, 98 / 1.01 = 97.0, 100 / 1.03 = 97.1, 99 / 1.02 = 97.1.
  expect(drawEarlySplits(five, size(720), 160)?.textAlternative).toBe(
    "Time of each round in 3\u00a0early performances, and at an even pace: 1: 1:32 (1:37), 2: 1:35 (1:37), 3: 1:38 (1:37), 4: 1:40 (1:37) and 5: 1:39 (1:37).",
  );
});

it("nothing is drawn of a single round", () => {
  expect(drawEarlySplits(many(1), size(320), 160)).toBeUndefined();
});

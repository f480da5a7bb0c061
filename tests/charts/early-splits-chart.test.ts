import { describe, expect, it } from "vitest";
import { drawEarlySplits, sayEarlyChart } from "../../src/charts/early-splits-chart.ts";
import { approximateWidth } from "../../src/charts/measure.ts";
import { samplePlans } from "../support/sample-plan.ts";
import { collidingTexts, strays } from "../support/shape-bounds.ts";

const pacing = samplePlans.forTimeThenLift.parts[0]?.pacing;
const five = pacing?.earlySplits;
if (!pacing || !five) throw new Error("the sample has early splits");
type Early = typeof five;
const draw = (earlySplits: Early, width: number) =>
  drawEarlySplits({ ...pacing, earlySplits }, size(width), 160);
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
  const drawing = draw(early, width);
  if (!drawing) throw new Error("there are rounds");

  it("stay inside and keep their labels apart", () => {
    expect(strays(drawing, approximateWidth)).toEqual([]);
    expect(collidingTexts(drawing, approximateWidth)).toEqual([]);
  });
});

it("a slower round stands higher, and the even pace of equal rounds is level", () => {
  const shapes = draw(many(4), 320)?.shapes ?? [];
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
  expect(draw(five, 720)?.textAlternative).toBe(
    "Time of each round in 3\u00a0early performances, and at an even pace: 1: 1:32 (1:37), 2: 1:35 (1:37), 3: 1:38 (1:37), 4: 1:40 (1:37) and 5: 1:39 (1:37).",
  );
});

it("where rounds shrink it says seconds a rep, so that slowing shows", () => {
  // Of 20, 10 and 5 reps that took 60, 40 and 15 s: 3, 4 and 3 s a rep; even would be 60 / 1, 40 / 1.25 and 15 / 1.2 s.
  const rounds = [
    { round: 1, label: "20s", scoreDone: 20 },
    { round: 2, label: "10s", scoreDone: 30 },
    { round: 3, label: "5s", scoreDone: 35 },
  ].map((one) => ({ ...one, start: 0, end: 0, seconds: 1, lastRow: 0 }));
  const shape = [
    { round: 1, seconds: 60, relative: 1 },
    { round: 2, seconds: 40, relative: 1.25 },
    { round: 3, seconds: 15, relative: 1.2 },
  ];
  const shrinking = { ...pacing, rounds, earlySplits: { ...five, shape } };
  expect(drawEarlySplits(shrinking, size(720), 160)?.textAlternative).toBe(
    "Seconds a rep of each round in 3\u00a0early performances, and at an even pace: 20s: 3\u00a0s (3\u00a0s), 10s: 4\u00a0s (3.2\u00a0s) and 5s: 3\u00a0s (2.5\u00a0s).",
  );
  expect(sayEarlyChart(shrinking)).toBe("Seconds a rep in each round, breaks and ways counted in.");
});

it("nothing is drawn of a single round", () => {
  expect(draw(many(1), 320)).toBeUndefined();
});

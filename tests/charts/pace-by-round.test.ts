import { describe, expect, it } from "vitest";
import { approximateWidth } from "../../src/charts/measure.ts";
import { drawPaceByRound } from "../../src/charts/pace-by-round.ts";
import { collidingTexts, strays } from "../support/shape-bounds.ts";
import { samplePlans } from "../support/sample-plan.ts";

const five = samplePlans.forTimeThenLift.parts[0]?.pacing;
const twenty = samplePlans.twentyRounds.parts[0]?.pacing;
const one = samplePlans.almostNothingKnown.parts[0]?.pacing;
if (!five || !twenty || !one) throw new Error("the samples have pacing");
const size = (width: number) => ({ width, textSize: 12, measure: approximateWidth });

describe.each([
  ["five rounds", five, 720],
  ["five rounds", five, 320],
  ["twenty rounds", twenty, 720],
  ["twenty rounds", twenty, 320],
] as const)("pace of %s at %s", (_name, pacing, width) => {
  const drawing = drawPaceByRound(pacing, size(width), 160);
  if (!drawing) throw new Error("there are rounds");

  it("stays inside and keeps its labels apart", () => {
    expect(strays(drawing, approximateWidth)).toEqual([]);
    expect(collidingTexts(drawing, approximateWidth)).toEqual([]);
  });
});

it("slower rounds stand higher, the hard one larger", () => {
  const squares = drawPaceByRound(five, size(720), 160)?.shapes.flatMap((shape) =>
    shape.kind === "rect" ? [shape] : [],
  );
  const middles = squares?.map((square) => square.y + square.height / 2) ?? [];
  expect([...middles].sort((a, b) => b - a)).toEqual(middles);
  const sides = squares?.map((square) => Math.round(square.width)) ?? [];
  expect(sides[3]).toBeGreaterThan(Math.max(...sides.filter((_, index) => index !== 3)));
});

it("says each round with its range, the ceiling and the hard round", () => {
  expect(drawPaceByRound(five, size(720), 160)?.textAlternative).toBe(
    "Planned time of each round: 1: 1:36 (1:30 to 1:43; early performance 1:37), 2: 1:37 (1:31 to 1:44; early performance 1:40), 3: 1:44 (1:38 to 1:52; early performance 1:43), 4: 1:46 (1:39 to 1:53; early performance 1:45) and 5: 1:47 (1:40 to 1:54; early performance 1:44). Round\u00a01 no faster than 88\u00a0s. It gets hard in round\u00a04.",
  );
});

it("is not drawn for a single round", () => {
  expect(drawPaceByRound(one, size(720), 160)).toBeUndefined();
});

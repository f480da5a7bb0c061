import { describe, expect, it } from "vitest";
import { approximateWidth } from "../../src/charts/measure.ts";
import { drawPlanAndDone } from "../../src/charts/plan-and-done.ts";
import type { Debrief } from "../../src/models/plan/debrief.ts";
import { collidingTexts, strays } from "../support/shape-bounds.ts";

/** Rounds that take `planned` and `done` seconds each, one after the other. */
const rounds = (planned: readonly number[], done: readonly number[]): Debrief["pieces"] => {
  const sum = (times: readonly number[], to: number): number =>
    times.slice(0, to + 1).reduce((total, time) => total + time, 0);
  return planned.map((time, at) => ({
    kind: "round",
    row: at,
    round: at + 1,
    plannedEnd: sum(planned, at),
    doneEnd: sum(done, at),
    planned: time,
    done: done[at] ?? 0,
  }));
};
const size = (width: number) => ({ width, textSize: 12, measure: approximateWidth });

describe("the plan above what was done", () => {
  const many = Array.from({ length: 20 }, () => 30);
  it.each([
    ["five rounds", rounds([60, 60, 60, 60, 60], [50, 60, 70, 75, 70])],
    [
      "twenty rounds",
      rounds(
        many,
        [...many].map((time, at) => time + at),
      ),
    ],
  ])("stays inside and keeps its labels apart: %s", (_, pieces) => {
    for (const width of [320, 1040]) {
      const drawing = drawPlanAndDone(pieces, size(width), 40);
      if (!drawing) throw new Error("there are pieces");
      expect(strays(drawing, approximateWidth)).toEqual([]);
      expect(collidingTexts(drawing, approximateWidth)).toEqual([]);
    }
  });

  it("draws both to one scale and fills the piece that lost most", () => {
    const drawing = drawPlanAndDone(rounds([60, 60, 60], [50, 70, 90]), size(320), 40);
    const fills = drawing?.shapes.filter(({ kind }) => kind === "rect") ?? [];
    const [planned, done] = fills.map((shape) => (shape.kind === "rect" ? shape.width : 0));
    // The third round: 90 s against 60 s.
    expect((done ?? 0) / (planned ?? 1)).toBeCloseTo(1.5, 6);
    const ends = fills.map((shape) => (shape.kind === "rect" ? shape.x + shape.width : 0));
    expect(ends[1]).toBeGreaterThan(ends[0] ?? 0);
  });

  it("fills nothing where all went as planned, and is not drawn for one piece", () => {
    const same = drawPlanAndDone(rounds([60, 60], [60, 61]), size(320), 40);
    expect(same?.shapes.some(({ kind }) => kind === "rect")).toBe(false);
    expect(drawPlanAndDone(rounds([60], [70]), size(320), 40)).toBeUndefined();
  });

  it("is said in words", () => {
    expect(drawPlanAndDone(rounds([60, 60], [55, 75]), size(320), 40)?.textAlternative).toBe(
      "The plan above, what was done below, to one scale of time. Planned 1:00, done 0:55. Planned 2:00, done 2:10.",
    );
  });
});

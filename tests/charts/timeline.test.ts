import { describe, expect, it } from "vitest";
import { timelineOf } from "../../src/charts/timeline.ts";
import { samplePlans } from "../support/sample-plan.ts";

describe("a plan laid out in time", () => {
  const timeline = timelineOf(samplePlans.forTimeThenLift);
  const [work, lift] = timeline.parts;

  it("has a part of work and a part of lifts on one clock, until the window closes", () => {
    expect(timeline.parts.map((part) => [part.name, part.kind, part.from, part.to])).toEqual([
      ["A", "work", 0, 509.7],
      ["B", "lift", 509.7, 960],
    ]);
    expect(timeline.end).toBe(960);
  });

  it("is cut at each checkpoint, five rounds in five pieces", () => {
    expect(work?.pieces.map(({ to }) => Math.round(to))).toEqual([96, 193, 298, 403, 510]);
  });

  it("shows the sets of round one where they are done", () => {
    // By hand: 4 s, then 16 x 1.9 s; 5 s, then 7 x 1.8 s, 6 s rest, 5 x 1.8 s; 3 s, then 10 x 2.6 s.
    const blocks = work?.blocks
      .slice(0, 4)
      .map(({ from, to, lane }) => [lane, from, to].map((v) => Math.round(v * 10) / 10));
    expect(blocks).toEqual([
      [0, 4, 34.4],
      [1, 39.4, 52],
      [1, 58, 67],
      [2, 70, 96],
    ]);
  });

  it("names one lane a movement and marks the one that limits", () => {
    expect(work?.lanes).toEqual([
      { name: "kettlebell swings", short: "swing", limiter: false },
      { name: "pull-ups", short: "pull-up", limiter: true },
      { name: "box step-overs", short: "box over", limiter: false },
    ]);
  });

  it("puts attempts on the running clock", () => {
    expect(lift?.attempts.map(({ at, figure }) => [Math.round(at), Number(figure)])).toEqual([
      [615, 58],
      [745, 63],
      [905, 66],
    ]);
  });

  it("leaves out parts that are not planned", () => {
    expect(timelineOf(samplePlans.almostNothingKnown).parts.map((part) => part.name)).toEqual(["A"]);
    expect(timelineOf({ parts: [] })).toEqual({ end: 0, parts: [] });
  });
});

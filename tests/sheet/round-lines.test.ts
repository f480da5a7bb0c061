import { describe, expect, it } from "vitest";
import type { PartPlan } from "../../src/models/plan/plan.ts";
import { roundLines } from "../../src/sheet/round-lines.ts";
import { samplePlans } from "../support/sample-plan.ts";

const everything = { sets: true, every: "row" } as const;

function partOf(plan: { readonly parts: readonly PartPlan[] }) {
  const [part] = plan.parts;
  if (!part?.pacing) throw new Error("the sample has pacing");
  return { part, pacing: part.pacing };
}

describe("the lines of a panel", () => {
  it("of rounds give the clock at the end and the sets of what is broken", () => {
    const { part, pacing } = partOf(samplePlans.forTimeThenLift);
    const { lines, setHeadings, figureHeading } = roundLines(part, pacing, everything);
    expect([figureHeading, setHeadings]).toEqual(["clock", ["pull-up"]]);
    expect(lines.map(({ label, figure, sets }) => [label, figure, ...sets])).toEqual([
      ["1", "1:36", "7-5"],
      ["2", "3:13", "7-5"],
      ["3", "4:58", "5-4-3"],
      ["4", "6:43", "5-4-3"],
      ["5", "8:30", "4-4-4"],
    ]);
  });

  it("of a single pass give each movement", () => {
    const { part, pacing } = partOf(samplePlans.almostNothingKnown);
    const { lines } = roundLines(part, pacing, everything);
    expect(lines.map(({ label, name, figure, sets }) => [label, name, figure, ...sets])).toEqual([
      ["1", "30\u00a0cal row", "2:35", ""],
      ["2", "40 wall ball", "5:18", "4×10"],
      ["3", "40 burpee", "9:00", "20-16"],
    ]);
  });

  it("of movements in turn name the movement of each interval", () => {
    const { part, pacing } = partOf(samplePlans.forTimeThenLift);
    const [swing, pull] = pacing.rows;
    if (!swing || !pull) throw new Error("the sample has rows");
    const rest = { ...swing, kind: "rest", short: "rest" } as const;
    const inTurn = {
      ...pacing,
      score: "reps",
      rows: [swing, rest, pull, rest, rest],
      intervals: [
        { interval: 1, score: 16, restLeft: 12 },
        { interval: 2, score: 12, restLeft: 20 },
      ],
    } as const;
    const { lines } = roundLines(part, inTurn, everything);
    expect(lines.map(({ label, name, figure }) => [label, name, figure])).toEqual([
      ["1", "swing", "16"],
      ["2", "pull-up", "12"],
    ]);
  });

  it("of intervals give the score of each and the rest left", () => {
    const { part, pacing } = partOf(samplePlans.twentyRounds);
    const intervals = [
      { interval: 1, score: 14.2, restLeft: 31 },
      { interval: 2, score: 13.6, restLeft: 28 },
    ];
    const { lines, figureHeading } = roundLines(
      part,
      { ...pacing, intervals },
      { ...everything, sets: false },
    );
    expect(figureHeading).toBe("score");
    expect(lines.map(({ label, figure, note }) => [label, figure, note])).toEqual([
      ["1", "14", "rest 31\u00a0s"],
      ["2", "14", "rest 28\u00a0s"],
    ]);
  });

  it("at checkpoints only leave out the rest but never the last; few are three, spread evenly", () => {
    const { part, pacing } = partOf(samplePlans.twentyRounds);
    const labels = (every: "row" | "checkpoint" | "few") =>
      roundLines(part, pacing, { sets: false, every }).lines.map(({ label }) => label);
    expect(labels("row").length).toBe(20);
    expect(labels("checkpoint")).toEqual(["4", "8", "12", "16", "20"]);
    expect(labels("few")).toEqual(["8", "16"]);
  });

  it("mark the round where a tie is broken", () => {
    const { part, pacing } = partOf(samplePlans.twentyRounds);
    const marked = roundLines(part, pacing, everything).lines.filter((line) => line.tieBreak);
    expect(marked.map(({ label }) => label)).toEqual(["10"]);
  });

  it("of a part on a clock of its own say so", () => {
    const { part, pacing } = partOf(samplePlans.forTimeThenLift);
    const later = {
      ...part,
      name: "C",
      start: { kind: "after", after: "A", clock: 700, rest: 120 },
    } as const;
    expect(roundLines(later, pacing, everything).figureHeading).toBe("clock of C");
  });
});

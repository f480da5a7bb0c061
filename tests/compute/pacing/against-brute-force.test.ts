import { describe, expect, test } from "vitest";
import { demoData } from "../../support/demo-data.ts";
import { demoProblems, solveProblem } from "../../experiments/pacing-problems.ts";
import { type Grid, tryGrid } from "../../experiments/pacing-search.ts";

// A coarse grid; the whole one is run by hand, see "Pacing: figures" in DEVELOPERS.md. The expected number is what trying everything finds.
const GRID: Grid = {
  offsets: [0.92, 1, 1.08],
  finish: [1, 1.05],
  margins: [0, 0.1, 0.2, 0.4],
  holds: [0, 0.4],
  tasks: 2,
};

const problems = demoProblems(demoData()).filter(({ athlete }) =>
  ["kleio-maraki", "zoe-quellmalz"].includes(athlete),
);

describe("the plan of a part", () => {
  test.each(problems)("is within 1.2 % of every plan of the same kind: $part for $athlete", (problem) => {
    const found = solveProblem(problem);
    if (found === undefined) throw new Error("the demonstration can be paced");
    const { plan, best, points } = tryGrid(found.solved, GRID);
    expect(points).toBeGreaterThan(30);
    expect((plan - best) / Math.abs(plan)).toBeLessThan(0.012);
  });
});

/**
 * How far the plan, made of a few numbers a person can follow, is from the best there is. Run by hand:
 *
 *   node tests/experiments/pacing-free-optimum.ts [free | grid]
 *
 * Over the demonstration's athletes and its parts without a lift:
 *
 * - free: the same result on the expected day with any effort in any row (coordinate descent), the reserve never below the plan's margin.
 * - grid: brute force over the plan's own numbers (margin, what is held before rests, finish, offsets), by the measure the plan is
 *   chosen by, the mean over uncertain days.
 */
import { quantileSorted } from "../../src/numerics/quantile.ts";
import { demoData } from "../support/demo-data.ts";
import { demoProblems, percent, solveProblem, table } from "./pacing-problems.ts";
import { freeOptimum, type Grid, tryGrid } from "./pacing-search.ts";

const GRID: Grid = {
  offsets: [0.92, 1, 1.08],
  finish: [1, 1.05],
  margins: [0, 0.05, 0.1, 0.15, 0.2, 0.3, 0.4],
  holds: [0, 0.2, 0.4, 0.6],
  tasks: 3,
};

const asked = process.argv[2];
const rows: string[][] = [["part", "athlete", "free: better by", "grid: better by", "where"]];
const free: { part: string; gap: number }[] = [];
const grid: { part: string; gap: number }[] = [];
for (const problem of demoProblems(demoData())) {
  const found = solveProblem(problem);
  if (!found) continue;
  const { part, athlete } = problem;
  const row = [part, athlete, "", "", ""];
  if (asked !== "free") {
    const result = tryGrid(found.solved, GRID);
    const gap = (result.plan - result.best) / Math.abs(result.plan);
    grid.push({ part, gap });
    row[3] = percent(gap);
    row[4] = gap > 0.005 ? result.at : "";
  }
  if (asked !== "grid") {
    // Solved again: the grid leaves its last efforts behind.
    const again = solveProblem(problem);
    const result = freeOptimum((again ?? found).solved);
    const gap = (result.plan - result.free) / Math.abs(result.plan);
    free.push({ part, gap });
    row[2] = percent(gap);
  }
  rows.push(row);
}
console.log(table(rows));

for (const [name, gaps] of [
  ["free optimum", free],
  ["grid", grid],
] as const) {
  if (gaps.length === 0) continue;
  const parts = [...new Set(gaps.map(({ part }) => part)), "all"];
  console.log(`\n${name}: how much better than the plan`);
  console.log(
    table([
      ["part", "median", "max", "over 0.5 %", "over 3 %"],
      ...parts.map((part) => {
        const of = gaps.filter((each) => part === "all" || each.part === part).map(({ gap }) => gap);
        const sorted = of.sort((a, b) => a - b);
        return [
          part,
          percent(quantileSorted(sorted, 0.5)),
          percent(sorted.at(-1) ?? NaN),
          `${of.filter((gap) => gap > 0.005).length}`,
          `${of.filter((gap) => gap > 0.03).length}`,
        ];
      }),
    ]),
  );
}

import { rulesFor } from "../../../src/compute/motion/rules.ts";
import type { PartInput } from "../../../src/compute/pacing/paced-part.ts";
import { solveCourse } from "../../../src/compute/pacing/solve-course.ts";
import type { Solved } from "../../../src/compute/search/solve-part.ts";
import { seconds } from "../../../src/models/quantity.ts";
import { findRoot } from "../../../src/numerics/find-root.ts";
import type { Result } from "./sample.ts";
import { stretched } from "./field-problem.ts";

/** The farthest a plan may be off before it counts as this far: a third of the time, or three times it. */
const MOST = Math.log(3);

/** A score is reached when all but this share of it is done; the first clock to do so is looked for. */
const REACHED = 1e-4;

/**
 * How much faster than the field a plan comes to the score of its place, as a share of the plan's time: 0.1 where the field needs 1.1
 * times as long. A time is compared with the time of the plan. For reps all clocks of the work are stretched until the plan does
 * just as many; one rep more or less is no error, so what waits before a wall is right wherever the plan waits there too.
 */
export function timeError(input: PartInput, result: Result): number {
  if (result.kind === "finish") return result.value / finishOf(input) - 1;
  const enough = stretchFor(input, result.value);
  const more = stretchFor(input, result.value + 1);
  return 1 / Math.min(Math.max(1, enough), Math.max(more, enough)) - 1;
}

function solve(input: PartInput): Solved {
  const solved = solveCourse(input, rulesFor(input.capacity, input.overrides));
  if ("missing" in solved) throw new Error(JSON.stringify(solved.missing));
  return solved.solved;
}

/** Seconds the plan takes for all of the work, however late the cap. */
function finishOf(input: PartInput): number {
  return solve({ ...input, course: { ...input.course, ends: seconds(Number.POSITIVE_INFINITY) } }).state
    .clock;
}

/** The factor on all clocks with which the plan scores so much. */
function stretchFor(input: PartInput, score: number): number {
  const over = (logarithm: number): number =>
    (solve({ ...input, course: stretched(input.course, Math.exp(logarithm)) }).state.score - score) / score +
    REACHED;
  const root = findRoot(over, -MOST, MOST, { width: 0.003, most: 16 });
  return Math.exp(root.kind === "no-bracket" ? (root.atLow > 0 ? -MOST : MOST) : root.at);
}

import { compileTrack } from "./compile-track.ts";
import { goalOf, type Goal } from "./goal.ts";
import type { PartInput } from "./paced-part.ts";
import type { Rules } from "./rules.ts";
import { shapeOf } from "./shape.ts";
import { type Solved, solvePart, workOf } from "./solve-part.ts";
import { startBody } from "./start-body.ts";
import type { Track } from "./track.ts";
import { tasksOf } from "./track-task.ts";
import { plannedSpread } from "./uncertainty.ts";

/** A course solved, and whether its cap (or a movement the athlete cannot do) stops it before all is done. */
export type SolvedCourse = { readonly solved: Solved; readonly capped: boolean };

/** A guess of the length that is further from the truth than this share is corrected once. */
const LENGTH_ERROR = 0.08;

/**
 * Compiles and solves a course for its own goal: a time without regard to a cap first; where the plan does not make the cap, again for
 * as much as possible in the time. Capacities that depend on the length of the part are taken at the length found.
 */
export function solveCourse(
  input: PartInput,
  rules: Rules,
): SolvedCourse | { readonly missing: readonly string[] } {
  const { course, capacity, score } = input;
  const taskOf = tasksOf(capacity, course.worn);
  const compile = (expected: number): Track | { readonly missing: readonly string[] } =>
    compileTrack(course, score, taskOf, rules, input, expected);
  const limit = course.ends ?? Number.POSITIVE_INFINITY;
  const first = compile(Number.isFinite(limit) ? limit : 600);
  if ("missing" in first) return first;
  const goal = goalOf(score);
  const solve = (track: Track, towards: Goal, horizon: number): Solved =>
    solvePart(
      track,
      rules,
      towards,
      startBody(input.before, rules),
      horizon,
      shapeOf(track, input.shape),
      plannedSpread(track, rules),
    );
  const lengthMatters = first.tasks.some((task) => task.capacity.byDuration.factors.length > 0);
  const settled = (towards: Goal, horizon: number): Solved => {
    const guess = Math.min(limit, workOf(first));
    const track = lengthMatters ? (compile(guess) as Track) : first;
    const solved = solve(track, towards, horizon);
    const off = Math.abs(solved.state.clock / Math.max(guess, 1) - 1);
    if (!lengthMatters || off < LENGTH_ERROR) return solved;
    return solve(compile(solved.state.clock) as Track, towards, horizon);
  };
  if (goal.kind !== "time") return { solved: settled(goal, limit), capped: false };
  const uncapped = settled(goal, Number.POSITIVE_INFINITY);
  const made = uncapped.state.stopped === "no" && uncapped.state.clock <= limit;
  if (made) return { solved: uncapped, capped: false };
  return { solved: settled({ kind: "score" }, limit), capped: true };
}

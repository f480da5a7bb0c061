import type { Course, CourseEffort } from "../../models/course.ts";
import { quickRun } from "../search/choose-plan.ts";
import { compileTrack } from "./compile-track.ts";
import { goalOf, intervalsOf, type Goal } from "../search/goal.ts";
import type { PartInput } from "./paced-part.ts";
import { partitionsOf } from "./partitions.ts";
import { isAllDone } from "./planned-amounts.ts";
import type { Rules } from "../motion/rules.ts";
import { shapeOf } from "./shape.ts";
import { type PartToSolve, questOf, type Solved, solvePart, workOf } from "../search/solve-part.ts";
import { startBody } from "./start-body.ts";
import type { Track } from "../motion/track.ts";
import { tasksOf } from "../motion/track-task.ts";
import { plannedSpread } from "../search/uncertainty.ts";

/** What falls short: nothing, the work under a cap (or before a movement the athlete cannot do), or the work of timed intervals. */
export type Falls = "nothing" | "cap" | "intervals";

/** A course solved, and what of it falls short. What does is solved for as much as possible in the time. */
export type SolvedCourse = {
  readonly solved: Solved;
  readonly falls: Falls;
  /** Clock at which the work up to a stretch of the solved track is done by who has nothing else in mind. */
  readonly allOut: (last: number) => number;
};

type Missing = { readonly missing: readonly string[] };

/** Where capacities depend on the length of the part, it is found to this share, in so many rounds. */
const LENGTH_ERROR = 0.02;
const LENGTH_ROUNDS = 4;
/** Length in seconds taken where nothing says it. */
const USUAL_LENGTH = 600;

/**
 * Compiles and solves a course for its own goal: a time without regard to a cap first; where the plan does not make the cap, again for
 * as much as possible in the time. Work that may be cut up freely is cut up the way that is quickest on the expected day.
 * Capacities that depend on the length of the part are taken at the length found.
 */
export function solveCourse(input: PartInput, rules: Rules): SolvedCourse | Missing {
  const taskOf = tasksOf(input.capacity, input.course.worn);
  const compile = (course: Course, expected: number): Track | Missing =>
    compileTrack(course, input.score, taskOf, rules, input, expected);
  const limit = input.course.ends ?? Number.POSITIVE_INFINITY;
  const first = compile(input.course, Number.isFinite(limit) ? limit : USUAL_LENGTH);
  if ("missing" in first) return first;
  const goal = goalOf(input.score);
  const guess = Math.min(limit, workOf(first) || USUAL_LENGTH);
  const toSolve = (track: Track, towards: Goal, horizon: number): PartToSolve => ({
    track,
    rules,
    goal: towards,
    start: startBody(input.before, rules),
    horizon,
    shape: shapeOf(track, input.shape),
    spread: plannedSpread(track, rules),
  });
  const quick = (way: Course, length: number): { loss: number; clock: number } =>
    quickRun(
      questOf(
        toSolve(compile(way, length) as Track, goal, goal.kind === "time" ? Number.POSITIVE_INFINITY : limit),
      ),
    );
  const course = bestPartition(input.course, (way) => quick(way, guess).loss);
  const lengthMatters = first.tasks.some((task) => task.capacity.byDuration.factors.length > 0);
  const lengthFor = (horizon: number): number => {
    let length = Math.min(horizon, guess);
    if (!lengthMatters || Number.isFinite(horizon)) return length;
    for (let round = 0; round < LENGTH_ROUNDS; round += 1) {
      const { clock } = quick(course, length);
      const off = Math.abs(clock / length - 1);
      length = clock;
      if (off < LENGTH_ERROR) break;
    }
    return length;
  };
  const settled = (towards: Goal, horizon: number): Solved => {
    const length = lengthFor(horizon);
    const solved = solvePart(toSolve(compile(course, length) as Track, towards, horizon));
    const off = Math.abs(solved.state.clock / length - 1);
    if (!lengthMatters || off < 2 * LENGTH_ERROR || Number.isFinite(horizon)) return solved;
    return solvePart(toSolve(compile(course, solved.state.clock) as Track, towards, horizon));
  };
  const allOut = (last: number): number => {
    const track = compile(upTo(course, last), guess) as Track;
    return solvePart(toSolve(track, { kind: "time", restCounts: true }, Number.POSITIVE_INFINITY)).state
      .clock;
  };
  if (goal.kind !== "time") {
    const solved = settled(goal, limit);
    if (!runsOut(solved)) return { solved, falls: "nothing", allOut };
    return { solved: settled({ kind: "score" }, limit), falls: "intervals", allOut };
  }
  const uncapped = settled(goal, Number.POSITIVE_INFINITY);
  const made = uncapped.state.stopped === "no" && uncapped.state.clock <= limit && isAllDone(uncapped);
  if (made) return { solved: uncapped, falls: "nothing", allOut };
  return { solved: settled({ kind: "score" }, limit), falls: "cap", allOut };
}

/** The work up to an item, with nothing that ends it sooner. */
const upTo = (course: Course, last: number): Course => ({
  ...course,
  items: course.items.slice(0, last + 1).map((item) => {
    if (item.kind === "rest" || item.deadline?.onMiss !== "part-ends") return item;
    return withoutDeadline(item);
  }),
});

const withoutDeadline = (item: CourseEffort): CourseEffort => {
  const free: { -readonly [K in keyof CourseEffort]: CourseEffort[K] } = { ...item };
  delete free.deadline;
  return free;
};

/** Whether the time of an interval is scored and the clock ends one before its work is done: then it has no time. */
const runsOut = ({ goal, bench: { track }, log, state }: Solved): boolean =>
  goal.kind === "interval" &&
  goal.of === "time" &&
  intervalsOf(track, log, state.at).some(({ complete }) => !complete);

function bestPartition(course: Course, lossOfWay: (way: Course) => number): Course {
  const ways = partitionsOf(course);
  if (ways.length < 2) return course;
  let best = { way: course, loss: Number.POSITIVE_INFINITY };
  for (const way of ways) {
    const loss = lossOfWay(way);
    if (loss < best.loss) best = { way, loss };
  }
  return best.way;
}

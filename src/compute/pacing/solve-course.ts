import type { Missing } from "../../models/plan/missing.ts";
import type { Course, CourseEffort } from "../../models/course.ts";
import { quickRun, type QuickRun } from "../search/choose-plan.ts";
import { compileTrack } from "./compile-track.ts";
import { goalOf, intervalsOf, type Goal } from "../search/goal.ts";
import type { PartInput } from "./paced-part.ts";
import { type BestOrder, bestOrder } from "./best-order.ts";
import { isAllDone } from "./planned-amounts.ts";
import type { Capacity } from "../motion/movement-capacity.ts";
import type { Rules } from "../motion/rules.ts";
import { setByCoach } from "./set-by-coach.ts";
import { drawnOut, shapeOf } from "./shape.ts";
import {
  type Outcome,
  type PartToSolve,
  questOf,
  solveAs,
  type Solved,
  solvePart,
  workOf,
} from "../search/solve-part.ts";
import { startBody } from "./start-body.ts";
import type { Track } from "../motion/track.ts";
import { type TaskOf, tasksOf } from "../motion/track-task.ts";
import { plannedSpread } from "../search/uncertainty.ts";
import { PACING_FIXED } from "./fixed-constants.ts";

/** What falls short: nothing, the work under a cap (or before a movement the athlete cannot do), or the work of timed intervals. */
export type Falls = "nothing" | "cap" | "intervals";

/** A course solved, and what of it falls short. What does is solved for as much as possible in the time. */
export type SolvedCourse = {
  readonly solved: Solved;
  readonly falls: Falls;
  /** Clock at which the work up to a stretch of the solved track is done by who has nothing else in mind. */
  readonly allOut: (last: number) => number;
  /** The same plan gone about by somebody of another capacity, for the same goal. */
  readonly asDoneBy: (capacity: Capacity) => Outcome;
  /** Clock at which all work would be done without a cap; infinite where the work has no end. */
  readonly wouldFinish: number;
  /** Of work in any order: how it is ordered, and what other ways would cost. */
  readonly order?: NonNullable<BestOrder["told"]>;
};

type NotSolved = { readonly missing: readonly Missing[] };

/** Where capacities depend on the length of the part, it is found to this share, in so many rounds. */
const LENGTH_ERROR = 0.03;
const LENGTH_ROUNDS = 4;
/** A plan whose length is off by this share from what it was made for is made again. */
const FAR_OFF = 0.06;
/** Length in seconds taken where nothing says it. */
const USUAL_LENGTH = PACING_FIXED.usualLength.value;

/** Everything about a part that solving it again and again needs. */
type Task = {
  readonly input: PartInput;
  readonly rules: Rules;
  readonly limit: number;
  /** The course compiled for an expected length, for this athlete or one of another capacity. */
  readonly compile: (course: Course, expected: number, taskOf?: TaskOf) => Track | NotSolved;
};

/**
 * Compiles and solves a course for its own goal: a time without regard to a cap first; where the plan does not make the cap, again for
 * as much as possible in the time. Work that may be cut up freely is cut up the way that is quickest on the expected day.
 * Capacities that depend on the length of the part are taken at the length found.
 */
export function solveCourse(input: PartInput, rules: Rules): SolvedCourse | NotSolved {
  const own = tasksOf(input.capacity, input.course.worn);
  const limit = input.course.ends ?? Number.POSITIVE_INFINITY;
  const compile: Task["compile"] = (course, expected, taskOf = own) => {
    const track = compileTrack(course, input.score, { taskOf, rules, floor: input }, expected);
    return "missing" in track ? track : setByCoach(track, input.way).track;
  };
  const task: Task = { input, rules, limit, compile };
  const first = compile(input.course, Number.isFinite(limit) ? limit : USUAL_LENGTH);
  if ("missing" in first) return first;
  const goal = goalOf(input.score);
  const guess = Math.min(limit, workOf(first) || USUAL_LENGTH);
  const order = bestOrder(input.course, (way) => quickly(task, way, goal, guess));
  const { course } = order;
  const told = order.told && { order: order.told };
  const allOut = (last: number): number => {
    const track = compile(upTo(course, last), guess) as Track;
    const fastest: Goal = { kind: "time", restCounts: true };
    return solvePart(toSolve(task, track, fastest, Number.POSITIVE_INFINITY)).state.clock;
  };
  if (goal.kind !== "time") {
    const settled = settle(task, course, goal, limit, guess);
    const short = runsOut(settled.solved);
    const found = short ? settle(task, course, { kind: "score" }, limit, guess) : settled;
    const falls = short ? "intervals" : "nothing";
    return { ...solvedCourse(task, course, found, limit), falls, allOut, wouldFinish: limit, ...told };
  }
  const uncapped = settle(task, course, goal, Number.POSITIVE_INFINITY, guess);
  const { state } = uncapped.solved;
  const wouldFinish = state.stopped === "no" ? state.clock : Number.POSITIVE_INFINITY;
  if (state.stopped === "no" && wouldFinish <= limit && isAllDone(uncapped.solved)) {
    const all = solvedCourse(task, course, uncapped, Number.POSITIVE_INFINITY);
    return { ...all, falls: "nothing", allOut, wouldFinish, ...told };
  }
  const capped = settle(task, course, { kind: "score" }, limit, guess);
  return { ...solvedCourse(task, course, capped, limit), falls: "cap", allOut, wouldFinish, ...told };
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

type Settled = { readonly solved: Solved; readonly length: number };

/** What is told of a solved course, with the way to go about it as somebody else. */
const solvedCourse = (
  task: Task,
  course: Course,
  { solved, length }: Settled,
  horizon: number,
): Pick<SolvedCourse, "solved" | "asDoneBy"> => ({
  solved,
  asDoneBy: (capacity) => {
    const track = task.compile(course, length, tasksOf(capacity, course.worn)) as Track;
    return solveAs(toSolve(task, track, solved.goal, horizon), solved.choice);
  },
});

const toSolve = ({ rules, input }: Task, track: Track, goal: Goal, horizon: number): PartToSolve => ({
  track,
  rules,
  goal,
  start: startBody(input.before, rules),
  horizon,
  shape: drawnOut(shapeOf(track, input.shape), track, input),
  spread: plannedSpread(track, rules),
});

/** Loss and length of a way of cutting up the work, at a first guess of everything. */
function quickly(task: Task, way: Course, goal: Goal, length: number): QuickRun {
  const track = task.compile(way, length) as Track;
  const horizon = goal.kind === "time" ? Number.POSITIVE_INFINITY : task.limit;
  return quickRun(questOf(toSolve(task, track, goal, horizon)));
}

/** Solves a course for a goal, at the length it turns out to have. */
function settle(task: Task, course: Course, goal: Goal, horizon: number, guess: number): Settled {
  const first = Math.min(horizon, guess);
  const length = Number.isFinite(horizon) ? first : lengthFound(task, course, goal, first);
  const solved = solvePart(toSolve(task, task.compile(course, length) as Track, goal, horizon));
  const found = solved.state.clock;
  if (Math.abs(found / length - 1) < FAR_OFF) return { solved, length };
  return {
    solved: solvePart(toSolve(task, task.compile(course, found) as Track, goal, horizon)),
    length: found,
  };
}

/** The length of work without a fixed end, found by running it quickly at the length of the run before. */
function lengthFound(task: Task, course: Course, goal: Goal, guess: number): number {
  let length = guess;
  for (let round = 0; round < LENGTH_ROUNDS; round += 1) {
    const { clock } = quickly(task, course, goal, length);
    const off = Math.abs(clock / length - 1);
    length = clock;
    if (off < LENGTH_ERROR) break;
  }
  return length;
}

import type { Missing } from "../../models/plan/missing.ts";
import type { Course, CourseEffort, CourseItem } from "../../models/course.ts";
import type { Score } from "../../models/workout.ts";
import { interpolate } from "../../numerics/interpolate.ts";
import type { Rules } from "../motion/rules.ts";
import { makeDearerTogether } from "./mixed-work.ts";
import { markSections } from "./sections.ts";
import { PACING_FIXED } from "./fixed-constants.ts";
import {
  COUNTED,
  HOLD,
  REST_AS_WORK,
  REST_FOR,
  REST_UNTIL,
  type Track,
  UNTIL,
  WINDOW,
} from "../motion/track.ts";
import type { TaskOf, TrackTask } from "../motion/track-task.ts";
import { type Floor, transitionTo } from "./transition.ts";

/** Seconds simulated in one step where the work has no reps. */
const STEP_WITHOUT_REPS = 3;

/** What a course is compiled with: the tasks as the athlete does them, the rules of the athlete, and the floor. */
type Compiling = { readonly taskOf: TaskOf; readonly rules: Rules; readonly floor: Floor };

/**
 * Makes a course ready for fast simulation, for one athlete and an expected length of the part in seconds (which enters only
 * through the athlete's own efforts of different lengths). Tells everything that is missing where it cannot.
 */
export function compileTrack(
  course: Course,
  score: Score,
  { taskOf, rules, floor }: Compiling,
  expected: number,
): Track | { readonly missing: readonly Missing[] } {
  const { items } = course;
  const track = emptyTrack(items, course.pauses ?? []);
  const tasks: TrackTask[] = [];
  const indexOf = new Map<TrackTask, number>();
  const missing = new Map<string, Missing>();
  let before: TrackTask | undefined;
  items.forEach((item, i) => {
    track.round[i] = item.pass.round;
    if (item.kind === "rest") {
      setRest(track, i, item);
      return;
    }
    const task = taskOf(item);
    if ("missing" in task) {
      missing.set(JSON.stringify(task.missing), task.missing);
      return;
    }
    let index = indexOf.get(task);
    if (index === undefined) {
      index = tasks.push(task) - 1;
      indexOf.set(task, index);
    }
    track.task[i] = index;
    setEffort(track, i, item, task, expected);
    track.transition[i] = transitionTo(
      { task, effort: item },
      { item: comingFrom(items, i), task: before },
      rules,
      floor,
    );
    before = task;
  });
  if (missing.size > 0) return { missing: [...missing.values()] };
  makeDearerTogether(track, tasks, rules, expected);
  return { ...track, tasks, sections: markSections(track, score, rules) };
}

/** The item before, plates left out that are changed in between. */
const comingFrom = (items: readonly CourseItem[], i: number): CourseItem | undefined => {
  const before = items[i - 1];
  return before?.kind === "rest" && before.change !== undefined ? items[i - 2] : before;
};

function setRest(track: Mutable, i: number, item: CourseItem & { kind: "rest" }): void {
  const { rest } = item;
  track.counted[i] = item.counted ? 1 : 0;
  if (rest.kind === "until") {
    track.kind[i] = REST_UNTIL;
    track.time[i] = rest.clock;
  } else if (rest.kind === "as-long-as-work") {
    track.kind[i] = REST_AS_WORK;
    track.time[i] = rest.times;
  } else {
    track.kind[i] = REST_FOR;
    track.time[i] = rest.time;
  }
}

function setEffort(track: Mutable, i: number, item: CourseEffort, task: TrackTask, expected: number): void {
  const { amount } = item;
  const { capacity } = task;
  const { seconds, factors } = capacity.byDuration;
  const perUnit = capacity.sustainable * (factors.length > 0 ? interpolate(seconds, factors, expected) : 1);
  const counted = amount.kind === "counted";
  track.kind[i] = kindOf(item);
  track.amount[i] = counted ? amount.amount : Number.POSITIVE_INFINITY;
  track.time[i] =
    amount.kind === "for"
      ? amount.time
      : amount.kind === "until"
        ? (amount.clock ?? Number.POSITIVE_INFINITY)
        : 0;
  if (track.kind[i] === HOLD && amount.kind === "for") track.amount[i] = amount.time;
  track.perUnit[i] = perUnit;
  track.least[i] = capacity.fastest;
  track.rep[i] = Number.isFinite(capacity.unbroken)
    ? Math.min(perUnit, 2 * STEP_WITHOUT_REPS)
    : STEP_WITHOUT_REPS;
  track.kappa[i] = capacity.kappa;
  track.reach[i] = capacity.reach;
  track.wall[i] = capacity.possible && !isOverOneSet(item, capacity.unbroken) ? 0 : 1;
  track.score[i] = counted ? (amount.amount > 0 ? item.scores / amount.amount : 0) : item.scores;
  track.counted[i] = 1;
  if (item.deadline) {
    track.deadline[i] = item.deadline.clock;
    track.ends[i] = item.deadline.onMiss === "part-ends" ? 1 : 0;
  }
  if (item.accumulates) {
    track.group[i] = item.accumulates.group;
    track.groupTotal[i] = item.accumulates.total;
    track.adds[i] = 1;
    // What stands between two visits of a group belongs to it: once the total is done it is skipped too.
    const before = track.items.findLastIndex((other, j) => j < i && inGroup(other, item));
    for (let j = before === -1 ? i : before + 1; j < i; j += 1) {
      track.group[j] = item.accumulates.group;
      track.groupTotal[j] = item.accumulates.total;
    }
  }
}

/** Whether more is asked for without a break than a good day makes possible. */
const isOverOneSet = ({ amount, unbroken }: CourseEffort, best: number): boolean =>
  unbroken && amount.kind === "counted" && amount.amount > best * PACING_FIXED.overOneSet.value;

const inGroup = (item: CourseItem, of: CourseEffort): boolean =>
  item.kind === "effort" && item.accumulates?.group === of.accumulates?.group;

function kindOf(item: CourseEffort): number {
  if (item.unit === "seconds") return HOLD;
  return item.amount.kind === "counted" ? COUNTED : item.amount.kind === "for" ? WINDOW : UNTIL;
}

type Mutable = Omit<Track, "tasks" | "sections">;

function emptyTrack(
  items: readonly CourseItem[],
  pauses: readonly { readonly from: number; readonly to: number }[],
): Mutable {
  const n = items.length;
  const zeros = (): Float64Array => new Float64Array(n);
  const forever = (): Float64Array => new Float64Array(n).fill(Number.POSITIVE_INFINITY);
  return {
    items,
    length: n,
    kind: new Uint8Array(n),
    task: new Int32Array(n).fill(-1),
    round: new Int32Array(n),
    section: new Int32Array(n),
    amount: zeros(),
    perUnit: zeros(),
    least: zeros(),
    most: forever(),
    rep: zeros(),
    kappa: zeros(),
    reach: zeros(),
    transition: zeros(),
    time: zeros(),
    deadline: forever(),
    ends: new Uint8Array(n),
    score: zeros(),
    counted: new Uint8Array(n).fill(1),
    wall: new Uint8Array(n),
    group: new Int32Array(n).fill(-1),
    groupTotal: zeros(),
    adds: new Uint8Array(n),
    needBy: forever(),
    workAfter: zeros(),
    transitionsAfter: zeros(),
    pauses: Float64Array.from(pauses.flatMap(({ from, to }) => [from, to])),
    fixed: zeros(),
    given: [],
  };
}

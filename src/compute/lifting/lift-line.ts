import type { Course, CourseEffort } from "../../models/course.ts";
import type { Movement } from "../../models/movement.ts";
import { type Seconds, seconds } from "../../models/quantity.ts";
import { LIFTING_FIXED } from "./fixed-constants.ts";

type LiftPiece = { readonly movement: Movement; readonly reps: number };

/** One thing lifted for load: a movement for one or more reps, or a complex done without putting the bar down. */
export type LiftLine = {
  readonly pieces: readonly [LiftPiece, ...LiftPiece[]];
  /** Attempts the rules allow at it. */
  readonly attempts?: number;
};

/** The lines of a part that are lifted for load, in order. The same line several times is so many attempts at one lift. */
export function liftsOf(course: Course): readonly LiftLine[] {
  const lines = linesOf(
    course.items.filter((item): item is CourseEffort => item.kind === "effort" && item.lift !== undefined),
  );
  const names = [...new Set(lines.map(sayLine))];
  return names.flatMap((name) => {
    const same = lines.filter((line) => sayLine(line) === name);
    const [first] = same;
    if (!first || same.length === 1) return first ?? [];
    return { ...first, attempts: same.reduce((sum, { attempts = 1 }) => sum + attempts, 0) };
  });
}

/** A stretch of the clock of the part in which a lift may be attempted. */
type LiftWindow = {
  readonly opens: Seconds;
  /** Absent where the work, not the clock, ends it. */
  readonly closes?: Seconds;
  /** Clock at which the bar is reached, where other work of the window comes first. */
  readonly reached?: Seconds;
  /** Whether nothing but rest follows the lift in it. */
  readonly restAfter: boolean;
  /** Most attempts in it. */
  readonly attempts: number;
};

/** A lift at a load of the athlete's choice that has windows of its own, in order. */
export type WindowedLift = { readonly line: LiftLine; readonly windows: readonly LiftWindow[] };

/**
 * The lifts of a part that come back: in every interval, round or window of the clock. Each time a lift comes up it is one
 * attempt, unless the line allows several; where it comes up again and again in one window, as many as fit. Empty where no lift
 * comes back and none has a window of its own; then the whole part is the window.
 *
 * @param reached clock of the part at which the work before an item of the course is done, where that is known
 */
export function windowedLiftsOf(
  course: Course,
  reached: (index: number) => Seconds | undefined = () => undefined,
): readonly WindowedLift[] {
  const visits = visitsOf(course, reached);
  const lifts = new Map<string, { line: LiftLine; windows: LiftWindow[] }>();
  for (const { line, window } of visits) {
    const name = sayLine(line);
    const known = lifts.get(name) ?? { line, windows: [] };
    lifts.set(name, known);
    const last = known.windows.at(-1);
    if (last && last.opens === window.opens && last.closes === window.closes) {
      known.windows[known.windows.length - 1] = { ...last, attempts: last.attempts + window.attempts };
    } else known.windows.push(window);
  }
  const found = [...lifts.values()];
  const whole = (window: LiftWindow | undefined): boolean =>
    window?.opens === 0 && window.reached === undefined && (window.closes ?? course.ends) === course.ends;
  return found.every(({ windows }) => windows.length === 1 && whole(windows[0])) ? [] : found;
}

type Visit = { readonly line: LiftLine; readonly window: LiftWindow };

/** Seconds a lift is taken to last where only that says when the next window opens. Judgement. */
const ONE_LIFT = LIFTING_FIXED.oneLift.value;

/** Every time a lift of free load comes up, with the window it comes up in. */
function visitsOf(course: Course, reached: (index: number) => Seconds | undefined): readonly Visit[] {
  const visits: Visit[] = [];
  let opens = 0;
  let clock = 0;
  let alone = true;
  let done = 0;
  for (const [index, item] of course.items.entries()) {
    if (item.kind === "rest") {
      if (item.rest.kind === "until") clock = item.rest.clock;
      else if (item.rest.kind !== "as-long-as-work") clock += item.rest.time;
      opens = clock;
      alone = true;
      continue;
    }
    if (!isLift(item)) {
      alone = false;
      continue;
    }
    if (item.line === done) continue;
    done = item.line;
    const [line] = linesOf(course.items.filter((other): other is CourseEffort => isVisit(other, item)));
    if (!line) continue;
    const bar = alone ? undefined : reached(index);
    const closes = item.deadline?.clock ?? restUntil(course, index) ?? course.ends;
    visits.push({
      line,
      window: {
        opens: seconds(opens),
        ...(closes !== undefined && { closes }),
        ...(bar !== undefined && { reached: bar }),
        restAfter: restsAfter(course, index),
        attempts: line.attempts ?? 1,
      },
    });
    clock += ONE_LIFT;
  }
  return visits;
}

/** Whether a course holds nothing but lifts at a load of the athlete's choice, and rests. */
export const isOnlyLifts = ({ items }: Course): boolean =>
  items.every((item) => item.kind === "rest" || isLift(item));

const isLift = (item: Course["items"][number]): item is CourseEffort =>
  item.kind === "effort" &&
  (item.lift !== undefined || (item.load?.athletesChoice === true && item.movement.loading?.lift === true));

const isVisit = (item: Course["items"][number], of: CourseEffort): boolean =>
  isLift(item) && item.line === of.line;

/** Whether the next after an item, but for lifts, is a rest, or the end. */
const restsAfter = ({ items }: Course, index: number): boolean =>
  items.slice(index + 1).find((item): boolean => !isLift(item))?.kind !== "effort";

/** The clock up to which the rest right behind an item lasts. */
function restUntil({ items }: Course, index: number): Seconds | undefined {
  const next = items.slice(index + 1).find((item) => !(item.kind === "effort" && isLift(item)));
  return next?.kind === "rest" && next.rest.kind === "until" ? next.rest.clock : undefined;
}

function linesOf(efforts: readonly CourseEffort[]): readonly LiftLine[] {
  const byLine = new Map<number, CourseEffort[]>();
  for (const effort of efforts) byLine.set(effort.line, [...(byLine.get(effort.line) ?? []), effort]);
  return [...byLine.values()].flatMap((line) => {
    const [first, ...rest] = line.map((effort) => ({
      movement: effort.movement,
      reps: effort.amount.kind === "counted" ? effort.amount.amount : 1,
    }));
    const attempts = line[0]?.lift?.attempts;
    return first ? [{ pieces: [first, ...rest] as const, ...(attempts !== undefined && { attempts }) }] : [];
  });
}

/** The lift as read aloud: `clean and jerk`, or `5 hang cleans + 3 front squats + 1 jerk`. */
export function sayLine({ pieces }: LiftLine): string {
  const [first, ...rest] = pieces;
  if (rest.length === 0) return first.movement.name;
  const single = pieces.every(({ reps }) => reps === 1);
  return pieces
    .map(({ movement, reps }) =>
      single ? movement.name : `${reps} ${reps === 1 ? movement.name : movement.plural}`,
    )
    .join(" + ");
}

/** Reps of one attempt; a complex counts as one. */
export const repsOf = ({ pieces }: LiftLine): number => (pieces.length === 1 ? pieces[0].reps : 1);

/** Reps of one attempt one by one, over all movements of a complex. */
export const allRepsOf = ({ pieces }: LiftLine): number => pieces.reduce((sum, { reps }) => sum + reps, 0);

import { type CourseMark, type DayPacing, type DayRow, marksOf } from "./course-marks.ts";
import type { PartState } from "./day-state.ts";

/** A mark with the clock at which somebody tapped there, where it is known. */
export type PassedMark = CourseMark & { readonly done?: number };

/** Where the work stands. Clocks of the part in seconds. */
export type CourseNow = {
  readonly clock: number;
  /** Marks up to the last tapped one; those nobody tapped at have no clock. */
  readonly passed: readonly PassedMark[];
  readonly next?: CourseMark;
  /** Seconds behind the plan at the last mark, below nought ahead; absent before the first tap. */
  readonly behind?: number;
  /** Seconds behind that are sure already, since the next mark is due and not tapped. */
  readonly overdue: number;
  /** What is at hand by the plan, moved along with the last tap: the row, and the set of it from 0. */
  readonly row?: DayRow;
  readonly set: number;
  /** A threshold passed at the last mark. */
  readonly threshold?: DayPacing["ifThen"][number];
  /** The next clock by which something must be done, else the part ends. */
  readonly gate?: NonNullable<DayPacing["gates"]>[number];
  readonly isOver: boolean;
};

/** Seconds of the part on the clock: after the end nothing runs on. */
const clockOf = ({ go, ended }: PartState, at: number): number =>
  go === undefined ? 0 : Math.max(0, ((ended ?? at) - go) / 1000);

/**
 * The clock at which a part ends by itself: its cap, or the time it fills, also where the plan ends sooner at work out of reach; absent where
 * only the work ends it.
 */
export function timeLimit(
  { cap, ending, duration, whenStopped }: Pick<DayPacing, "cap" | "ending" | "duration" | "whenStopped">,
  format: string,
): number | undefined {
  if (cap !== undefined || format === "for-time") return cap;
  if (ending === "fills-the-time") return duration;
  return whenStopped?.left === undefined ? undefined : whenStopped.at + whenStopped.left;
}

/** The paced work of a part at a moment. */
export function courseNow(pacing: DayPacing, format: string, state: PartState, at: number): CourseNow {
  const marks = marksOf(pacing);
  const limit = timeLimit(pacing, format);
  const clock = Math.min(clockOf(state, at), limit ?? Infinity);
  const passed = passedMarks(marks, state);
  const last = passed.findLast(({ done }) => done !== undefined);
  const next = marks[passed.length];
  const byClock = format === "on-the-clock";
  const behind = last?.done === undefined ? undefined : last.done - last.planned;
  const shift = byClock ? 0 : Math.max(behind ?? 0, -(last?.planned ?? 0));
  const isOver = state.ended !== undefined || (limit !== undefined && clock >= limit);
  const found = isOver ? undefined : rowAt(pacing, clock - shift, byClock ? undefined : next, last);
  const threshold = last && thresholdAt(pacing, last);
  const gate = pacing.gates?.find((one) => one.clock > clock);
  return {
    clock,
    passed,
    ...(next !== undefined && { next }),
    ...(behind !== undefined && { behind }),
    overdue: next === undefined || isOver ? 0 : Math.max(0, clock - next.planned),
    ...(found !== undefined && { row: found.row }),
    set: found?.set ?? 0,
    ...(threshold !== undefined && { threshold }),
    ...(gate !== undefined && { gate }),
    isOver,
  };
}

/** Marks with the clocks of their taps, up to the last one tapped. */
function passedMarks(marks: readonly CourseMark[], { go, passes }: PartState): readonly PassedMark[] {
  if (go === undefined) return [];
  const clocks = new Map(passes.map(({ row, at }) => [row, (at - go) / 1000]));
  const last = marks.findLastIndex(({ row }) => clocks.has(row));
  return marks.slice(0, last + 1).map((mark) => {
    const done = clocks.get(mark.row);
    return done === undefined ? mark : { ...mark, done };
  });
}

/** The row and the set of it by the clock of the plan, never past the next mark. */
function rowAt(
  { rows }: DayPacing,
  planned: number,
  next: CourseMark | undefined,
  last: CourseMark | undefined,
): { readonly row: DayRow; readonly set: number } | undefined {
  const open = rows.filter(({ index }) => index > (last?.row ?? -1) || next === undefined);
  const within = next === undefined ? rows : open.filter(({ index }) => index <= next.row);
  const row = within.find(({ end }) => planned < end) ?? within.at(-1);
  if (row === undefined) return undefined;
  return { row, set: setAt(row, planned) };
}

function setAt({ sets, start, transition, secondsPerUnit = 0 }: DayRow, planned: number): number {
  let end = start + transition;
  for (const [index, { amount, restAfter }] of sets.entries()) {
    end += amount * secondsPerUnit + restAfter;
    if (planned < end) return index;
  }
  return Math.max(0, sets.length - 1);
}

function thresholdAt({ ifThen }: DayPacing, { row, done }: PassedMark): CourseNow["threshold"] {
  if (done === undefined) return undefined;
  return ifThen.find(
    ({ row: at, when, clock }) =>
      at === row && ((when === "later-than" && done > clock) || (when === "earlier-than" && done < clock)),
  );
}

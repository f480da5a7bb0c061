import { marksOf } from "./course-marks.ts";
import { timeLimit } from "./course-now.ts";
import type { DayPart, DayPlan } from "./day-plan.ts";
import { type DayState, type PartState, partState } from "./day-state.ts";

/** A part with its times on the day. Moments in milliseconds since 1970, undefined while they are not known. */
export type PartTimes = {
  readonly part: DayPart;
  readonly state: PartState;
  /** When its clock began, by a tap or because the workout's clock says so. */
  readonly go?: number;
  /** When it may begin at the soonest, where a tap begins it. */
  readonly opens?: number;
  /** When it was over. */
  readonly ended?: number;
};

const SECOND = 1000;

/**
 * The parts with their times at a moment. A part that stands on the clock of the workout, or follows another after a fixed
 * rest, begins by itself; one whose rest is only a least one begins with a tap. A part is over when somebody says so, when its
 * last mark is tapped, or when its time is up.
 */
export function partTimes(plan: DayPlan, state: DayState, at: number): readonly PartTimes[] {
  const times: PartTimes[] = [];
  let workout: number | undefined;
  for (const part of plan.parts) {
    const own = partState(state, part.name);
    const opens = opensAt(part, times, workout);
    const byItself = part.start.restAtLeast === undefined && times.length > 0 ? opens : undefined;
    const begun = own.go ?? (byItself !== undefined && byItself <= at ? byItself : undefined);
    workout ??= begun;
    const withGo: PartState = begun === undefined ? own : { ...own, go: begun };
    const ended = begun === undefined ? undefined : endOf(part, withGo, at, workout, nextClock(plan, part));
    times.push({
      part,
      state: ended === undefined ? withGo : { ...withGo, ended },
      ...(begun !== undefined && { go: begun }),
      ...(opens !== undefined && { opens }),
      ...(ended !== undefined && { ended }),
    });
  }
  return times;
}

function opensAt(
  { start }: DayPart,
  before: readonly PartTimes[],
  workout: number | undefined,
): number | undefined {
  if (start.kind === "clock") return workout === undefined ? undefined : workout + start.clock * SECOND;
  const ended = before.find(({ part }) => part.name === start.after)?.ended;
  return ended === undefined ? undefined : ended + (start.restAtLeast ?? start.rest ?? 0) * SECOND;
}

/** The clock of the workout at which the next part begins whatever this one does, seconds; infinite where none does. */
function nextClock({ parts }: DayPlan, part: DayPart): number {
  const next = parts.slice(parts.indexOf(part) + 1).find(({ start }) => start.kind === "clock");
  return next?.start.clock ?? Infinity;
}

function endOf(
  part: DayPart,
  state: PartState,
  at: number,
  workout: number | undefined,
  next: number,
): number | undefined {
  const { go = 0, passes, ended } = state;
  if (ended !== undefined) return ended;
  const limit = part.pacing && timeLimit(part.pacing, part.format);
  const own = limit === undefined ? closesAt(part, go, workout) : go + limit * SECOND;
  const up = Math.min(own ?? Infinity, (workout ?? Infinity) + next * SECOND);
  if (part.pacing?.ending === "finishes") {
    const last = marksOf(part.pacing).at(-1);
    const tapped = passes.findLast(({ row }) => row === last?.row);
    if (tapped) return tapped.at;
  }
  return up <= at ? up : undefined;
}

/** When the window of a part that is only lifted closes: at its own clock, or so long after it truly opened. */
function closesAt({ lifting, pacing }: DayPart, go: number, workout: number | undefined): number | undefined {
  const { opens = 0, closes, untilClock = false } = lifting?.window ?? {};
  if (pacing !== undefined || closes === undefined || workout === undefined) return undefined;
  return untilClock ? workout + closes * SECOND : go + (closes - opens) * SECOND;
}

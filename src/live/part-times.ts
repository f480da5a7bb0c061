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
    const ended = begun === undefined ? undefined : endOf(part, withGo, at, workout);
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

function endOf(part: DayPart, state: PartState, at: number, workout: number | undefined): number | undefined {
  const { go = 0, passes, ended } = state;
  if (ended !== undefined) return ended;
  const limit = part.pacing && timeLimit(part.pacing, part.format);
  const up = limit === undefined ? closesAt(part, workout) : go + limit * SECOND;
  if (part.pacing?.ending === "finishes") {
    const last = marksOf(part.pacing).at(-1);
    const tapped = passes.findLast(({ row }) => row === last?.row);
    if (tapped) return tapped.at;
  }
  return up !== undefined && up <= at ? up : undefined;
}

/** When the window of a part that is only lifted closes. */
export const closesAt = ({ lifting, pacing }: DayPart, workout: number | undefined): number | undefined =>
  pacing !== undefined || lifting?.window.closes === undefined || workout === undefined
    ? undefined
    : workout + lifting.window.closes * SECOND;

import type { Drive } from "./drive.ts";
import type { RunState } from "./run.ts";

/** The finish is reached this near its beginning; sustainable seconds or seconds. */
const NOTHING = 1e-9;

const hasFixedWork = (drive: Drive): boolean => drive.wholeWork < Number.POSITIVE_INFINITY;

/** Whether the finish of a drive has begun: by the work done where that is fixed, else by the clock. */
export const isFinish = (drive: Drive, state: RunState): boolean =>
  hasFixedWork(drive)
    ? state.worked >= drive.finishFrom * drive.wholeWork - NOTHING
    : state.clock >= drive.finishFrom * drive.horizon - NOTHING;

/** Sustainable seconds until the finish begins; infinite when it has, or when the clock says when. */
export function workToFinish(drive: Drive, state: RunState): number {
  const left = drive.finishFrom * drive.wholeWork - state.worked;
  return hasFixedWork(drive) && left > NOTHING ? left : Number.POSITIVE_INFINITY;
}

/** Seconds until the finish begins, where the clock says when; else infinite. */
export function timeToFinish(drive: Drive, state: RunState): number {
  const left = drive.finishFrom * drive.horizon - state.clock;
  return !hasFixedWork(drive) && left > NOTHING ? left : Number.POSITIVE_INFINITY;
}

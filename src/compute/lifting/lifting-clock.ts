import type { AttemptConstants } from "./attempt-constants.ts";
import type { AttemptWindow } from "./attempt-times.ts";

export type ClockInput = {
  /** Seconds from opening to closing of the window; absent where no clock runs. */
  readonly length?: number;
  readonly reps: number;
  /** Attempts the rules or the coach allow; absent for as many as fit. */
  readonly attempts?: number;
  readonly smallestRest?: number;
  /** Seconds before the first attempt can start. */
  readonly earliest: number;
  /** Seconds from the opening until there is breath enough for the first. */
  readonly breath: number;
  /** Whether a lift begun before the end counts. */
  readonly lateLift: boolean;
};

/** Seconds of an attempt of so many reps. */
export const liftSeconds = (reps: number, constants: AttemptConstants): number =>
  constants.liftSeconds + constants.repSeconds * (reps - 1);

/**
 * When attempts may be made in a window, or one after the other with a full rest where no clock runs. Undefined when not even
 * one attempt fits.
 */
export function attemptWindow(input: ClockInput, constants: AttemptConstants): AttemptWindow | undefined {
  const lift = liftSeconds(input.reps, constants);
  const smallest = input.smallestRest ?? constants.smallestRest;
  const attempts = input.attempts ?? constants.mostAttempts;
  const { length, earliest, breath } = input;
  if (length === undefined) {
    const gap = lift + Math.max(smallest, constants.fullRest);
    return {
      earliest: 0,
      breath,
      lastStart: breath + (attempts - 1) * gap + gap,
      gap,
      longestGap: gap,
      lift,
      attempts,
    };
  }
  const lastStart = lastStartSeconds(length, input, constants);
  if (lastStart < earliest) return undefined;
  const longestGap = lift + Math.max(smallest, constants.longestRest);
  return { earliest, breath, lastStart, gap: lift + smallest, longestGap, lift, attempts };
}

/** Last second, counted from the opening, at which an attempt of a window of this length may start. */
export const lastStartSeconds = (
  length: number,
  { reps, lateLift }: Pick<ClockInput, "reps" | "lateLift">,
  constants: AttemptConstants,
): number => length - constants.lateMargin - (lateLift ? 0 : liftSeconds(reps, constants));

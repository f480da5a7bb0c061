import type { AttemptConstants } from "./attempt-constants.ts";

/** When attempts may start, in steps of `step` seconds from the opening of the window. */
export type LiftingClock = {
  readonly step: number;
  /** Seconds of one attempt. */
  readonly lift: number;
  readonly firsts: readonly number[];
  readonly gaps: readonly number[];
  readonly lastStart: number;
  readonly attempts: number;
};

export type ClockInput = {
  /** Seconds from opening to closing of the window; absent where no clock runs. */
  readonly length?: number;
  readonly reps: number;
  /** Attempts the rules or the coach allow; absent for as many as fit. */
  readonly attempts?: number;
  readonly smallestRest?: number;
  /** Seconds before the first attempt can start. */
  readonly earliest: number;
  /** Whether the first attempt may have to wait: for strength after other work, or for plates. */
  readonly mayWait: boolean;
  /** Whether a lift begun before the end counts. */
  readonly lateLift: boolean;
  /** Seconds of a step, where lifts that share a window must agree on it. */
  readonly step?: number;
};

/** Aimed-for number of steps in a window. */
const STEPS = 24;

/** Seconds of an attempt of so many reps. */
export const liftSeconds = (reps: number, constants: AttemptConstants): number =>
  constants.liftSeconds + constants.repSeconds * (reps - 1);

/**
 * The moments at which attempts may start. A window is cut into about 24 steps of whole multiples of 5 s; the first
 * attempt may be put off a few steps where rest or plates need it, and between attempts lie the smallest rest and a few longer
 * ones. Without a clock attempts follow one another with a full rest. Undefined when not even one attempt fits.
 */
export function liftingClock(input: ClockInput, constants: AttemptConstants): LiftingClock | undefined {
  const lift = liftSeconds(input.reps, constants);
  const smallest = input.smallestRest ?? constants.smallestRest;
  const attempts = input.attempts ?? constants.mostAttempts;
  if (input.length === undefined) {
    const rest = Math.max(smallest, constants.fullRest);
    return { step: lift + rest, lift, firsts: [0], gaps: [1], lastStart: attempts - 1, attempts };
  }
  const last = lastStartSeconds(input.length, input, constants);
  if (last < input.earliest) return undefined;
  const step = input.step ?? stepOf(last);
  // A short window is not lost to rounding up to a step.
  const first = Math.min(Math.ceil(input.earliest / step), Math.floor(last / step));
  const gap = Math.ceil((lift + smallest) / step);
  return {
    step,
    lift,
    firsts: input.mayWait ? [0, 2, 4, 6].map((wait) => first + wait) : [first],
    gaps: [0, 1, 3, 6].map((more) => gap + more),
    lastStart: Math.floor(last / step),
    attempts,
  };
}

/** Seconds of a step in a window in which attempts may start for so long. */
const stepOf = (last: number): number => Math.max(5, Math.ceil(last / STEPS / 5) * 5);

/** Last second, counted from the opening, at which an attempt of a window of this length may start. */
export const lastStartSeconds = (
  length: number,
  { reps, lateLift }: Pick<ClockInput, "reps" | "lateLift">,
  constants: AttemptConstants,
): number => length - constants.lateMargin - (lateLift ? 0 : liftSeconds(reps, constants));

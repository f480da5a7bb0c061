import type { AttemptConstants } from "./attempt-constants.ts";

/** When attempts may be made. Seconds; moments count from the opening of the window. */
export type AttemptWindow = {
  /** Earliest start of the first attempt: the way to the bar, plates. */
  readonly earliest: number;
  /** When there is breath enough for the first; it goes sooner where that would cost one of the last attempts. */
  readonly breath: number;
  /** Latest start of an attempt. */
  readonly lastStart: number;
  /** Least and longest time from one start to the next. */
  readonly gap: number;
  readonly longestGap: number;
  /** Seconds of one attempt. */
  readonly lift: number;
  /** Most attempts. */
  readonly attempts: number;
};

const HAIR = 1e-6;
const ROUND = 5;
const roundUp = (time: number): number => Math.max(0, Math.ceil(time / ROUND - HAIR) * ROUND);
/** Starts are told to five seconds; what lies a hair under one is that one. */
export const roundDown = (time: number): number => Math.floor(time / ROUND + HAIR) * ROUND;

/** Attempts that fit from a start on; none or fewer where it lies behind the last one. */
const fitting = ({ lastStart, gap }: AttemptWindow, from: number): number =>
  Math.floor((lastStart - from) / roundUp(gap) + HAIR) + 1;

/**
 * Start of the first attempt: once there is breath, but soon enough for the attempts that are not given up for it. To five
 * seconds, where the window is not too short for that.
 */
export function firstStart(window: AttemptWindow, { breathKeeps }: AttemptConstants): number {
  const { earliest, breath, lastStart, gap, attempts } = window;
  const soonest = Math.min(roundUp(earliest), Math.max(earliest, roundDown(lastStart)));
  const kept = Math.max(1, Math.min(breathKeeps, attempts, fitting(window, soonest)));
  const latest = roundDown(lastStart - (kept - 1) * roundUp(gap));
  return Math.max(soonest, Math.min(roundUp(breath), latest));
}

/**
 * The numbers of attempts worth comparing: all that fit, and one or two fewer with more rest between, down to three. All
 * where fewer would not rest longer.
 */
export function attemptCounts(window: AttemptWindow, first: number): readonly number[] {
  const most = Math.max(1, Math.min(window.attempts, fitting(window, first)));
  const least = window.longestGap > window.gap ? Math.min(most, Math.max(3, most - 2)) : most;
  return Array.from({ length: most - least + 1 }, (_, at) => most - at);
}

/**
 * Starts of so many attempts: from the first to the end of the window, the rests between longer and longer because the
 * heaviest loads come last; none shorter than the least or longer than the longest.
 */
export function attemptStarts(
  window: AttemptWindow,
  first: number,
  attempts: number,
  { restGrowth }: AttemptConstants,
): readonly number[] {
  const { lastStart } = window;
  const gap = roundUp(window.gap);
  const longestGap = Math.max(gap, roundDown(window.longestGap));
  const between = attempts - 1;
  const even = between === 0 ? 0 : Math.min(longestGap, (lastStart - first) / between);
  const growth = Math.max(0, Math.min(restGrowth * even, 2 * (even - gap), 2 * (longestGap - even)));
  const starts = [first];
  let clock = first;
  for (let at = 0; at < between; at++) {
    clock += even + growth * (between === 1 ? 0 : at / (between - 1) - 0.5);
    starts.push(first + roundDown(clock - first));
  }
  return starts;
}

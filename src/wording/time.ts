import { NO_BREAK_SPACE, MINUS } from "./number.ts";

const twoDigits = (number: number): string => String(number).padStart(2, "0");

/**
 * A time as a clock shows it, to the whole second, ties up: minutes and seconds, from an hour on hours too.
 *
 * @example sayClock(425) // => "7:05"
 * @example sayClock(3850) // => "1:04:10"
 */
export function sayClock(seconds: number): string {
  const whole = Math.round(Math.abs(seconds));
  const minutes = Math.floor(whole / 60);
  const sign = seconds < 0 && whole > 0 ? MINUS : "";
  return minutes < 60
    ? `${sign}${minutes}:${twoDigits(whole % 60)}`
    : `${sign}${Math.floor(minutes / 60)}:${twoDigits(minutes % 60)}:${twoDigits(whole % 60)}`;
}

/**
 * How long something lasts: seconds below a minute and a half, as people say them, else as a clock.
 *
 * @example sayDuration(45) // => "45\u00a0s"
 * @example sayDuration(130) // => "2:10"
 */
export const sayDuration = (seconds: number): string =>
  Math.round(seconds) < 90 ? `${Math.round(seconds)}${NO_BREAK_SPACE}s` : sayClock(seconds);

/** How long something lasts, in minutes, ties up; never less than one. @example sayMinutes(660) // => "11\u00a0min" */
export const sayMinutes = (seconds: number): string =>
  `${Math.max(1, Math.round(seconds / 60))}${NO_BREAK_SPACE}min`;

/** Whole minutes before the start, as a countdown. @example sayCountdown(2400) // => "−40" */
export const sayCountdown = (secondsBefore: number): string => {
  const minutes = Math.round(secondsBefore / 60);
  return minutes === 0 ? "0" : `${MINUS}${minutes}`;
};

/** Below these lengths (seconds) the end of a range is told to this step (seconds): finer would claim too much. */
const RANGE_STEPS: readonly { readonly below: number; readonly step: number }[] = [
  { below: 20 * 60, step: 5 },
  { below: 60 * 60, step: 15 },
  { below: Number.POSITIVE_INFINITY, step: 60 },
];

/**
 * From the faster to the slower time, both rounded outwards (to 5 s below 20 minutes, 15 s below an hour, else a
 * minute): a rounded range never claims more than the range it came from.
 *
 * @example sayTimeRange(486.8, 540.3) // => "8:05–9:05"
 */
export function sayTimeRange(faster: number, slower: number): string {
  const step = stepOf(slower);
  return `${sayTimeFrom(faster, slower)}–${sayClock(Math.ceil(slower / step) * step)}`;
}

/** The faster end of such a range alone. @example sayTimeFrom(486.8, 540.3) // => "8:05" */
export function sayTimeFrom(faster: number, slower: number): string {
  const step = stepOf(slower);
  return sayClock(Math.floor(faster / step) * step);
}

const stepOf = (slower: number): number => RANGE_STEPS.find(({ below }) => slower < below)?.step ?? 60;

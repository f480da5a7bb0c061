import type { DayPart } from "./day-plan.ts";
import type { PartTimes } from "./part-times.ts";

/** The window of a part that is lifted, on the day. Moments in milliseconds since 1970. */
type DayWindowOfLifts = {
  readonly opens: number;
  readonly closes?: number;
  /** Seconds by which it opened later than planned; below nought sooner. */
  readonly late: number;
  /** Seconds to add to a clock from the true opening, so that it reads as the running clock shows it. */
  readonly shift: number;
};

const SECOND = 1000;

/** The window as it truly opens; undefined while nobody knows when that is. */
export function windowOf(times: readonly PartTimes[], part: DayPart): DayWindowOfLifts | undefined {
  const own = times.find((one) => one.part.name === part.name);
  const workout = times.find(({ go }) => go !== undefined)?.go;
  const opens = own?.go ?? own?.opens;
  if (opens === undefined || workout === undefined || !part.lifting) return undefined;
  const shift = (opens - workout) / SECOND;
  const { closes, untilClock = false } = part.lifting.window;
  const late = shift - part.lifting.window.opens;
  const ends = closes === undefined ? undefined : closes + (untilClock ? 0 : late);
  return { opens, late, shift, ...(ends !== undefined && { closes: workout + ends * SECOND }) };
}

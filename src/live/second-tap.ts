import type { DayEvent } from "./day-event.ts";
import { standing } from "./day-state.ts";

/** Two taps nearer together than this are one: nobody lifts or does a round in between. Seconds; judgement. */
export const SECOND_TAP = 3;

/**
 * Whether a tap comes so soon after the last one that a finger must have come down twice. Where the screen has changed in between, it would
 * stand for something nobody has done.
 */
export function isSecondTap(events: readonly DayEvent[], at: number): boolean {
  const last = standing(events).at(-1);
  return last !== undefined && at - last.at < 1000 * SECOND_TAP;
}

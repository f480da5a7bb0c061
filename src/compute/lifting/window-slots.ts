import type { AttemptConstants } from "./attempt-constants.ts";
import { liftSeconds } from "./lifting-clock.ts";
import { allRepsOf, type WindowedLift } from "./lift-line.ts";

/** A moment at which one attempt starts, in which window (counted from 0). Seconds of the part's clock. */
export type Moment = {
  readonly window: number;
  readonly clock: number;
  /** Seconds since the bar was reached after other work; infinite where nothing else is done. */
  readonly since: number;
};

/**
 * When the attempts of windows start: the first as soon as its window opens or the bar is reached, further ones after the
 * smallest rest, as many as the rules allow and the window holds. The end of a window leaves time for the lift itself.
 */
export function windowSlots(
  { line, windows }: WindowedLift,
  smallestRest: number | undefined,
  constants: AttemptConstants,
): readonly Moment[] {
  const lift = liftSeconds(allRepsOf(line), constants);
  const apart = lift + (smallestRest ?? constants.smallestRest);
  return windows.flatMap(({ opens, closes = Infinity, reached, attempts }, window) => {
    const ready = reached === undefined ? 0 : constants.pickUpSeconds;
    const first = Math.min((reached ?? opens) + ready, Math.max(opens, closes - lift));
    const fit = Number.isFinite(closes) ? 1 + Math.floor(Math.max(0, closes - lift - first) / apart) : 1;
    return Array.from({ length: Math.min(attempts, fit) }, (_, at) => ({
      window,
      clock: first + at * apart,
      since: reached === undefined ? Infinity : first + at * apart - reached,
    }));
  });
}

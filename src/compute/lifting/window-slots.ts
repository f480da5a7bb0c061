import type { AttemptConstants } from "./attempt-constants.ts";
import { roundDown } from "./attempt-times.ts";
import { liftSeconds } from "./lifting-clock.ts";
import { allRepsOf, type WindowedLift } from "./lift-line.ts";

/** A moment at which one attempt starts, in which window (counted from 0). Seconds of the part's clock. */
export type Moment = {
  readonly window: number;
  readonly clock: number;
  /** Seconds since the bar was reached after other work; infinite where nothing else is done. */
  readonly since: number;
};

/** What is waited for. Seconds. */
type Waits = {
  /** Least rest between two attempts of one window, where it is set. */
  readonly smallestRest?: number;
  /** From the end of other work to the first attempt, where the rest of the window is free. */
  readonly breath: number;
};

/**
 * When the attempts of windows start: the first as soon as its window opens; after other work once there is breath, where
 * nothing but rest follows, but with a third of the time that is left still to go; further ones after the smallest rest, as many
 * as the rules allow and the window holds. The end of a window leaves time for the lift itself.
 */
export function windowSlots(
  { line, windows }: WindowedLift,
  { smallestRest, breath }: Waits,
  constants: AttemptConstants,
): readonly Moment[] {
  const lift = liftSeconds(allRepsOf(line), constants);
  const apart = lift + (smallestRest ?? constants.smallestRest);
  return windows.flatMap(({ opens, closes = Infinity, reached, restAfter, attempts }, window) => {
    const left = closes - lift - (attempts - 1) * apart - (reached ?? opens);
    const share = constants.breathShareOfWindow * Math.max(0, left);
    const wait = restAfter && Number.isFinite(share) ? Math.min(breath, share) : 0;
    const ready = reached === undefined ? 0 : Math.max(constants.pickUpSeconds, roundDown(wait));
    const first = Math.min((reached ?? opens) + ready, Math.max(opens, closes - lift));
    const fit = Number.isFinite(closes) ? 1 + Math.floor(Math.max(0, closes - lift - first) / apart) : 1;
    return Array.from({ length: Math.min(attempts, fit) }, (_, at) => ({
      window,
      clock: first + at * apart,
      since: reached === undefined ? Infinity : first + at * apart - reached,
    }));
  });
}

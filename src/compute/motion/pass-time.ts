import type { Drive } from "./drive.ts";
import { refill } from "./reserve.ts";
import type { Rules } from "./rules.ts";
import type { RunState } from "./run.ts";
import type { Track } from "./track.ts";

/**
 * Lets time pass without counted work, at a cost of at most 1 per second: rests, transitions, holds. A pause of the clock in
 * which nobody works is added where it falls, as rest.
 */
export function passTime(
  track: Track,
  rules: Rules,
  drive: Drive,
  state: RunState,
  time: number,
  cost: number,
): void {
  let left = time;
  while (left > 0) {
    const step = Math.min(left, toNextPause(track, state));
    spend(rules, drive, state, step, cost);
    left -= step;
    if (left > 0) sitOutPause(track, rules, drive, state);
  }
}

/** Seconds of work until the next pause; infinite when none is left. */
export const toNextPause = (track: Track, state: RunState): number =>
  state.pause >= track.pauses.length
    ? Number.POSITIVE_INFINITY
    : Math.max(0, (track.pauses[state.pause] as number) - state.clock);

/** Rests from where the clock stands to the end of the next pause. */
export function sitOutPause(track: Track, rules: Rules, drive: Drive, state: RunState): void {
  const until = track.pauses[state.pause + 1] as number;
  state.pause += 2;
  spend(rules, drive, state, Math.max(0, Math.min(until, drive.horizon) - state.clock), 0);
}

function spend(rules: Rules, drive: Drive, state: RunState, time: number, cost: number): void {
  state.clock += time;
  if (cost < 1 && time > 0) refill(state, rules, rules.reserve * drive.reserveForm, time, cost);
}

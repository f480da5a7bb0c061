import { refill } from "./reserve.ts";
import type { Run, RunState } from "./run.ts";
import type { Track } from "./track.ts";

/**
 * Lets time pass without counted work, at a cost of at most 1 per second: rests, transitions, holds. A pause of the clock in
 * which nobody works is added where it falls, as rest.
 */
export function passTime(run: Run, time: number, cost: number): void {
  let left = time;
  while (left > 0) {
    const step = Math.min(left, toNextPause(run.track, run.state));
    spend(run, step, cost);
    left -= step;
    if (left > 0) sitOutPause(run);
  }
}

/** Seconds of work until the next pause; infinite when none is left. */
export const toNextPause = (track: Track, state: RunState): number =>
  state.pause >= track.pauses.length
    ? Number.POSITIVE_INFINITY
    : Math.max(0, (track.pauses[state.pause] as number) - state.clock);

/** Rests from where the clock stands to the end of the next pause, so many units of the stretch under way behind. */
export function sitOutPause(run: Run, done = 0): void {
  const { track, drive, state, log } = run;
  const until = track.pauses[state.pause + 1] as number;
  log.atPause[state.pause / 2] = done;
  state.pause += 2;
  spend(run, Math.max(0, Math.min(until, drive.horizon) - state.clock), 0);
}

function spend({ rules, drive, state }: Run, time: number, cost: number): void {
  state.clock += time;
  if (cost < 1 && time > 0) refill(state, rules, rules.reserve * drive.reserveForm, time, cost);
}

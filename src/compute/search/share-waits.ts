import type { Rules } from "../motion/rules.ts";
import type { RunLog } from "../motion/run.ts";
import { REST_FOR, type Track, UNTIL } from "../motion/track.ts";
import type { SetPlan } from "./set-plan.ts";

/** A wait is shared with so many stretches before it. */
const SHARED_WITH = 3;
/** Waiting shorter than this is left where it is, seconds. */
const NOTHING = 0.25;

/**
 * Moves what would be waited before a set beyond a few breaths to the stretches before it, as breath before their sets or as slower reps:
 * nobody stands before one movement and hurries through the others. Clocks between them move in the log, the end of all of it does not, and
 * nothing moves past a clock by which it must be done.
 *
 * @param sets how each stretch is broken, as far as the run went
 * @returns whether anything was moved
 */
export function shareWaits(
  track: Track,
  rules: Rules,
  log: RunLog,
  last: number,
  sets: readonly (SetPlan | undefined)[],
): boolean {
  if (track.pauses.length > 0) return false;
  let moved = false;
  for (let i = Math.min(last, track.length - 1); i > 0; i -= 1) {
    const plan = sets[i];
    if (!plan || plan.sizes.length > 1) continue;
    let surplus = plan.restFirst - rules.breathLongest;
    let beforeClock = Number.POSITIVE_INFINITY;
    for (let from = i - 1; surplus > NOTHING && from >= Math.max(0, i - SHARED_WITH); from -= 1) {
      beforeClock = Math.min(beforeClock, clockOf(track, from) - (log.ended[from] as number));
      const room = Math.min(surplus, beforeClock, roomIn(track, rules, log, from, sets[from]));
      if (Number.isNaN(room)) break;
      if (room <= NOTHING) continue;
      // Everything from the end of that stretch to the wait happens later by as much.
      for (let k = from; k < i; k += 1) {
        log.ended[k] = (log.ended[k] as number) + room;
        log.started[k + 1] = (log.started[k + 1] as number) + room;
        log.worksFrom[k + 1] = (log.worksFrom[k + 1] as number) + room;
      }
      surplus -= room;
      beforeClock -= room;
      moved = true;
    }
  }
  return moved;
}

/** The clock by which a stretch is over; infinite where there is none. */
const clockOf = (track: Track, i: number): number =>
  Math.min(
    track.deadline[i] as number,
    track.kind[i] === UNTIL ? (track.time[i] as number) : Number.POSITIVE_INFINITY,
  );

/** Seconds by which a stretch can take longer; none where a clock decides its end, not a number where the work is parted. */
function roomIn(track: Track, rules: Rules, log: RunLog, i: number, plan: SetPlan | undefined): number {
  if ((track.kind[i] as number) >= REST_FOR || track.section[i] !== track.section[i + 1]) return Number.NaN;
  if (!plan || Number.isFinite(track.deadline[i]) || (track.time[i] as number) > 0) return 0;
  const time = (log.ended[i] as number) - (log.worksFrom[i] as number);
  const most = track.most[i] as number;
  if (!Number.isFinite(most)) return rules.waitTakenOver * time;
  return Math.max(0, most * (track.amount[i] as number) - time);
}

import type { Rules } from "../motion/rules.ts";
import type { RunLog } from "../motion/run.ts";
import { REST_FOR, type Track, UNTIL } from "../motion/track.ts";
import type { SetPlan } from "./set-plan.ts";

/** What is too long for a stretch is shared with so many stretches before it, then after it. */
const SHARED_WITH = 3;
/** Waiting shorter than this is left where it is, seconds. */
const NOTHING = 0.25;

/**
 * Moves what would be waited before a set or between easy ones, beyond a few breaths, to the stretches around it, as breath before their sets
 * or as slower reps: nobody stands at one movement and hurries through the others. Clocks between them move in the log, the end of all of it
 * does not, and nothing moves past a clock by which it must be done.
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
  const room = (at: number): number => roomIn(track, rules, log, at, sets[at]);
  const move = (from: number, to: number, by: number): void => {
    shift(log, from, to, by);
    moved = true;
  };
  const end = Math.min(last, track.length - 1);
  for (let i = end; i > 0; i -= 1) {
    let surplus = surplusOf(track, rules, log, i, sets[i]);
    let beforeClock = Number.POSITIVE_INFINITY;
    for (let from = i - 1; surplus > NOTHING && from >= Math.max(0, i - SHARED_WITH); from -= 1) {
      beforeClock = Math.min(beforeClock, clockOf(track, from) - (log.ended[from] as number));
      const taken = Math.min(surplus, beforeClock, room(from));
      if (Number.isNaN(taken)) break;
      if (taken <= NOTHING) continue;
      move(from, i, taken);
      surplus -= taken;
      beforeClock -= taken;
    }
    // What the clock cuts off at the end has no time to give or to take.
    for (let to = i + 1; surplus > NOTHING && to < Math.min(end, i + SHARED_WITH + 1); to += 1) {
      const taken = Math.min(surplus, room(to));
      if (Number.isNaN(taken) || Number.isNaN(room(to - 1))) break;
      if (taken <= NOTHING) continue;
      move(i, to, -taken);
      surplus -= taken;
    }
  }
  return moved;
}

/** Everything from the end of one stretch to the first rep of a later one happens later by so many seconds. */
function shift(log: RunLog, from: number, to: number, by: number): void {
  for (let k = from; k < to; k += 1) {
    log.ended[k] = (log.ended[k] as number) + by;
    log.started[k + 1] = (log.started[k + 1] as number) + by;
    log.worksFrom[k + 1] = (log.worksFrom[k + 1] as number) + by;
  }
}

/** Seconds of a stretch that its sets do not need and nobody would take over them: stood before the only one, or between easy ones. */
function surplusOf(track: Track, rules: Rules, log: RunLog, i: number, plan: SetPlan | undefined): number {
  if (!plan) return 0;
  const stood = plan.sizes.length > 1 ? 0 : plan.restFirst - rules.breathLongest;
  const most = (track.most[i] as number) * (track.amount[i] as number);
  const time = (log.ended[i] as number) - (log.worksFrom[i] as number);
  return Math.max(stood, Number.isFinite(most) && plan.total > plan.leastTotal ? time - most : 0);
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

import type { Rules } from "../motion/rules.ts";
import type { Track } from "../motion/track.ts";
import type { RunLog } from "../motion/run.ts";
import { SEARCH_FIXED } from "./fixed-constants.ts";

/** The plan's margin is chosen for at most this spread: an athlete feels on the day when a guess was far off. */
const MOST_SPREAD_PLANNED_FOR = SEARCH_FIXED.spreadPlannedFor.value;
/** Share of what is not known of the athlete that they do not feel before it is too late. */
const NOT_FELT = SEARCH_FIXED.notFelt.value;

/**
 * Relative spread of the result from what is not known of each task: part of it is one doubt about the athlete, which every movement
 * shares, part each movement's own.
 */
function modelSpread(track: Track, rules: Rules, weights: ArrayLike<number>): number {
  const byMovement = new Map<string, number>();
  track.tasks.forEach((task, t) => {
    const id = task.movement.id;
    byMovement.set(id, (byMovement.get(id) ?? 0) + (weights[t] ?? 0) * task.capacity.error);
  });
  let together = 0;
  let apart = 0;
  for (const error of byMovement.values()) {
    together += error;
    apart += error ** 2;
  }
  return Math.sqrt(rules.sharedDoubt * together ** 2 + (1 - rules.sharedDoubt) * apart);
}

/** Shares of the work by task, as written (before anything is solved). */
function workShares(track: Track): Float64Array {
  const shares = new Float64Array(track.tasks.length);
  let all = 0;
  for (let i = 0; i < track.length; i += 1) {
    const task = track.task[i] as number;
    if (task < 0) continue;
    const amount = track.amount[i] as number;
    const time = track.time[i] as number;
    const open = Number.isFinite(time) && time > 0 ? Math.min(time, 600) : 60;
    const work = Number.isFinite(amount) ? amount * (track.perUnit[i] as number) : open;
    shares[task] = (shares[task] as number) + work;
    all += work;
  }
  return all > 0 ? shares.map((work) => work / all) : shares;
}

/** The spread a plan's margin is chosen for: form, and the part of what is not known that is not felt in time. */
export const spreadToPlanFor = (rules: Rules, model: number): number =>
  Math.min(MOST_SPREAD_PLANNED_FOR, Math.hypot(rules.formSpread, NOT_FELT * model));

/** The spread to plan a track for, before anything is solved. */
export const plannedSpread = (track: Track, rules: Rules): number =>
  spreadToPlanFor(rules, modelSpread(track, rules, workShares(track)));

/**
 * The spread of an athlete around what is believed: form and everything not known of the tasks, each in the share of the work done of it.
 * Not how far the result hangs on a task: at a gate that is all or nothing.
 */
export const athleteSpread = (track: Track, rules: Rules, log: Pick<RunLog, "done">): number =>
  Math.hypot(rules.formSpread, modelSpread(track, rules, doneShares(track, log)));

/** Shares of the work by task, as done in a run. */
function doneShares(track: Track, { done }: Pick<RunLog, "done">): Float64Array {
  const shares = new Float64Array(track.tasks.length);
  let all = 0;
  for (let i = 0; i < track.length; i += 1) {
    const task = track.task[i] as number;
    if (task < 0) continue;
    const work = (done[i] as number) * (track.perUnit[i] as number);
    shares[task] = (shares[task] as number) + work;
    all += work;
  }
  return all > 0 ? shares.map((work) => work / all) : shares;
}

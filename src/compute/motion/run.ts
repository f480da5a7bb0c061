import type { Drive } from "./drive.ts";
import { fullReserve } from "./reserve.ts";
import type { Rules } from "./rules.ts";
import type { Track } from "./track.ts";

/** Where a simulation stands. Changed in place while it runs. */
export type RunState = {
  /** What is left in both stores of the reserve, seconds of critical-rate work. */
  fast: number;
  slow: number;
  /** Clock of the part, seconds. */
  clock: number;
  /** Time so far that does not count for the score. */
  uncounted: number;
  /** Sustainable seconds done. */
  worked: number;
  /** Score units done. */
  score: number;
  /** Lowest share of the reserve seen. */
  least: number;
  /** Whether the athlete is slowing to get some of the reserve back, and whether that has happened before. */
  slowing: boolean;
  blown: boolean;
  /** Why it ended, or `no` while it goes on or when all work is done. */
  stopped: "no" | "horizon" | "deadline" | "wall";
  /** Stretch under way, or the last one. */
  at: number;
  workSinceRest: number;
  /** Group under way whose amounts add up to a total, and units done of it; -1 before the first. */
  group: number;
  groupDone: number;
  /** Index of the next pause's start in the track's pauses. */
  pause: number;
};

/** What happened at each stretch of a track. */
export type RunLog = {
  /** Clock when the stretch began, when its first rep began, and when it ended. */
  readonly started: Float64Array;
  readonly worksFrom: Float64Array;
  readonly ended: Float64Array;
  /** Units done. */
  readonly done: Float64Array;
  /** Seconds per unit at the first rep. */
  readonly opening: Float64Array;
  /** Share of the reserve at its start and end. */
  readonly before: Float64Array;
  readonly left: Float64Array;
  /** Score units, and sustainable seconds, done at its end. */
  readonly scored: Float64Array;
  readonly worked: Float64Array;
  /** Units of the stretch under way that are done when a pause of the clock begins, whole ones; by pause. */
  readonly atPause: Float64Array;
};

/** One run over a track: what is run, by whom and how, where it stands (changed in place), and what happened (filled in place). */
export type Run = {
  readonly track: Track;
  readonly rules: Rules;
  readonly drive: Drive;
  readonly state: RunState;
  readonly log: RunLog;
};

/** The state of a simulation that has not begun, with a full reserve of the size of the day. */
export function startState(rules: Rules, reserveForm = 1): RunState {
  const { fast, slow } = fullReserve(rules, rules.reserve * reserveForm);
  return {
    fast,
    slow,
    clock: 0,
    uncounted: 0,
    worked: 0,
    score: 0,
    least: 1,
    slowing: false,
    blown: false,
    stopped: "no",
    at: 0,
    workSinceRest: 0,
    group: -1,
    groupDone: 0,
    pause: 0,
  };
}

/** A log of its own that later runs leave alone. */
export const keepLog = (log: RunLog): RunLog => ({
  started: log.started.slice(),
  worksFrom: log.worksFrom.slice(),
  ended: log.ended.slice(),
  done: log.done.slice(),
  opening: log.opening.slice(),
  before: log.before.slice(),
  left: log.left.slice(),
  scored: log.scored.slice(),
  worked: log.worked.slice(),
  atPause: log.atPause.slice(),
});

/** An empty log for a track; made once and used again for every run. */
export function newLog(track: Track): RunLog {
  const column = (): Float64Array => new Float64Array(track.length);
  return {
    started: column(),
    worksFrom: column(),
    ended: column(),
    done: column(),
    opening: column(),
    before: column(),
    left: column(),
    scored: column(),
    worked: column(),
    atPause: new Float64Array(track.pauses.length / 2),
  };
}

import type { Bench, Followable } from "./attempt.ts";
import type { Drive } from "../motion/drive.ts";
import { startState, type RunLog, type RunState } from "../motion/run.ts";
import { simulate } from "../motion/simulate.ts";
import type { Track } from "../motion/track.ts";
import { SEARCH_FIXED } from "./fixed-constants.ts";

/**
 * Takes a run as the plan to follow: seconds per unit at the start and end of each stretch and the reserve expected there. What the
 * run did not reach goes on as the same task was done last.
 */
export function keepAsPlan(bench: Bench, log: RunLog, last: number): void {
  const { track, opening, closing, before, left, reached } = bench;
  const paceOf = new Float64Array(track.tasks.length);
  let share = 1;
  for (let i = 0; i < track.length; i += 1) {
    const task = track.task[i] as number;
    const done = i <= last ? (log.done[i] as number) : 0;
    if (i <= last) {
      // Who owes has nothing left to spend: a debt to be followed would turn paces around.
      before[i] = Math.max(0, log.before[i] as number);
      left[i] = Math.max(0, log.left[i] as number);
      share = left[i] as number;
    } else {
      before[i] = share;
      left[i] = share;
    }
    reached[i] = 1;
    if (task < 0) continue;
    if (done > 0) {
      const amount = track.amount[i] as number;
      reached[i] = Number.isFinite(amount) && amount > 0 ? Math.min(1, done / amount) : 1;
      const average = workTime(track, log, i) / done;
      const { least, most } = SEARCH_FIXED.planLikeAverage.value;
      const first = Math.min(most * average, Math.max(least * average, log.opening[i] as number));
      opening[i] = first;
      closing[i] = 2 * average - first;
      paceOf[task] = average;
    } else {
      const pace = (paceOf[task] as number) || Math.max(track.least[i] as number, track.perUnit[i] as number);
      opening[i] = pace;
      closing[i] = pace;
    }
  }
}

/** Seconds of work in a stretch, pauses of the clock left out. */
export function workTime(track: Track, log: RunLog, i: number): number {
  const from = log.worksFrom[i] as number;
  const to = log.ended[i] as number;
  let time = to - from;
  for (let p = 0; p < track.pauses.length; p += 2) {
    const begins = Math.max(from, track.pauses[p] as number);
    const ends = Math.min(to, track.pauses[p + 1] as number);
    if (ends > begins) time -= ends - begins;
  }
  return time;
}

/** A day the plan may meet: rate over the expected one, and the same of the size of the reserve. */
type DayForm = { readonly form: number; readonly reserveForm: number };

/** The day that is expected. */
export const EXPECTED_DAY: DayForm = { form: 1, reserveForm: 1 };

/** How an athlete follows the plan kept on a bench, on a day of a given form. */
const followOn = (bench: Bench, plan: Followable, day: DayForm, grain: number, feels: boolean): Drive => ({
  by: "pace",
  even: false,
  cost: bench.cost,
  lift: bench.lift,
  opening: bench.opening,
  closing: bench.closing,
  before: bench.before,
  left: bench.left,
  reached: bench.reached,
  feel: feels ? bench.rules.feel : 0,
  feelAtTheEnd: feels ? bench.rules.feelAtTheEnd : 0,
  form: day.form,
  reserveForm: day.reserveForm,
  mayOwe: false,
  finishFrom: plan.finishFrom,
  finishLift: 1,
  wholeWork: bench.wholeWork,
  horizon: bench.horizon,
  grain,
});

/** Runs the plan kept on a bench on a day of a given form; the run is in the day log. */
export function runDay(bench: Bench, plan: Followable, day: DayForm, grain: number, feels = true): RunState {
  const { track, rules, start, dayLog: log } = bench;
  const full = startState(rules);
  const share = (start.fast + start.slow) / (full.fast + full.slow);
  const state: RunState = {
    ...start,
    fast: start.fast * day.reserveForm,
    slow: start.slow * day.reserveForm,
    least: share,
  };
  const drive = followOn(bench, plan, day, grain, feels);
  simulate({ track, rules, drive, state, log }, 0, track.length);
  return state;
}

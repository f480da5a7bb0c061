import type { Drive } from "./drive.ts";
import { isFinish } from "./finish.ts";
import type { Rules } from "./rules.ts";
import type { Run, RunState } from "./run.ts";
import type { Track } from "./track.ts";
import { UNKNOWN, type WorkStep } from "./work-step.ts";

/**
 * Sets the rate of a step and what a second of it costs: as the drive wants it, but no slower than an easy set's own rhythm, no
 * faster than the fastest cycle, and no dearer than an athlete who has emptied the reserve can afford.
 */
export function setRate(run: Run, step: WorkStep): void {
  wantRate(run, step);
  const { track, rules, state } = run;
  const full = step.perUnit * step.stretched;
  // Nobody stands before a set that is easy: it is done at its own rhythm as far as there is breath for it.
  const slowest = (breathLeft(rules, step.used) * full) / (track.most[step.i] as number);
  if (step.rate < slowest && !state.blown) {
    step.rate = slowest;
    step.cost = UNKNOWN;
  }
  const fastest = full / (track.least[step.i] as number);
  if (step.rate > fastest || step.cost < 0) {
    step.rate = Math.min(step.rate, fastest);
    step.cost = step.rate ** step.kappa * step.dearer;
  }
  const most = dearestOf(rules, state);
  if (step.cost > most) {
    step.rate = (most / step.dearer) ** (1 / step.kappa);
    step.cost = most;
  }
}

/** The rate the drive wants, with its cost where that is known without raising the rate to its power again. */
function wantRate({ track, drive, state }: Run, step: WorkStep): void {
  const { i, kappa, dearer, stretched, perUnit } = step;
  const byEffort = drive.by === "effort";
  const fixed = byEffort ? (track.fixed[i] as number) : 0;
  step.cost = UNKNOWN;
  if (fixed > 0) {
    step.rate = (perUnit * stretched) / fixed;
  } else if ((track.needBy[i] as number) < Number.POSITIVE_INFINITY) {
    const needed = neededRate(track, state, i, step.all - step.done);
    step.rate = Math.max((1 / dearer) ** (1 / kappa), needed * stretched);
  } else if (byEffort) {
    const lift = (drive.lift[i] as number) * (isFinish(drive, state) ? drive.finishLift : 1);
    const aimed = drive.cost[i] as number;
    step.rate = (aimed / (drive.even ? 1 : dearer)) ** (1 / kappa) * lift;
    if (lift === 1) step.cost = aimed * (drive.even ? dearer : 1);
  } else {
    step.rate = (perUnit * stretched) / plannedPace(drive, state, step);
  }
}

/** Seconds per unit by the plan, changed by what the athlete feels of the reserve against it. */
function plannedPace(drive: Drive, state: RunState, step: WorkStep): number {
  const { i } = step;
  const through = throughOf(drive, state, step);
  const opening = drive.opening[i] as number;
  const pace = opening + through * ((drive.closing[i] as number) - opening);
  const feel = isFinish(drive, state) ? drive.feelAtTheEnd : drive.feel;
  if (feel === 0) return pace;
  const before = drive.before[i] as number;
  const expected = before + through * ((drive.left[i] as number) - before);
  return pace * (1 - feel * ((state.fast + state.slow) / step.whole - expected));
}

/** Share of the planned stretch behind the athlete in the middle of the step; by the clock where the amount has no end. */
const throughOf = (drive: Drive, state: RunState, { i, all, done, piece, begun, limit }: WorkStep): number =>
  all < Number.POSITIVE_INFINITY
    ? Math.min(1, (done + piece / 2) / (all * (drive.reached[i] as number)))
    : (state.clock - begun) / (limit - begun);

/** The rate at which the rest of an interval's work is just done in time; infinite when there is none. */
function neededRate(track: Track, state: RunState, i: number, left: number): number {
  const time = (track.needBy[i] as number) - state.clock - (track.transitionsAfter[i] as number);
  return time > 0 ? (left + (track.workAfter[i] as number)) / time : Number.POSITIVE_INFINITY;
}

/** How much of its own rhythm there is breath for: 1 until an easy set may be waited for, 0 where any wait is better than failing. */
const breathLeft = ({ noWaitUntil, anyWaitFrom }: Rules, used: number): number =>
  Math.min(1, Math.max(0, (anyWaitFrom - used) / (anyWaitFrom - noWaitUntil)));

/** The most a second may cost an athlete who is slowing, or has had to; infinite before. */
function dearestOf(rules: Rules, state: RunState): number {
  if (state.slowing) return rules.blownCost;
  return state.blown ? rules.afterBlownCost : Number.POSITIVE_INFINITY;
}

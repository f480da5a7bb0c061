import type { Drive } from "./drive.ts";
import { timeToFinish, workToFinish } from "./finish.ts";
import { sitOutPause, toNextPause } from "./pass-time.ts";
import { drain, refill } from "./reserve.ts";
import type { Rules } from "./rules.ts";
import type { Run, RunState } from "./run.ts";
import { setRate } from "./work-rate.ts";
import { beginWork, type WorkStep } from "./work-step.ts";

/** Nothing shorter than this is simulated; sustainable seconds and seconds. */
const NOTHING = 1e-9;
/** A unit that lacks no more than this of itself is done. */
const WHOLE = 1e-6;
/** No step drains more than this share of the reserve, however coarse. */
const MOST_DRAINED_PER_STEP = 1 / 8;

/** Simulates the work of one stretch from its first rep until it is done or `limit`, a clock, is reached. */
export function simulateWork(run: Run, i: number, limit: number): void {
  const { track, state, log } = run;
  const step = beginWork(run, i, limit);
  while (step.all - step.done > NOTHING && state.clock < limit - NOTHING) {
    const pause = toNextPause(track, state);
    if (pause <= NOTHING) {
      sitOutPause(run, leaveUnit(run, step));
      continue;
    }
    beginStep(run, step);
    setRate(run, step);
    setTime(run, step, pause);
    if (step.done === 0) log.opening[i] = (step.perUnit * step.stretched) / step.rate;
    pay(run, step);
    state.clock += step.time;
    state.worked += step.piece;
    step.done += step.piece;
    state.least = Math.min(state.least, (state.fast + state.slow) / step.whole);
  }
  const units = step.done / step.perUnit;
  log.done[i] = units;
  state.score += units * (track.score[i] as number);
  if ((track.adds[i] as number) > 0) state.groupDone += units;
}

/**
 * Nobody finishes after a pause the rep begun before it: of a unit under way only the rest that leads to its rep is kept, so that at
 * least its fastest cycle is left. Returns the whole units that are done.
 */
function leaveUnit({ track }: Run, step: WorkStep): number {
  const units = Math.floor(step.done / step.perUnit + WHOLE);
  const fastest = track.tasks[track.task[step.i] as number]?.capacity.fastest ?? 0;
  // However quickly it goes on, a unit with its breaks takes at least so long.
  const least = track.least[step.i] as number;
  const resting = least > 0 ? Math.max(0, 1 - fastest / least) : 0;
  step.done = Math.min(step.done, (units + resting) * step.perUnit);
  return units;
}

/** What the moment makes of the work, and how much of it the step may hold. */
function beginStep({ rules, drive, state }: Run, step: WorkStep): void {
  step.used = Math.min(1, 1 - (state.fast + state.slow) / step.whole);
  step.dearer = 1 + rules.drift * step.used;
  step.stretched = tired(rules, state.worked) / drive.form;
  step.piece = Math.min(step.all - step.done, step.longest, workToFinish(drive, state));
}

/** How much longer a sustainable second takes after so much work: a power law past the durability limit. */
const tired = (rules: Rules, worked: number): number =>
  worked > rules.durabilityFrom ? (worked / rules.durabilityFrom) ** rules.durability : 1;

/** The seconds of the step; it is cut where a clock, a pause or the finish comes first, or too much would be drained at once. */
function setTime({ drive, state }: Run, step: WorkStep, pause: number): void {
  const { cost, used, whole, reach, limit } = step;
  step.time = (step.piece * step.stretched) / step.rate;
  const most = Math.min(
    limit - state.clock,
    pause,
    timeToFinish(drive, state),
    cost > 1 && used < 1 ? (MOST_DRAINED_PER_STEP * whole * reach) / (cost - 1) : Number.POSITIVE_INFINITY,
  );
  if (step.time > most) {
    step.piece *= most / step.time;
    step.time = most;
  }
}

/** Takes what the step costs from the reserve or lets it refill; who empties it slows, and is careful once some of it is back. */
function pay({ rules, drive, state }: Run, step: WorkStep): void {
  const { cost, whole, time } = step;
  if (cost >= 1) {
    spend(state, drive, step, ((cost - 1) * time) / step.reach);
    return;
  }
  refill(state, rules, whole, time, cost);
  if (state.slowing && state.fast + state.slow >= rules.blownUntil * whole) {
    state.slowing = false;
    state.blown = true;
  }
}

/** Takes work from the reserve; where it holds less and may not owe, the step ends when it is empty. */
function spend(state: RunState, drive: Drive, step: WorkStep, taken: number): void {
  const held = state.fast + state.slow;
  if (taken > held && !drive.mayOwe) {
    step.piece *= held / taken;
    step.time *= held / taken;
    state.fast = 0;
    state.slow = 0;
    state.slowing = true;
  } else drain(state, taken);
}

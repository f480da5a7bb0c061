import { aimedCost } from "../motion/aimed-cost.ts";
import type { Drive } from "../motion/drive.ts";
import type { Rules } from "../motion/rules.ts";
import { newLog, type RunLog, type RunState } from "../motion/run.ts";
import type { Track } from "../motion/track.ts";

/** Sustainable seconds of a step while searching: at least this, and so much that long work takes so many steps. */
const COARSE = 30;
const COARSE_STEPS = 40;

/**
 * The few numbers a followable plan is made of: one effort per section (one in all, where no rest parts the work), one offset per
 * task, and one finish.
 */
export type Followable = {
  readonly efforts: Float64Array;
  /** Whether the pace is held rather than the effort, so that it does not drift as the reserve empties. */
  readonly even: boolean;
  /** Factor on the rate the closed form gives each task. */
  readonly offsets: Float64Array;
  /** Factor on the rate in the finish. */
  readonly finishLift: number;
  readonly finishFrom: number;
};

/** Everything a search runs on; arrays are scratch space, filled anew for every try. */
export type Bench = {
  readonly track: Track;
  readonly rules: Rules;
  /** State at the start of the part. */
  readonly start: RunState;
  /** Clock at which the part ends; infinite where work alone ends it. */
  readonly horizon: number;
  /** Sustainable seconds of the whole work; infinite where the time is fixed. */
  readonly wholeWork: number;
  /** Sustainable seconds of a step while searching. */
  readonly coarse: number;
  /** Lift of the rate by stretch, from early performances; 1 without. */
  readonly shape: Float64Array;
  readonly cost: Float64Array;
  readonly lift: Float64Array;
  readonly log: RunLog;
  readonly dayLog: RunLog;
  readonly opening: Float64Array;
  readonly closing: Float64Array;
  readonly before: Float64Array;
  readonly left: Float64Array;
  readonly reached: Float64Array;
};

/** What a bench is made for; each as in {@link Bench}. */
type BenchInput = Pick<Bench, "track" | "rules" | "start" | "horizon" | "wholeWork" | "shape">;

/** Scratch space for a track. */
export function newBench(input: BenchInput): Bench {
  const { track, horizon, wholeWork } = input;
  const column = (): Float64Array => new Float64Array(track.length);
  return {
    ...input,
    coarse: Math.max(COARSE, lengthOf(horizon, wholeWork) / COARSE_STEPS),
    cost: column(),
    lift: column(),
    log: newLog(track),
    dayLog: newLog(track),
    opening: column(),
    closing: column(),
    before: column(),
    left: column(),
    reached: column().fill(1),
  };
}

/** What is known of the length of the work before it is paced; 0 when nothing is. */
function lengthOf(horizon: number, wholeWork: number): number {
  const length = Math.min(horizon, wholeWork);
  return Number.isFinite(length) ? length : 0;
}

/** The drive of a plan by effort, on the expected day, in debt if need be. Costs are set by `aimSection`. */
export const driveByEffort = (bench: Bench, plan: Followable, grain: number, mayOwe: boolean): Drive => ({
  by: "effort",
  even: plan.even,
  cost: bench.cost,
  lift: bench.lift,
  opening: bench.opening,
  closing: bench.closing,
  before: bench.before,
  left: bench.left,
  reached: bench.reached,
  feel: 0,
  feelAtTheEnd: 0,
  form: 1,
  reserveForm: 1,
  mayOwe,
  finishFrom: plan.finishFrom,
  finishLift: plan.finishLift,
  wholeWork: bench.wholeWork,
  horizon: bench.horizon,
  grain,
});

/** Sets the lifts of every stretch from offsets and shape. */
export function liftAll(bench: Bench, plan: Followable): void {
  const { track } = bench;
  for (let i = 0; i < track.length; i += 1) {
    const task = track.task[i] as number;
    bench.lift[i] = task < 0 ? 1 : (plan.offsets[task] as number) * (bench.shape[i] as number);
  }
}

/** Sets the cost aimed at in every stretch from `from` to `to` for one effort. */
export function aimSection(bench: Bench, effort: number, from: number, to: number): void {
  const { track, rules } = bench;
  for (let i = from; i < to; i += 1) {
    if ((track.task[i] as number) >= 0)
      bench.cost[i] = aimedCost(effort, track.kappa[i] as number, rules.refillWorth);
  }
}

/** Copies where a simulation stands. */
export function copyState(to: RunState, from: RunState): RunState {
  return Object.assign(to, from);
}

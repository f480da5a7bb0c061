import { newBench, type Bench } from "./attempt.ts";
import { breakTrack, drawsOf } from "./break-track.ts";
import { type Choice, choosePlan, type Quest, targetOf } from "./choose-plan.ts";
import { findEfforts, runEfforts } from "./find-effort.ts";
import type { Goal } from "./goal.ts";
import { copyMuscles, type MuscleDraw, type Muscles } from "../motion/muscles.ts";
import type { SetPlan } from "./set-plan.ts";
import { shareWaits } from "./share-waits.ts";
import type { Rules } from "../motion/rules.ts";
import { keepLog, type RunLog, type RunState } from "../motion/run.ts";
import type { Track } from "../motion/track.ts";

/** A part solved: the plan, its run rep by rep, and its sets. The bench stays scratch space. */
export type Solved = {
  readonly bench: Bench;
  readonly goal: Goal;
  readonly choice: Choice;
  readonly state: RunState;
  readonly log: RunLog;
  readonly sets: readonly (SetPlan | undefined)[];
  /** Muscles at the start and at the end. */
  readonly muscles: Muscles;
  readonly tired: Muscles;
  readonly draws: readonly MuscleDraw[];
  readonly spread: number;
};

/** Rounds in which the run rep by rep and its sets are brought to agree. */
const FINE_ROUNDS = 5;
/** Relative excess of the time sets need at which they agree. */
const AGREED = 2e-4;

/** Everything a track is solved with. */
export type PartToSolve = {
  readonly track: Track;
  readonly rules: Rules;
  readonly goal: Goal;
  readonly start: { readonly state: RunState; readonly muscles: Muscles };
  /** Clock at which it ends; infinite where the work ends it. */
  readonly horizon: number;
  readonly shape: Float64Array;
  readonly spread: number;
};

/** The search for the plan of a track, ready to begin. */
export function questOf({ track, rules, goal, start, horizon, shape, spread }: PartToSolve): Quest {
  const fixed = goal.kind === "time" && !Number.isFinite(horizon);
  const work = fixed ? workOf(track) : Number.POSITIVE_INFINITY;
  const bench = newBench({ track, rules, start: start.state, horizon, wholeWork: work, shape });
  return { bench, goal, muscles: start.muscles, draws: drawsOf(track), spread };
}

/** Chooses the plan of a track and runs it rep by rep with its sets, until effort and sets agree. */
export function solvePart(part: PartToSolve): Solved {
  const { track, rules, goal, start, spread } = part;
  const quest = questOf(part);
  const { bench, draws } = quest;
  const choice = choosePlan(quest);
  const target = targetOf(track, choice.margin, choice.hold);
  for (let round = 1; ; round += 1) {
    let state = findEfforts(bench, choice.plan, target, 0, choice.together);
    if (state.least < 0) state = runEfforts(bench, choice.plan, 0, false);
    const tired = copyMuscles(start.muscles);
    const { sets, excess } = breakTrack(bench, state.at, tired, draws);
    if (excess > AGREED && round < FINE_ROUNDS) continue;
    const found = { bench, goal, choice, state, muscles: start.muscles, draws, spread };
    const log = keepLog(bench.log);
    if (!shareWaits(track, rules, log, state.at, sets)) return { ...found, log, sets, tired };
    const shared = copyMuscles(start.muscles);
    return {
      ...found,
      log,
      sets: breakTrack({ track, rules, log }, state.at, shared, draws).sets,
      tired: shared,
    };
  }
}

/** How a run came out: where it stands, what happened at each stretch, on its own bench. */
export type Outcome = Pick<Solved, "bench" | "goal" | "state" | "log">;

/** Rounds in which sets and effort settle where a plan is only followed, not chosen. */
const FOLLOWED_ROUNDS = 3;

/**
 * A part gone about as a plan chosen for another says: as much of the reserve kept, the same tasks hurried, the same finish. Effort and
 * sets are found anew, so who can do more or less than the plan was made for paces, breaks and finishes accordingly.
 */
export function solveAs(part: PartToSolve, choice: Choice): Outcome {
  const { bench, goal, muscles, draws } = questOf(part);
  const { track } = bench;
  const offsets = choice.plan.offsets.slice();
  const plan = {
    ...choice.plan,
    efforts: choice.plan.efforts.slice(),
    offsets: offsets.length === Math.max(1, track.tasks.length) ? offsets : onesFor(track),
  };
  const target = targetOf(track, choice.margin, choice.hold);
  for (let round = 1; ; round += 1) {
    let state = findEfforts(bench, plan, target, bench.coarse, choice.together);
    const { excess } = breakTrack(bench, state.at, copyMuscles(muscles), draws);
    if (excess > FOLLOWED && round < FOLLOWED_ROUNDS) continue;
    if (state.least < 0) state = runEfforts(bench, plan, bench.coarse, false);
    return { bench, goal, state, log: keepLog(bench.log) };
  }
}

/** Relative excess of the time sets need at which a followed plan is settled. */
const FOLLOWED = 2e-3;

const onesFor = (track: Track): Float64Array => new Float64Array(Math.max(1, track.tasks.length)).fill(1);

/** Sustainable seconds of all counted work. */
export function workOf(track: Track): number {
  let work = 0;
  for (let i = 0; i < track.length; i += 1) {
    if ((track.task[i] as number) < 0) continue;
    const amount = track.amount[i] as number;
    if (Number.isFinite(amount)) work += amount * ((track.perUnit[i] as number) || 1);
  }
  return work;
}

import { type Bench, newBench } from "../pacing/attempt.ts";
import { choosePlan } from "../pacing/choose-plan.ts";
import { findEfforts } from "../pacing/find-effort.ts";
import type { Goal } from "../pacing/goal.ts";
import { freshMuscles } from "../pacing/muscles.ts";
import type { Rules } from "../pacing/rules.ts";
import { type RunState, startState } from "../pacing/run.ts";
import { singleTrack } from "../pacing/single-track.ts";
import { COUNTED, type Track } from "../pacing/track.ts";

/** A movement as far as its endurance goes; `quickest`: share of the time that its fastest cycles and its sets need at least. */
export type Endurance = { readonly kappa: number; readonly reach: number; readonly quickest: number };

/** In efforts up to this length, seconds, it matters whether time or work is given, and how fast the fastest cycle is. */
const SHORT = 400;

/**
 * Sustainable seconds of work that the plan of a single movement does in a time: the search and the simulation of the pacing itself,
 * asked once. Dividing by what an athlete did in that time gives the sustainable time with which the plan returns just that.
 *
 * A plan for a given time and one for a given amount keep slightly different margins when they are short; the geometric mean of both
 * is taken, so that either returns the effort.
 *
 * @param spread relative spread of form the plan's margin is chosen for
 */
export function sustainableWorkIn(time: number, endurance: Endurance, rules: Rules, spread: number): number {
  const { kappa, reach, quickest } = endurance;
  const inTime = planned(singleTrack(kappa, reach, NO_LIMIT), rules, spread, { kind: "score" }, time).worked;
  if (time > SHORT) return inTime;
  const track: Track = {
    ...singleTrack(kappa, reach, (quickest * time) / inTime),
    kind: new Uint8Array([COUNTED]),
    amount: new Float64Array([inTime]),
  };
  const needed = planned(
    track,
    rules,
    spread,
    { kind: "time", restCounts: true },
    Number.POSITIVE_INFINITY,
    inTime,
  ).clock;
  return inTime * Math.sqrt(time / needed);
}

/** Seconds per sustainable second of a fastest cycle that never binds. */
const NO_LIMIT = 0.01;

/** The run, step by step, of the plan chosen for a track of one movement. */
function planned(
  track: Track,
  rules: Rules,
  spread: number,
  goal: Goal,
  horizon: number,
  work = Number.POSITIVE_INFINITY,
): RunState {
  const even = new Float64Array(1).fill(1);
  const bench: Bench = newBench(track, rules, startState(rules), horizon, work, even);
  const { plan, margin } = choosePlan({ bench, goal, muscles: freshMuscles(rules), draws: [], spread });
  return findEfforts(bench, plan, () => margin, 0);
}

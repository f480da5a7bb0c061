import { memoize } from "../../numerics/memoize.ts";
import { type Bench, type Followable, newBench } from "../search/attempt.ts";
import { type Choice, choosePlan } from "../search/choose-plan.ts";
import { findEfforts } from "../search/find-effort.ts";
import type { Goal } from "../search/goal.ts";
import { freshMuscles } from "../motion/muscles.ts";
import type { Rules } from "../motion/rules.ts";
import { type RunState, startState } from "../motion/run.ts";
import { singleTrack } from "../search/single-track.ts";
import { COUNTED, type Track } from "../motion/track.ts";
import { CAPACITY_FIXED } from "./fixed-constants.ts";

/** A movement as far as its endurance goes; `quickest`: share of the time that its fastest cycles and its sets need at least. */
export type Endurance = { readonly kappa: number; readonly reach: number; readonly quickest: number };

/** In efforts up to this length, seconds, it matters whether time or work is given, and how fast the fastest cycle is. */
const SHORT = CAPACITY_FIXED.shortEffort.value;

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
  const inTime = planned(singleTrack(kappa, reach, NO_LIMIT), rules, spread, inTimeOf(time)).worked;
  if (time > SHORT) return inTime;
  const track: Track = {
    ...singleTrack(kappa, reach, (quickest * time) / inTime),
    kind: new Uint8Array([COUNTED]),
    amount: new Float64Array([inTime]),
  };
  const asked: Asked = {
    goal: { kind: "time", restCounts: true },
    horizon: Number.POSITIVE_INFINITY,
    work: inTime,
  };
  const needed = planned(track, rules, spread, asked).clock;
  return inTime * Math.sqrt(time / needed);
}

/** Plans of one kind of movement for a time, for whoever needs many: what is kept and the finish depend little on the movement. */
export type UsualPlan = (
  time: number,
  spread: number,
) => { readonly plan: Followable; readonly margin: number };

/** How dear the movement is whose plan stands for all. */
const USUAL_KAPPA = 2;

/** Makes the memory of usual plans for one athlete. */
export function usualPlans(rules: Rules): UsualPlan {
  const known = memoize((time: number = 0, spread: number = 0) => {
    const { plan, margin } = chosen(singleTrack(USUAL_KAPPA, 1, NO_LIMIT), rules, spread, inTimeOf(time));
    return { plan, margin };
  });
  return (time, spread) => known(time, spread);
}

/**
 * Sustainable seconds of work in a time with the margin and finish of a usual plan: within half a per cent of asking for its own, and a
 * small part of the work. For references, which are not known to a tenth.
 */
export function usualWorkIn(
  time: number,
  { kappa, reach }: Omit<Endurance, "quickest">,
  rules: Rules,
  spread: number,
  usual: UsualPlan,
): number {
  const track = singleTrack(kappa, reach, NO_LIMIT);
  const bench = benchFor(track, rules, time, Number.POSITIVE_INFINITY);
  const { plan, margin } = usual(time, spread);
  return findEfforts(bench, { ...plan, efforts: plan.efforts.slice() }, () => margin, 0).worked;
}

/** Seconds per sustainable second of a fastest cycle that never binds. */
const NO_LIMIT = 0.01;

/** What a plan is chosen for: the clock that ends it, or the sustainable seconds of its work; the other is infinite. */
type Asked = { readonly goal: Goal; readonly horizon: number; readonly work: number };

/** As much as possible in a time. */
const inTimeOf = (horizon: number): Asked => ({
  goal: { kind: "score" },
  horizon,
  work: Number.POSITIVE_INFINITY,
});

/** The run, step by step, of the plan chosen for a track of one movement. */
function planned(track: Track, rules: Rules, spread: number, asked: Asked): RunState {
  const { bench, plan, margin } = chosen(track, rules, spread, asked);
  return findEfforts(bench, plan, () => margin, 0);
}

function chosen(
  track: Track,
  rules: Rules,
  spread: number,
  { goal, horizon, work }: Asked,
): Choice & { readonly bench: Bench } {
  const bench = benchFor(track, rules, horizon, work);
  return { bench, ...choosePlan({ bench, goal, muscles: freshMuscles(rules), draws: [], spread }) };
}

const benchFor = (track: Track, rules: Rules, horizon: number, work: number): Bench =>
  newBench({
    track,
    rules,
    start: startState(rules),
    horizon,
    wholeWork: work,
    shape: new Float64Array(1).fill(1),
  });

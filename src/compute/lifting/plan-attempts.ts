import { quickNormalBelow, quickNormalRatio } from "../../numerics/normal-table.ts";
import type { AttemptPlan, AttemptProblem, Stop } from "./attempt-problem.ts";
import type { Belief } from "./day-strength.ts";
import { makeChance, updateBelief } from "./make-chance.ts";
import { type AttemptValues, solveAttempts } from "./solve-attempts.ts";

/** A solved problem, ready to be planned from any step at which the lift may begin. */
export type SolvedAttempts = {
  /** The first attempt and everything after it. `strength` where it differs from the problem's, as with another finish. */
  readonly begin: (step: number, strength?: AttemptProblem["strength"]) => AttemptPlan | Stop;
  /** What beginning there is worth. */
  readonly worth: (step: number) => number;
};

/**
 * Chooses each attempt, its load and the rest before it, so that what the result is worth is as high as can be
 * expected.
 *
 * Dynamic programming (`solveAttempts`) gives what every state is worth; from there the plan is read off forwards: at
 * each point the belief follows what was made and missed, and the next attempt is the one with the best expected
 * worth one step ahead, or none where stopping is worth as much. Of attempts worth nearly the same (0.3 % of what lies
 * between the lightest and the heaviest load) it is the lightest, then the earliest; waiting has a small price. Nothing is
 * rounded.
 */
export function planAttempts(problem: AttemptProblem): SolvedAttempts {
  const values = solveAttempts(problem);
  const origin = (start: number): Moment => ({
    attempts: 0,
    start,
    state: 0,
    belief: problem.belief,
    load: undefined,
  });
  return {
    begin: (start, strength = problem.strength) => follow({ ...problem, strength }, values, origin(start)),
    worth: (start) => {
      const best = bestOption(problem, values, origin(start));
      return Math.max(values.stopping(start, 0), best?.worth ?? -Infinity);
    },
  };
}

/** A point in the plan: what was done, what is believed, what stands on the bar. */
type Moment = {
  readonly attempts: number;
  readonly start: number;
  readonly state: number;
  readonly belief: Belief;
  readonly load: number | undefined;
};

/** An attempt that could come next; `worth` is what it and the best that follows are expected to be worth. */
type Option = {
  readonly load: number;
  readonly start: number;
  readonly strength: number;
  readonly worth: number;
};

/** Of what lies between the lightest and the heaviest load: worths nearer than this count as equal. */
const EVEN = 0.003;
/** Of the same: what a minute's wait must bring at least. */
const PATIENCE = 0.002;
/** Rounding error of sums of chances. */
const ROUNDING = 1e-9;

function follow(problem: AttemptProblem, values: AttemptValues, moment: Moment): AttemptPlan | Stop {
  if (moment.attempts >= problem.attempts) return { stop: "no-attempts" };
  const option = bestOption(problem, values, moment);
  if (option === undefined) return { stop: "no-time" };
  if (option.worth <= values.stopping(moment.start, moment.state) + ROUNDING) return { stop: "no-gain" };
  const { start, strength } = option;
  const load = problem.loads[option.load] ?? 0;
  const { ifMade, ifMissed } = values.states;
  const then = (made: boolean): AttemptPlan | Stop =>
    follow(problem, values, {
      attempts: moment.attempts + 1,
      start,
      state: (made ? ifMade[option.load] : ifMissed[moment.state * problem.loads.length + option.load]) ?? 0,
      belief: updateBelief(moment.belief, load, made, strength),
      load,
    });
  return {
    load,
    start,
    strength,
    chance: makeChance(load, moment.belief, strength),
    made: then(true),
    missed: then(false),
  };
}

/**
 * The attempt with the best expected worth, and of those as good as it the lightest, then the earliest; undefined when none
 * can start in time or may be lifted.
 */
function bestOption(problem: AttemptProblem, values: AttemptValues, moment: Moment): Option | undefined {
  const { wait, firsts, gaps } = problem;
  if (moment.attempts > 0) return bestAmong(problem, values, moment, gaps);
  if (wait === undefined) return bestAmong(problem, values, moment, firsts);
  // The settled moment, or the nearest to it that the window and the plates allow.
  for (const gap of [
    ...firsts.filter((each) => each <= wait).reverse(),
    ...firsts.filter((each) => each > wait),
  ]) {
    const option = bestAmong(problem, values, moment, [gap]);
    if (option) return option;
  }
  return undefined;
}

function bestAmong(
  problem: AttemptProblem,
  values: AttemptValues,
  moment: Moment,
  gaps: readonly number[],
): Option | undefined {
  const { loads, step, lift, lastStart, worth } = problem;
  const first = moment.attempts === 0;
  const range = Math.abs(worth(loads.at(-1)) - worth(loads[0]));
  const worths: number[][] = [];
  let most = -Infinity;
  gaps.forEach((gap, at) => {
    const row: number[] = [];
    worths[at] = row;
    const start = moment.start + gap;
    if (start > lastStart) return;
    const time = first ? gap * step : gap * step - lift;
    const strength = problem.strength(start * step, first ? Infinity : time, moment.attempts);
    const price = (PATIENCE * range * (gap - (gaps[0] ?? gap)) * step) / 60;
    for (const load of first ? openers(problem, strength) : loads.keys()) {
      if (values.states.mayLift[moment.state * loads.length + load] === 0) continue;
      if (problem.change(moment.load, loads[load] ?? 0) > time) continue;
      const priced = worthOf(problem, values, moment, load, start, strength) - price;
      row[load] = priced;
      if (priced > most) most = priced;
    }
  });
  if (most === -Infinity) return undefined;
  const enough = most - EVEN * range - ROUNDING;
  for (let load = 0; load < loads.length; load++) {
    for (const [at, gap] of gaps.entries()) {
      if ((worths[at]?.[load] ?? -Infinity) < enough) continue;
      const start = moment.start + gap;
      const rest = first ? Infinity : gap * step - lift;
      const strength = problem.strength(start * step, rest, moment.attempts);
      return { load, start, strength, worth: worthOf(problem, values, moment, load, start, strength) };
    }
  }
  return undefined;
}

/** The loads the first attempt may be made with: the fixed opener, the one that is made surely enough, or any. */
function openers(
  { loads, opener, openerChance, belief }: AttemptProblem,
  strength: number,
): readonly number[] {
  const all = [...loads.keys()];
  if (opener !== undefined) return all.filter((load) => Math.abs((loads[load] ?? 0) - opener) <= 0.01);
  if (openerChance === undefined) return all;
  const heaviest = all.findLast((load) => makeChance(loads[load] ?? 0, belief, strength) >= openerChance);
  return [heaviest ?? 0];
}

/** Expected worth of one attempt and the best that follows; as `makeChance` and `updateBelief` from tables. */
function worthOf(
  problem: AttemptProblem,
  { states, value, bonus }: AttemptValues,
  { attempts, state, belief }: Moment,
  load: number,
  start: number,
  strength: number,
): number {
  const width = Math.hypot(strength * belief.spread, belief.noise);
  const z = (strength * belief.mean - (problem.loads[load] ?? 0)) / width;
  const gain = (strength * belief.spread ** 2) / width;
  const missedState = states.ifMissed[state * problem.loads.length + load] ?? 0;
  const made = belief.mean + gain * quickNormalRatio(z);
  const missed = belief.mean - gain * quickNormalRatio(-z);
  const ifMade = value(attempts + 1, start, states.ifMade[load] ?? 0, made) + bonus(load);
  const ifMissed = value(attempts + 1, start, missedState, missed);
  return ifMissed + quickNormalBelow(z) * (ifMade - ifMissed);
}

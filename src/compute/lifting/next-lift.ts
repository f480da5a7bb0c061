import type { AttemptConstants } from "./attempt-constants.ts";
import { attemptStarts, type AttemptWindow } from "./attempt-times.ts";
import { chooseLadder } from "./choose-ladder.ts";
import { both, chancesByDay, DAY_WEIGHTS, momentsOf, totalOf, without } from "./day-grid.ts";
import type { Belief } from "./day-strength.ts";
import { isSameLoad, type LadderProblem, SAME, type Slot } from "./ladder-problem.ts";
import type { LadderTask } from "./lifting-task.ts";
import { type PlannedLadder, slotsOf } from "./plan-ladder.ts";
import { LIFTING_FIXED } from "./fixed-constants.ts";

/** A lift that was done: its load in kilograms, and its start in seconds from the opening of the window. */
export type DoneLift = { readonly load: number; readonly made: boolean; readonly start: number };

/** What comes next: a lift with those that follow while all is made, or the end and why. */
export type NextLift =
  | {
      readonly kind: "lift";
      readonly load: number;
      readonly start: number;
      /** Chance that it is made, by what is believed and all that was lifted today. */
      readonly chance: number;
      readonly then: readonly { readonly load: number; readonly start: number }[];
    }
  | {
      readonly kind: "stop";
      readonly why: "all-done" | "two-misses" | "over-target" | "none-made" | "no-time";
    };

/** A lift within so many seconds of its planned start leaves the starts after it as they are. */
const ON_TIME = LIFTING_FIXED.onTime.value;

/**
 * The next lift after those that were done, in the window as it is.
 *
 * As long as every lift is made, as planned and on time, the ladder holds. A missed opener is followed by the lower loads of the
 * ladder; a later miss is repeated once, and two misses in a row end the day, over the load aimed at one, as on paper. Else what is left of the window is
 * planned again by the same programme: from the heaviest load made, with the strength of the day as the misses show it, inside the same
 * bounds, with rests that use the window to its end.
 *
 * Times are seconds from the opening of the window; nothing starts before `now`.
 */
export function nextLift(
  task: LadderTask,
  window: AttemptWindow,
  planned: PlannedLadder,
  { done, now }: { readonly done: readonly DoneLift[]; readonly now: number },
  constants: AttemptConstants,
): NextLift {
  const starts = startsLeft(window, planned, done, now, constants);
  const [start] = starts;
  const made = done.filter((lift) => lift.made).map(({ load }) => load);
  const best = made.length === 0 ? undefined : Math.max(...made);
  const misses = done.length - 1 - done.findLastIndex((lift) => lift.made);
  if (best === undefined && done.length > planned.chosen.lower.length)
    return { kind: "stop", why: "none-made" };
  if (best !== undefined && misses > 1) return { kind: "stop", why: "two-misses" };
  if (best !== undefined && misses === 1 && (done.at(-1)?.load ?? 0) > aimedLoad(planned) + SAME)
    return { kind: "stop", why: "over-target" };
  if (start === undefined)
    return { kind: "stop", why: leftOf(window, planned, done) > 0 ? "no-time" : "all-done" };
  const slots = slotsOf(task.today, [...done.map((lift) => lift.start), ...starts], window);
  const problem = { ...planned.problem, slots };
  const loads = loadsLeft(problem, planned, done, best, misses);
  const [load] = loads;
  const slot = slots[done.length];
  if (load === undefined || slot === undefined) return { kind: "stop", why: "all-done" };
  return {
    kind: "lift",
    load,
    start,
    chance: chanceOf(load, slot, daysAfter(done, slots, problem.belief), problem.belief, done.length === 0),
    then: loads.slice(1).flatMap((each, at) => {
      const when = starts[at + 1];
      return when === undefined ? [] : [{ load: each, start: when }];
    }),
  };
}

/** The load aimed at, kilograms; infinite where that is the last. */
const aimedLoad = ({ chosen: { aimed, loads } }: PlannedLadder): number =>
  aimed === undefined ? Infinity : (loads[aimed] ?? Infinity);

/** Attempts that are left by the ladder and by the rules. */
const leftOf = (window: AttemptWindow, { problem }: PlannedLadder, done: readonly DoneLift[]): number =>
  Math.min(window.attempts, problem.slots.length) - done.length;

/** Starts of the lifts that are left: those planned where the last was on time, else what is left of the window anew. */
function startsLeft(
  window: AttemptWindow,
  planned: PlannedLadder,
  done: readonly DoneLift[],
  now: number,
  constants: AttemptConstants,
): readonly number[] {
  const left = leftOf(window, planned, done);
  if (left <= 0) return [];
  const own = planned.problem.slots.map(({ start }) => start);
  const last = done.at(-1);
  const first = own[done.length] ?? Infinity;
  const onTime = last === undefined || Math.abs(last.start - (own[done.length - 1] ?? 0)) <= ON_TIME;
  if (onTime && now <= first + ON_TIME) return own.slice(done.length);
  const soonest = Math.max(now, last === undefined ? window.earliest : last.start + window.gap);
  if (soonest > window.lastStart) return [];
  const fit = Math.min(left, 1 + Math.floor((window.lastStart - soonest) / window.gap));
  // Counted from the last lift the rests are spread over all that is left; where it is later than that already, from now.
  const spread = last === undefined ? [] : attemptStarts(window, last.start, fit + 1, constants).slice(1);
  const [next] = spread;
  return next !== undefined && next >= soonest ? spread : attemptStarts(window, soonest, fit, constants);
}

/** Loads from here on while all is made. */
function loadsLeft(
  problem: LadderProblem,
  planned: PlannedLadder,
  done: readonly DoneLift[],
  best: number | undefined,
  misses: number,
): readonly number[] {
  const { chosen } = planned;
  const [opener] = chosen.loads;
  if (done.length === 0) return chosen.loads.slice(0, problem.slots.length);
  if (best === undefined) {
    const lower = chosen.lower[done.length - 1];
    return lower === undefined ? [] : [lower];
  }
  const last = done.at(-1);
  const again = misses === 1 && last !== undefined ? [last.load] : [];
  const asPlanned = done.every(({ load, made }, at) => made && isSameLoad(load, chosen.loads[at] ?? 0));
  const sameSlots = problem.slots.length >= chosen.loads.length;
  if (asPlanned && sameSlots) return chosen.loads.slice(done.length);
  if (best < opener - SAME && again.length === 0) {
    // What was missed under the opener comes before the opener again.
    const back = [...chosen.lower.toReversed(), opener].filter((load) => load > best + SAME);
    return [...new Set(back), ...climbFrom(opener, back.length, problem, done, chosen.loads)];
  }
  const [repeated] = again;
  const aim = aimedLoad(planned) - SAME;
  if (repeated !== undefined)
    return repeated >= aim ? again : [repeated, ...climbFrom(repeated, 1, problem, done, chosen.loads)];
  const tookTwo =
    last !== undefined && done.at(-2)?.made === false && isSameLoad(last.load, done.at(-2)?.load ?? 0);
  return tookTwo && last.load >= aim ? [] : climbFrom(best, 0, problem, done, chosen.loads);
}

/** Loads after one that is made, by the programme or the usual steps. `ahead` lifts come before them. */
function climbFrom(
  from: number,
  ahead: number,
  problem: LadderProblem,
  done: readonly DoneLift[],
  ladder: readonly number[],
): readonly number[] {
  const slots = problem.slots.slice(done.length + ahead - 1);
  if (slots.length < 2) return [];
  const rung = ladder.filter((load) => load < from - SAME).length;
  const { limits, steps } = problem;
  const [, ...loads] = chooseLadder({
    ...problem,
    slots,
    opener: from,
    openers: [...new Set([...problem.openers, from])].sort((a, b) => a - b),
    belief: beliefAfterMisses(done, problem),
    limits: rung > 0 ? { ...limits, firstJump: limits.laterJump } : limits,
    steps: steps.slice(Math.min(rung, steps.length - 1)),
  }).loads;
  return loads;
}

/** How likely each strength of the day is after all that was lifted. */
function daysAfter(done: readonly DoneLift[], slots: readonly Slot[], belief: Belief): Float64Array {
  return done.reduce((weights, { load, made }, at) => {
    const slot = slots[at];
    if (!slot) return weights;
    const chances = chancesByDay(load, slot, at === 0, belief);
    return made ? both(weights, chances) : without(weights, chances);
  }, DAY_WEIGHTS);
}

const chanceOf = (load: number, slot: Slot, days: Float64Array, belief: Belief, isFirst: boolean): number =>
  totalOf(both(days, chancesByDay(load, slot, isFirst, belief))) / totalOf(days);

/** The belief as misses have left it; what was made is weighed where the ladder is chosen. */
function beliefAfterMisses(done: readonly DoneLift[], { slots, belief }: LadderProblem): Belief {
  if (done.every(({ made }) => made)) return belief;
  let weights = DAY_WEIGHTS;
  for (const [at, { load, made }] of done.entries()) {
    const slot = slots[at];
    if (slot && !made) weights = without(weights, chancesByDay(load, slot, at === 0, belief));
  }
  const { mean, deviation } = momentsOf(weights);
  return { ...belief, mean: belief.mean + mean * belief.spread, spread: deviation * belief.spread };
}

import { fastRefilled, muscleRefillLaw, slowRefilled } from "../motion/refill-law.ts";
import { coachSets } from "./coach-sets.ts";
import { evenSets } from "./even-sets.ts";
import { givenSets } from "./given-sets.ts";
import { largestSet, type SetQuestion } from "./largest-sets.ts";
import { type Breaking, leastTimeOf, LONGEST_TRIED } from "./least-time.ts";
import type { SetPlan } from "./set-plan.ts";
import type { Rules } from "../motion/rules.ts";
import { asSingles, spacedSets } from "./spaced-sets.ts";
import { spreadOut } from "./spread-out.ts";

/**
 * Breaks an amount into sets.
 *
 * The fastest way is found first: for every sensible number of sets the shortest equal rest with which sets taken as
 * large as allowed are enough; the least total time wins, but fewer sets are taken if they cost next to nothing. A set is allowed up to a share of
 * what the muscle could do then, so it ends before failure; a single is always allowed where one is possible. Where more time
 * is given than the fastest way needs, it goes into the cycle, into a breath before the first set and into rests, in as few sets as keep each
 * rest below the longest sensible one.
 */
export function planSets(question: SetQuestion, rules: Rules): SetPlan {
  const { amount, fastest, time } = question;
  if (!Number.isFinite(question.unbroken) || amount <= 0)
    return oneSet(question, Math.max(fastest, time / Math.max(amount, 1e-9)), 0);
  const restFirst = restBefore(question, rules);
  const start = restFirst > 0 ? rested(question, rules, restFirst) : question;
  const given = givenSets(start, rules, time - restFirst);
  if (given) {
    const wait = restFirst + given.restFirst;
    const needed = given.leastTotal + restFirst;
    return { ...given, restFirst: wait, total: given.total + restFirst, leastTotal: needed };
  }
  const byMuscle = fastestWay(start, rules);
  const spaced = spacedSets(start, rules, byMuscle.total);
  const fast = spaced ? { ...byMuscle, ...spaced, cycle: fastest } : byMuscle;
  const leastTotal = fast.total + restFirst;
  if (time <= leastTotal + 1e-9)
    return asSingles(question, rules, { ...fast, restFirst, total: leastTotal, leastTotal });
  if (spaced) {
    // More time makes the distance longer.
    const rest = (time - restFirst - amount * fastest) / (fast.sizes.length - 1);
    return { ...fast, rest, restFirst, total: time, leastTotal };
  }
  const spread = { ...spreadOut(start, rules, fast, time - restFirst, restFirst), leastTotal };
  return asSingles(question, rules, spread);
}

const oneSet = (question: SetQuestion, cycle: number, restFirst: number): SetPlan => ({
  sizes: [question.amount],
  rest: 0,
  cycle,
  restFirst,
  total: question.amount * cycle + restFirst,
  leastTotal: question.amount * question.fastest + restFirst,
});

/**
 * Seconds of rest before one unit (or the whole amount, if it must be unbroken) is possible, and no longer than after which a single
 * comes again whatever came before: what is not back then is not waited for.
 */
function restBefore(question: SetQuestion, rules: Rules): number {
  const needed = question.unbrokenOnly
    ? Math.min(question.amount, question.unbroken)
    : Math.min(1, question.unbroken);
  let rest = 0;
  let state = question;
  while ((state.fast + state.slow) * question.unbroken < needed - 1e-9 && rest < rules.singleAgain) {
    rest += 2;
    state = rested(question, rules, rest);
  }
  return rest;
}

function rested(question: SetQuestion, rules: Rules, rest: number): SetQuestion {
  const free = rest * rules.recoverySpeed * question.muscleRecovery;
  const law = muscleRefillLaw(rules, question.full, free);
  return {
    ...question,
    fast: fastRefilled(question.fast, law),
    slow: slowRefilled(question.slow, law),
  };
}

function fastestWay(question: SetQuestion, rules: Rules): SetPlan {
  const { amount, fastest } = question;
  const way = leastTimeOf(question, rules);
  if (way.kind === "one-set") return oneSet(question, way.cycle, 0);
  // What fewer sets may cost goes into the rests, so that the sets need not fall off so steeply.
  const { sizes, rest } = inWholeUnits(question, rules, way.ways, way.total);
  // Without a way in parts of units its total is no measure of anything.
  const allowed = way.ways.length > 0 ? way.total : 0;
  const cycle = Math.max(fastest, (allowed - (sizes.length - 1) * rest) / amount);
  const spent = amount * cycle + (sizes.length - 1) * rest;
  return { sizes, rest, cycle, restFirst: 0, total: spent, leastTotal: spent };
}

/** Rests are lengthened by this factor until whole units fit. */
const LENGTHENED = 1.05;
/** Whole units may use so much more of what is possible than parts of units were allowed. */
const ROUNDING = 0.1;

/** Whole sets that fit into a time: the fewest that stay near the share allowed, else those that use least of what is possible. */
function inWholeUnits(
  question: SetQuestion,
  rules: Rules,
  ways: readonly Breaking[],
  total: number,
): { readonly sizes: readonly number[]; readonly rest: number } {
  const resting = total - question.amount * question.fastest;
  const most = rules.spareShare + ROUNDING;
  const start = { ...question, mayBreathe: false };
  const written = coachSets(start, rules, resting, most) ?? coachSets(start, rules, resting, 1);
  if (written) return written;
  let best: { sizes: readonly number[]; rest: number; use: number } | undefined;
  for (const { count } of ways) {
    const rest = resting / (count - 1);
    if (rest < rules.breakShortest) break;
    const even = evenSets(question, rules, count, rest, most);
    if (!even) continue;
    if (!best || even.use < best.use - 1e-9) best = { ...even, rest };
    if (even.use <= most) return best;
  }
  return best ?? lengthened(question, rules, ways);
}

/**
 * The quickest way once rests are lengthened until whole units fit, one at a time among the ways tried. Sets never grow, so a number of
 * sets that the first one cannot carry is hopeless, however long the rests.
 */
function lengthened(
  question: SetQuestion,
  rules: Rules,
  ways: readonly Breaking[],
): { readonly sizes: readonly number[]; readonly rest: number } {
  const { amount, fast, slow, fastest } = question;
  const first = Math.floor(largestSet(fast + slow, question, rules, fastest, 1) + 1e-9);
  const oneByOne = { count: Math.ceil(amount), rest: rules.breakShortest };
  let best: { sizes: readonly number[]; rest: number; resting: number } | undefined;
  for (const way of [...ways, oneByOne]) {
    if (first * way.count < amount) continue;
    for (let rest = way.rest; rest < LONGEST_TRIED; rest *= LENGTHENED) {
      const resting = (way.count - 1) * rest;
      if (best && resting >= best.resting) break;
      const even = evenSets(question, rules, way.count, rest, 1);
      if (!even) continue;
      best = { sizes: even.sizes, rest, resting };
      break;
    }
  }
  const alone = singles(question, rules);
  return best && best.resting <= (alone.sizes.length - 1) * alone.rest ? best : alone;
}

/** One at a time with the rest after which a single comes again whatever came before: all that is left where the muscle hardly refills. */
const singles = (question: SetQuestion, { singleAgain }: Rules): SetPlan => {
  const count = Math.ceil(question.amount);
  const total = question.amount * question.fastest + (count - 1) * singleAgain;
  const sizes = Array.from({ length: count }, (_, i) => Math.min(1, question.amount - i));
  return { sizes, rest: singleAgain, cycle: question.fastest, restFirst: 0, total, leastTotal: total };
};

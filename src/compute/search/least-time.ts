import { findRoot } from "../../numerics/find-root.ts";
import {
  largestSet,
  leftForSingles,
  refillPerIdleSecond,
  type SetQuestion,
  setsReach,
} from "./largest-sets.ts";
import type { Rules } from "../motion/rules.ts";

/** Rests are found to this share, and sets are enough when they reach all but this share of the amount. */
const REST_TO = 0.004;
const REACHED = 0.002;
/** A rest longer than this is not tried, seconds. */
export const LONGEST_TRIED = 600;

/** A number of sets with the rest it needs and the time of all of it. */
export type Breaking = { readonly count: number; readonly rest: number; readonly total: number };

/**
 * Numbers of sets with the rest each needs, from the fewest possible up to where more only cost time. The time falls and then rises with
 * the number: growing steps find the valley, halving steps its bottom. In ascending order of the number.
 */
function waysToBreak(question: SetQuestion, rules: Rules, fewest: number): readonly Breaking[] {
  const { amount, fastest } = question;
  const most = Math.ceil(amount);
  const ways = new Map<number, Breaking>();
  let best: Breaking | undefined;
  // Returns whether this number beats all before it.
  const tryCount = (count: number, longest: number): boolean => {
    if (count < 2 || count > most || ways.has(count)) return false;
    const rest = shortestRest(question, rules, count, longest);
    if (rest === undefined) return false;
    const way = { count, rest, total: amount * fastest + (count - 1) * rest };
    ways.set(count, way);
    if (best && way.total >= best.total - 1e-6) return false;
    best = way;
    return true;
  };
  let longest = LONGEST_TRIED;
  let worse = 0;
  for (let count = Math.min(most, Math.max(2, fewest)); worse < 3; count += stepFrom(count)) {
    if (count >= most) {
      tryCount(most, longest);
      break;
    }
    const better = tryCount(count, longest);
    const way = ways.get(count);
    if (!way) continue;
    longest = way.rest;
    worse = better ? 0 : worse + 1;
  }
  for (let step = best ? stepFrom(best.count) >> 1 : 0; best && step >= 1; step >>= 1) {
    while (tryCount(best.count - step, LONGEST_TRIED) || tryCount(best.count + step, LONGEST_TRIED));
  }
  return [...ways.values()].sort((a, b) => a.count - b.count);
}

const stepFrom = (count: number): number => Math.max(1, Math.floor(count / 5));

/** Shortest rest, up to a longest, with which this many sets are enough; undefined when none is. */
function shortestRest(
  question: SetQuestion,
  rules: Rules,
  count: number,
  longest: number,
): number | undefined {
  // Singles reach a whole number over a long stretch of rests: just under the amount is asked for, so that the shortest of them is found.
  const enough = question.amount * (1 - REACHED);
  const over = (logarithm: number): number =>
    setsReach(question, rules, count, Math.exp(logarithm), rules.spareShare) - enough;
  const root = findRoot(over, Math.log(rules.breakShortest), Math.log(longest), {
    width: REST_TO,
    near: (question.amount * REACHED) / 2,
    most: 30,
  });
  if (root.kind === "no-bracket") return root.atLow > 0 ? rules.breakShortest : undefined;
  return Math.exp(root.at);
}

/** A first set shorter than this makes whole units too coarse to be planned in parts. */
const COARSE = 2;

/** One at a time with the shortest rest, at most that after which any single comes again; undefined where sets are longer, or parts of a unit are asked for. */
function oneByOne(question: SetQuestion, rules: Rules, first: number): Breaking | undefined {
  const { amount: count, fastest } = question;
  if (first >= COARSE || count < 2 || !Number.isInteger(count)) return undefined;
  const spare = (logarithm: number): number =>
    leftForSingles(question, rules, count, Math.exp(logarithm)) - 1;
  const root = findRoot(spare, Math.log(rules.breakShortest), Math.log(rules.singleAgain), {
    width: REST_TO,
    near: REACHED,
    most: 30,
  });
  const bound = root.kind === "no-bracket" && root.atLow < 0 ? rules.singleAgain : rules.breakShortest;
  const rest = root.kind === "no-bracket" ? bound : Math.exp(root.at);
  return { count, rest, total: count * fastest + (count - 1) * rest };
}

/** Seconds per unit of one set slowed down until the pauses inside the cycle rest the muscle enough. */
function drawnOutCycle(question: SetQuestion, rules: Rules): number | undefined {
  const { amount, fastest, unbroken, muscleRecovery } = question;
  const perSecond = refillPerIdleSecond(rules, muscleRecovery);
  const available = rules.spareShare * (question.fast + question.slow);
  if (available <= 0) return undefined;
  return fastest + Math.max(0, 1 / unbroken - available / amount) / perSecond;
}

/** The fastest way of doing an amount as far as its time goes: in one set at a cycle, or broken in one of several ways. */
type LeastTime =
  | { readonly kind: "one-set"; readonly cycle: number; readonly total: number }
  | { readonly kind: "sets"; readonly ways: readonly Breaking[]; readonly total: number };

/**
 * The least time of an amount, in parts of a unit where it is broken, so that it rises smoothly with the amount. What fewer sets are worth
 * is allowed on top of the fastest way with breaks.
 */
export function leastTimeOf(question: SetQuestion, rules: Rules): LeastTime {
  const { amount, fastest } = question;
  const first = largestSet(question.fast + question.slow, question, rules, fastest, rules.spareShare);
  if (amount <= first + 1e-9 || question.unbrokenOnly) {
    return { kind: "one-set", cycle: fastest, total: amount * fastest };
  }
  const drawn = question.held ? undefined : drawnOutCycle(question, rules);
  const toBeat = drawn === undefined ? Number.POSITIVE_INFINITY : amount * drawn;
  const broken = waysToBreak(question, rules, Math.ceil(amount / first));
  const singles = oneByOne(question, rules, first);
  const ways = singles ? [...broken.filter(({ count }) => count !== singles.count), singles] : broken;
  const best = Math.min(toBeat, ...ways.map((way) => way.total));
  const total = best * (1 + rules.fewerSetsWorth);
  if (drawn !== undefined && toBeat <= total) return { kind: "one-set", cycle: drawn, total: toBeat };
  if (!Number.isFinite(total)) {
    const alone = amount * fastest + (Math.ceil(amount) - 1) * rules.singleAgain;
    return { kind: "sets", ways: [], total: alone };
  }
  return { kind: "sets", ways, total };
}

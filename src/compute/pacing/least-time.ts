import { largestSet, refillPerIdleSecond, type SetQuestion, setsReach } from "./largest-sets.ts";
import type { Rules } from "./rules.ts";

/** Rests are found to this, seconds. */
const REST_TO = 0.15;
/** A rest longer than this is not tried, seconds. */
export const LONGEST_TRIED = 600;

/** A number of sets with the rest it needs and the time of all of it. */
export type Breaking = { readonly count: number; readonly rest: number; readonly total: number };

/**
 * Numbers of sets with the rest each needs, from the fewest possible up to where more only cost time: in growing steps first, then
 * every number around the best.
 */
function waysToBreak(
  question: SetQuestion,
  rules: Rules,
  fewest: number,
  toBeat: number,
): readonly Breaking[] {
  const { amount, fastest } = question;
  const most = Math.ceil(amount);
  const ways: Breaking[] = [];
  let best = toBeat;
  let worse = 0;
  let longest = LONGEST_TRIED;
  const tryCount = (count: number, upTo: number): Breaking | undefined => {
    const rest = shortestRest(question, rules, count, upTo);
    return rest === undefined ? undefined : { count, rest, total: amount * fastest + (count - 1) * rest };
  };
  for (let count = Math.min(most, Math.max(2, fewest)); count <= most && worse < 3;) {
    const way = tryCount(count, longest);
    if (way) {
      longest = way.rest;
      worse = way.total < best - 1e-6 ? 0 : worse + 1;
      best = Math.min(best, way.total);
      ways.push(way);
    }
    count += Math.max(1, Math.floor(count / 12));
  }
  const at = ways.findIndex((way) => way.total === best);
  const [before, after] = [ways[at - 1], ways[at + 1]];
  if (at >= 0 && before) {
    const to = after?.count ?? most + 1;
    for (let count = before.count + 1; count < to; count += 1) {
      const way = count === ways[at]?.count ? undefined : tryCount(count, before.rest);
      if (way) ways.push(way);
    }
  }
  return ways.sort((a, b) => a.count - b.count);
}

/** Shortest rest, up to a longest, with which this many sets are enough; undefined when none is. */
function shortestRest(
  question: SetQuestion,
  rules: Rules,
  count: number,
  longest: number,
): number | undefined {
  const enough = (rest: number): boolean => setsReach(question, rules, count, rest, rules.spareShare);
  const shortest = rules.breakShortest;
  if (!enough(longest)) return undefined;
  // More sets need a little less rest than the number before: look just below it first, then ever further.
  let high = longest;
  let low = shortest;
  if (enough(shortest)) return shortest;
  for (let step = 0.5; high > shortest; step *= 2) {
    const tried = Math.max(shortest, high - step);
    if (!enough(tried)) {
      low = tried;
      break;
    }
    high = tried;
  }
  while (high - low > REST_TO) {
    const middle = (low + high) / 2;
    if (enough(middle)) high = middle;
    else low = middle;
  }
  return high;
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
export type LeastTime =
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
  const ways = waysToBreak(question, rules, Math.ceil(amount / first), toBeat);
  const best = Math.min(toBeat, ...ways.map((way) => way.total));
  const total = best * (1 + rules.fewerSetsWorth);
  if (drawn !== undefined && toBeat <= total) return { kind: "one-set", cycle: drawn, total: toBeat };
  if (!Number.isFinite(total)) {
    const alone = amount * fastest + (Math.ceil(amount) - 1) * LONGEST_TRIED;
    return { kind: "sets", ways: [], total: alone };
  }
  return { kind: "sets", ways, total };
}

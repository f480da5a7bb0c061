import { evenSets, largestSet, refillPerIdleSecond, type SetQuestion, setsReach } from "./largest-sets.ts";
import type { Rules } from "./rules.ts";

/** Sets in order, none larger than the one before; the mean rest between two; seconds per unit inside the sets. */
export type SetPlan = {
  readonly sizes: readonly number[];
  readonly rest: number;
  readonly cycle: number;
  /** Rest needed before the first unit can be done at all. */
  readonly restFirst: number;
  /** Seconds of all of it. */
  readonly total: number;
  /** Seconds of the fastest way, rest before it included. */
  readonly leastTotal: number;
};

/** A set of at most this share of what is possible is never broken. */
const EASY = 0.5;
/** Rests are found to this, seconds. */
const REST_TO = 0.15;
/** A rest longer than this is not tried. */
const LONGEST_TRIED = 180;

/**
 * Breaks an amount into sets.
 *
 * The fastest way is found first: for every sensible number of sets the shortest equal rest with which sets taken as
 * large as allowed are enough; the least total time wins, but fewer sets are taken if they cost next to nothing. A set is allowed up to a share of
 * what the muscle could do then, so it ends before failure; a single is always allowed where one is possible. Where more time
 * is given than the fastest way needs, the time goes into the cycle, then into rests, in as few sets as keep each
 * rest below the longest sensible one.
 */
export function planSets(question: SetQuestion, rules: Rules): SetPlan {
  const { amount, fastest, time } = question;
  if (!Number.isFinite(question.unbroken) || amount <= 0)
    return oneSet(question, Math.max(fastest, time / Math.max(amount, 1e-9)), 0);
  const restFirst = restBefore(question, rules);
  const start = restFirst > 0 ? rested(question, rules, restFirst) : question;
  const fast = fastestWay(start, rules);
  const leastTotal = fast.total + restFirst;
  if (time <= leastTotal + 1e-9) return { ...fast, restFirst, total: leastTotal, leastTotal };
  return { ...spreadOut(start, rules, fast, time - restFirst, restFirst), leastTotal };
}

const oneSet = (question: SetQuestion, cycle: number, restFirst: number): SetPlan => ({
  sizes: [question.amount],
  rest: 0,
  cycle,
  restFirst,
  total: question.amount * cycle + restFirst,
  leastTotal: question.amount * question.fastest + restFirst,
});

/** Seconds of rest before one unit (or the whole amount, if it must be unbroken) is possible. */
function restBefore(question: SetQuestion, rules: Rules): number {
  const needed = question.unbrokenOnly
    ? Math.min(question.amount, question.unbroken)
    : Math.min(1, question.unbroken);
  let rest = 0;
  let state = question;
  while ((state.fast + state.slow) * question.unbroken < needed - 1e-9 && rest < LONGEST_TRIED) {
    rest += 2;
    state = rested(question, rules, rest);
  }
  return rest;
}

function rested(question: SetQuestion, rules: Rules, rest: number): SetQuestion {
  const free = rest * rules.recoverySpeed * question.muscleRecovery;
  const fastFull = question.full * rules.refillFastShare;
  const slowFull = question.full - fastFull;
  return {
    ...question,
    fast: fastFull - (fastFull - question.fast) * Math.exp(-free / rules.refillFastSeconds),
    slow: slowFull - (slowFull - question.slow) * Math.exp(-free / rules.refillSlowSeconds),
  };
}

function fastestWay(question: SetQuestion, rules: Rules): SetPlan {
  const { amount, fastest } = question;
  const first = largestSet(question.fast + question.slow, question, rules, fastest, rules.spareShare);
  if (amount <= first + 1e-9 || question.unbrokenOnly) return oneSet(question, fastest, 0);
  const drawn = question.held ? undefined : drawnOut(question, rules);
  const ways: { count: number; rest: number; total: number }[] = [];
  let best = drawn?.total ?? Number.POSITIVE_INFINITY;
  let worse = 0;
  let longest = LONGEST_TRIED;
  const most = Math.ceil(amount);
  const fewest = Math.min(most, Math.max(2, Math.ceil(amount / first)));
  for (let count = fewest; count <= most && worse < 3; count += Math.max(1, Math.floor(count / 12))) {
    const rest = shortestRest(question, rules, count, longest);
    if (rest === undefined) continue;
    longest = rest;
    const total = amount * fastest + (count - 1) * rest;
    worse = total < best - 1e-6 ? 0 : worse + 1;
    best = Math.min(best, total);
    ways.push({ count, rest, total });
  }
  if (drawn && drawn.total <= best * (1 + rules.fewerSetsWorth)) return drawn;
  // What fewer sets may cost goes into the rests, so that the sets need not fall off so steeply.
  const total = best * (1 + rules.fewerSetsWorth);
  const way = ways.find((other) => other.total <= total);
  if (!way) return { ...oneSet(question, fastest, 0), total: amount * (fastest + LONGEST_TRIED) };
  const rest = Math.max(way.rest, (total - amount * fastest) / (way.count - 1));
  const sizes = evenSets(question, rules, way.count, rest);
  const cycle = Math.max(fastest, (total - (sizes.length - 1) * rest) / amount);
  return { sizes, rest, cycle, restFirst: 0, total, leastTotal: total };
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

/** One set slowed down until the pauses inside the cycle rest the muscle enough; not for what is held. */
function drawnOut(question: SetQuestion, rules: Rules): SetPlan | undefined {
  const { amount, fastest, unbroken, muscleRecovery } = question;
  const perSecond = refillPerIdleSecond(rules, muscleRecovery);
  const available = rules.spareShare * (question.fast + question.slow);
  if (available <= 0) return undefined;
  return oneSet(question, fastest + Math.max(0, 1 / unbroken - available / amount) / perSecond, 0);
}

/** Uses more time than the fastest way needs. */
function spreadOut(
  question: SetQuestion,
  rules: Rules,
  fast: SetPlan,
  time: number,
  restFirst: number,
): SetPlan {
  const { amount, fastest, held } = question;
  const even = time / amount;
  const slowest = held ? fastest * rules.slowestInSet : Number.POSITIVE_INFINITY;
  const unbroken =
    amount <= largestSet(question.fast + question.slow, question, rules, even, rules.spareShare);
  if (question.unbrokenOnly || (unbroken && even <= slowest)) {
    return { ...oneSet(question, even, restFirst), total: time + restFirst };
  }
  if (amount <= largestSet(question.fast + question.slow, question, rules, fastest, EASY)) {
    // A small set is not broken up for want of hurry: the athlete breathes before it instead.
    const breathing = time - amount * slowest;
    return { ...oneSet(question, slowest, restFirst + breathing), total: time + restFirst };
  }
  const cycle = Math.min(slowest, Math.max(fastest, fastest * 1.1));
  const resting = Math.max(time - amount * cycle, (fast.sizes.length - 1) * fast.rest);
  const most = Math.max(2, Math.ceil(amount));
  const fewest = Math.min(most, Math.max(2, Math.ceil(resting / rules.breakLongest) + 1));
  for (let count = fewest; count <= most; count += 1) {
    const rest = resting / (count - 1);
    if (rest < rules.breakShortest) break;
    if (!setsReach(question, rules, count, rest, rules.spareShare)) continue;
    const sizes = evenSets(question, rules, count, rest);
    const total = time + restFirst;
    return { ...fast, sizes, rest, cycle: (time - (sizes.length - 1) * rest) / amount, restFirst, total };
  }
  const breaks = (fast.sizes.length - 1) * fast.rest;
  return { ...fast, cycle: (time - breaks) / amount, restFirst, total: time + restFirst };
}

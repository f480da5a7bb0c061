import type { Rules } from "./rules.ts";

/** What is asked: an amount to be done by a muscle in a known state. Shares are of an unbroken set from fresh. */
export type SetQuestion = {
  readonly amount: number;
  /** Seconds per unit of the fastest cycle. */
  readonly fastest: number;
  /** Units possible unbroken from fresh at that cycle. */
  readonly unbroken: number;
  /** Whether something is held, so that only putting it down rests. */
  readonly held: boolean;
  /** Factor on the speed at which these muscles refill in breaks. */
  readonly muscleRecovery: number;
  /** What the limiting muscle has in its fast and slow store, and how much they hold together when full. */
  readonly fast: number;
  readonly slow: number;
  readonly full: number;
  /** Seconds the work should take, breaks included; less than possible gives the fastest possible. */
  readonly time: number;
  /** Whether breaks are forbidden. */
  readonly unbrokenOnly: boolean;
};

/** Sets in order, none larger than the one before; the same rest between any two; seconds per unit inside the sets. */
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
/** A rest longer than this is not tried. */
const LONGEST_TRIED = 180;

/**
 * Breaks an amount into sets.
 *
 * The fastest way is found first: for every sensible number of sets the shortest equal rest (whole seconds) with which sets taken as
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
  const first = allowed(question.fast + question.slow, question, rules, fastest, rules.spareShare);
  if (amount <= first || question.unbrokenOnly) return oneSet(question, fastest, 0);
  const ways: SetPlan[] = [];
  if (!question.held) {
    const slow = drawnOut(question, rules);
    if (slow) ways.push(slow);
  }
  let best = ways[0]?.total ?? Number.POSITIVE_INFINITY;
  let worse = 0;
  const most = Math.ceil(amount);
  for (let count = Math.max(2, Math.ceil(amount / first)); count <= most && worse < 3; count += 1) {
    const rest = shortestRest(question, rules, count);
    if (rest === undefined) continue;
    const total = amount * fastest + (count - 1) * rest;
    worse = total < best - 1e-6 ? 0 : worse + 1;
    best = Math.min(best, total);
    ways.push({ sizes: [count], rest, cycle: fastest, restFirst: 0, total, leastTotal: total });
  }
  const chosen = ways.find((way) => way.total <= best * (1 + rules.fewerSetsWorth));
  if (!chosen) return { ...oneSet(question, fastest, 0), total: amount * (fastest + LONGEST_TRIED) };
  if (chosen.rest === 0) return chosen;
  return { ...chosen, sizes: sizesOf(question, rules, chosen.sizes[0] ?? 2, chosen.rest) };
}

/** One set slowed down until the pauses inside the cycle rest the muscle enough; not for what is held. */
function drawnOut(question: SetQuestion, rules: Rules): SetPlan | undefined {
  const { amount, fastest, unbroken } = question;
  const perSecond = refillPerIdleSecond(rules);
  const available = rules.spareShare * (question.fast + question.slow);
  if (available <= 0) return undefined;
  return oneSet(question, fastest + Math.max(0, 1 / unbroken - available / amount) / perSecond, 0);
}

/** Share of an unbroken set that comes back in a second of pause inside a cycle, for a half-tired muscle. */
export const refillPerIdleSecond = (rules: Rules): number =>
  (rules.recoverySpeed / 2) *
  (rules.refillFastShare / rules.refillFastSeconds + (1 - rules.refillFastShare) / rules.refillSlowSeconds);

/** Largest set allowed with so much of the muscle left, at a cycle, when a share of what is possible may be used. */
function allowed(left: number, question: SetQuestion, rules: Rules, cycle: number, use: number): number {
  const { unbroken, held, fastest } = question;
  const perUnit = 1 / unbroken - (held ? 0 : refillPerIdleSecond(rules) * (cycle - fastest));
  if (perUnit <= 0) return Number.POSITIVE_INFINITY;
  const size = Math.floor((use * left) / perUnit + 1e-9);
  return size >= 1 ? size : left / perUnit >= 1 - 1e-9 ? 1 : 0;
}

/** Shortest rest in whole seconds with which this many sets are enough; undefined when none is. */
function shortestRest(question: SetQuestion, rules: Rules, count: number): number | undefined {
  const enough = (rest: number): boolean =>
    largestSets(question, rules, count, rest, rules.spareShare) !== undefined;
  let low = Math.ceil(rules.breakShortest);
  let high = LONGEST_TRIED;
  if (enough(low)) return low;
  if (!enough(high)) return undefined;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (enough(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** Sets each as large as allowed, when so many with such a rest are enough for the amount; else undefined. */
function largestSets(
  question: SetQuestion,
  rules: Rules,
  count: number,
  rest: number,
  use: number,
): readonly number[] | undefined {
  const free = rest * rules.recoverySpeed * question.muscleRecovery;
  const keepFast = Math.exp(-free / rules.refillFastSeconds);
  const keepSlow = Math.exp(-free / rules.refillSlowSeconds);
  const fastFull = question.full * rules.refillFastShare;
  const slowFull = question.full - fastFull;
  let { fast, slow } = question;
  let left = question.amount;
  const sizes: number[] = [];
  for (let set = 0; set < count; set += 1) {
    const size = allowed(fast + slow, question, rules, question.fastest, use);
    if (size <= 0) return undefined;
    sizes.push(size);
    left -= size;
    if (left <= 1e-9) return sizes;
    const kept = Math.max(0, 1 - size / question.unbroken / (fast + slow));
    fast = fastFull - (fastFull - fast * kept) * keepFast;
    slow = slowFull - (slowFull - slow * kept) * keepSlow;
  }
  return undefined;
}

/**
 * Sizes of so many sets with such a rest: each the same share of what is possible then, the smallest share that is enough, in whole
 * units, largest first.
 */
function sizesOf(question: SetQuestion, rules: Rules, count: number, rest: number): readonly number[] {
  let sizes = largestSets(question, rules, count, rest, rules.spareShare) ?? [question.amount];
  let low = 0;
  let high = rules.spareShare;
  for (let step = 0; step < 6; step += 1) {
    const use = (low + high) / 2;
    const tried = largestSets(question, rules, count, rest, use);
    if (tried) {
      sizes = tried;
      high = use;
    } else low = use;
  }
  return shareOut(question.amount, sizes);
}

/** Shares an amount out in proportion to given sizes, in whole units; what does not divide goes to the first sets. */
function shareOut(amount: number, sizes: readonly number[]): readonly number[] {
  const sum = sizes.reduce((total, size) => total + size, 0);
  const whole = Math.floor(amount);
  const exact = sizes.map((size) => (whole * size) / sum);
  const shares = exact.map((share) => Math.floor(share + 1e-9));
  let left = whole - shares.reduce((total, share) => total + share, 0);
  const order = exact
    .map((share, i) => ({ i, rest: share - (shares[i] ?? 0) }))
    .sort((a, b) => b.rest - a.rest || a.i - b.i);
  for (const { i } of order) {
    if (left <= 0) break;
    shares[i] = (shares[i] ?? 0) + 1;
    left -= 1;
  }
  const sorted = shares.filter((share) => share > 0).sort((a, b) => b - a);
  const fraction = amount - whole;
  if (fraction > 1e-9) sorted[sorted.length - 1] = (sorted.at(-1) ?? 0) + fraction;
  return sorted;
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
  const unbroken = amount <= allowed(question.fast + question.slow, question, rules, even, rules.spareShare);
  if (question.unbrokenOnly || (unbroken && even <= slowest)) {
    return { ...oneSet(question, even, restFirst), total: time + restFirst };
  }
  if (amount <= allowed(question.fast + question.slow, question, rules, fastest, EASY)) {
    // A small set is not broken up for want of hurry: the athlete breathes before it instead.
    const breathing = time - amount * slowest;
    return { ...oneSet(question, slowest, restFirst + breathing), total: time + restFirst };
  }
  const cycle = Math.min(slowest, Math.max(fastest, fastest * 1.1));
  const resting = Math.max(time - amount * cycle, (fast.sizes.length - 1) * fast.rest);
  const most = Math.max(2, Math.ceil(amount));
  const fewest = Math.min(most, Math.max(2, Math.ceil(resting / rules.breakLongest) + 1));
  for (let count = fewest; count <= most; count += 1) {
    const rest = Math.floor(resting / (count - 1));
    if (rest < rules.breakShortest) break;
    if (!largestSets(question, rules, count, rest, rules.spareShare)) continue;
    const sizes = sizesOf(question, rules, count, rest);
    const total = time + restFirst;
    return { ...fast, sizes, rest, cycle: (time - (sizes.length - 1) * rest) / amount, restFirst, total };
  }
  const breaks = (fast.sizes.length - 1) * fast.rest;
  return { ...fast, cycle: (time - breaks) / amount, restFirst, total: time + restFirst };
}

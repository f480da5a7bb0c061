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

/** Share of an unbroken set that comes back in a second of pause inside a cycle, for a half-tired muscle. */
export const refillPerIdleSecond = (rules: Rules, muscleRecovery: number): number =>
  ((rules.recoverySpeed * muscleRecovery) / 2) *
  (rules.refillFastShare / rules.refillFastSeconds + (1 - rules.refillFastShare) / rules.refillSlowSeconds);

/**
 * Largest set allowed with so much of the muscle left, at a cycle, when a share of what is possible may be used; in parts of a unit, so
 * that the time of an amount rises smoothly with it. A single is allowed wherever one is possible; 0 where none is.
 */
export function largestSet(
  left: number,
  { unbroken, held, fastest, muscleRecovery }: SetQuestion,
  rules: Rules,
  cycle: number,
  use: number,
): number {
  const perUnit = 1 / unbroken - (held ? 0 : refillPerIdleSecond(rules, muscleRecovery) * (cycle - fastest));
  if (perUnit <= 0) return Number.POSITIVE_INFINITY;
  const size = (use * left) / perUnit;
  return size >= 1 ? size : left / perUnit >= 1 - 1e-9 ? 1 : 0;
}

/** Seconds of a break that really rest a muscle. */
export const restIn = (seconds: number, rules: Rules): number => Math.max(0, seconds - rules.breakHandling);

/**
 * Whether so many sets, each as large as allowed, with such a rest between them reach the amount. The sizes are put into `sizes` where
 * it is given.
 */
export function setsReach(
  question: SetQuestion,
  rules: Rules,
  count: number,
  rest: number,
  use: number,
  sizes?: number[],
): boolean {
  const free = restIn(rest, rules) * rules.recoverySpeed * question.muscleRecovery;
  const keepFast = Math.exp(-free / rules.refillFastSeconds);
  const keepSlow = Math.exp(-free / rules.refillSlowSeconds);
  const fastFull = question.full * rules.refillFastShare;
  const slowFull = question.full - fastFull;
  const perUnit = 1 / question.unbroken;
  let { fast, slow } = question;
  let left = question.amount;
  for (let set = 0; set < count; set += 1) {
    const size = largestSet(fast + slow, question, rules, question.fastest, use);
    if (size <= 0) return false;
    sizes?.push(size);
    left -= size;
    if (left <= 1e-9) return true;
    const kept = Math.max(0, 1 - (size * perUnit) / (fast + slow));
    fast = fastFull - (fastFull - fast * kept) * keepFast;
    slow = slowFull - (slowFull - slow * kept) * keepSlow;
  }
  return false;
}

/**
 * Sizes of so many sets with such a rest: each the same share of what is possible then, the smallest share that is enough, in whole
 * units, largest first.
 */
export function evenSets(
  question: SetQuestion,
  rules: Rules,
  count: number,
  rest: number,
): readonly number[] {
  let low = 0;
  let high = rules.spareShare;
  for (let step = 0; step < 6; step += 1) {
    const use = (low + high) / 2;
    if (setsReach(question, rules, count, rest, use)) high = use;
    else low = use;
  }
  const sizes: number[] = [];
  setsReach(question, rules, count, rest, high, sizes);
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

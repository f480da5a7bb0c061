import { fastRefilled, type Refill, refillLaw, slowRefilled } from "../motion/refill-law.ts";
import type { Rules } from "../motion/rules.ts";

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

const refillIn = (rest: number, { full, muscleRecovery }: SetQuestion, rules: Rules): Refill =>
  refillLaw(rules, full, restIn(rest, rules) * rules.recoverySpeed * muscleRecovery);

/** Units that so many sets, each as large as allowed, reach with such a rest between them. */
export function setsReach(
  question: SetQuestion,
  rules: Rules,
  count: number,
  rest: number,
  use: number,
): number {
  const refill = refillIn(rest, question, rules);
  const perUnit = 1 / question.unbroken;
  let { fast, slow } = question;
  let reached = 0;
  for (let set = 0; set < count; set += 1) {
    const size = largestSet(fast + slow, question, rules, question.fastest, use);
    if (size <= 0) return reached;
    reached += size;
    const kept = Math.max(0, 1 - (size * perUnit) / (fast + slow));
    fast = fastRefilled(fast * kept, refill);
    slow = slowRefilled(slow * kept, refill);
  }
  return reached;
}

/** Least that is left of the muscle after such a rest between any of so many singles, in units. */
export function leftForSingles(question: SetQuestion, rules: Rules, count: number, rest: number): number {
  const refill = refillIn(rest, question, rules);
  let { fast, slow } = question;
  let least = Number.POSITIVE_INFINITY;
  for (let set = 0; set < count; set += 1) {
    const left = fast + slow;
    if (set > 0) least = Math.min(least, left * question.unbroken);
    const kept = Math.max(0, 1 - 1 / question.unbroken / left);
    fast = fastRefilled(fast * kept, refill);
    slow = slowRefilled(slow * kept, refill);
  }
  return least;
}

/**
 * Sizes of at most so many sets with such a rest, in whole units, none larger than the one before and none larger than what is possible
 * then: each takes the same share of that, the smallest share that is enough; `use` is that share. Undefined where even all of it is
 * not enough.
 */
export function evenSets(
  question: SetQuestion,
  rules: Rules,
  count: number,
  rest: number,
): { readonly sizes: readonly number[]; readonly use: number } | undefined {
  let found = wholeSets(question, rules, count, rest, 1);
  if (!found) return undefined;
  let low = 0;
  let high = 1;
  for (let step = 0; step < 7; step += 1) {
    const use = (low + high) / 2;
    const tried = wholeSets(question, rules, count, rest, use);
    if (tried) {
      found = tried;
      high = use;
    } else low = use;
  }
  return { sizes: found, use: high };
}

function wholeSets(
  question: SetQuestion,
  rules: Rules,
  count: number,
  rest: number,
  use: number,
): readonly number[] | undefined {
  const refill = refillIn(rest, question, rules);
  let { fast, slow } = question;
  let left = question.amount;
  let before = Number.POSITIVE_INFINITY;
  const sizes: number[] = [];
  for (let set = 0; set < count; set += 1) {
    const whole = Math.floor(largestSet(fast + slow, question, rules, question.fastest, use) + 1e-9);
    const size = Math.min(before, whole, left);
    if (size <= 0) return undefined;
    sizes.push(size);
    left -= size;
    if (left <= 1e-9) return sizes;
    // What is left of a unit at the end belongs to the last set.
    if (left < 1 && set === count - 1) return undefined;
    before = size;
    const kept = Math.max(0, 1 - size / question.unbroken / (fast + slow));
    fast = fastRefilled(fast * kept, refill);
    slow = slowRefilled(slow * kept, refill);
  }
  return undefined;
}

import { fastRefilled, type Refill, muscleRefillLaw, slowRefilled } from "../motion/refill-law.ts";
import type { Rules } from "../motion/rules.ts";
import type { GivenSets } from "../motion/track.ts";

/** What is asked: an amount to be done by a muscle in a known state. Shares are of an unbroken set from fresh. */
export type SetQuestion = {
  readonly amount: number;
  /** Seconds per unit of the fastest cycle. */
  readonly fastest: number;
  /** Units possible unbroken from fresh at that cycle. */
  readonly unbroken: number;
  /** Seconds from one unit to the next that a load near the best lift asks for in repeated work; 0 without. */
  readonly apart: number;
  /** Whether every rep begins on the floor, at a load of which reps are done one at a time. */
  readonly singly?: boolean;
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
  /** Whether a breath may be taken before the first unit: not at the start, nor right after a rest. */
  readonly mayBreathe: boolean;
  /** Sets that somebody has settled. */
  readonly given?: GivenSets;
};

/** Share of an unbroken set that comes back in a second of pause inside a cycle, for a half-tired muscle. */
export const refillPerIdleSecond = (rules: Rules, muscleRecovery: number): number =>
  ((rules.recoverySpeed * muscleRecovery) / 2) *
  (rules.muscleFastShare / rules.muscleFastSeconds + (1 - rules.muscleFastShare) / rules.muscleSlowSeconds);

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

/** What a break of a length does to the muscle asked about. */
export const refillIn = (rest: number, { full, muscleRecovery }: SetQuestion, rules: Rules): Refill =>
  muscleRefillLaw(rules, full, restIn(rest, rules) * rules.recoverySpeed * muscleRecovery);

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

import type { Rules } from "../motion/rules.ts";
import { largestSet, type SetQuestion } from "./largest-sets.ts";

/** Slowest sensible seconds per unit in a set of a movement in which something is held. */
export const slowestCycle = (fastest: number, rules: Rules): number =>
  fastest * (fastest < rules.ownRhythm ? rules.easyInSet : rules.slowestInSet);

/**
 * Seconds a person takes at most over an amount, however much breath is to be had: reps in a rhythm that is drawn out as far as it goes, and
 * the longest breath before the first rep and between sets that are all easy. Infinite where nothing is held, so that the rhythm can be as
 * slow as one likes.
 *
 * @param length seconds of the whole work
 */
export function longestTime(question: SetQuestion, rules: Rules, length: number): number {
  const { amount, fastest, fast, slow, held, mayBreathe, unbrokenOnly } = question;
  if (!held || !Number.isFinite(question.unbroken)) return Number.POSITIVE_INFINITY;
  const easy = largestSet(fast + slow, question, rules, fastest, rules.easySet);
  const gaps = unbrokenOnly || amount <= easy ? 0 : Math.ceil(amount / Math.max(1, easy)) - 1;
  if (gaps > 0 && length > rules.restsAreBreaths) return Number.POSITIVE_INFINITY;
  const rests = (gaps + (mayBreathe ? 1 : 0)) * rules.breathLongest;
  return rests + amount * slowestCycle(fastest, rules);
}

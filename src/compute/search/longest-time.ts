import type { Rules } from "../motion/rules.ts";
import { largestSet, type SetQuestion } from "./largest-sets.ts";

/** A set of at most this share of what is possible is never broken. */
export const EASY = 0.5;

/** A rep shorter than this, such as a turn of the rope, has a rhythm of its own that cannot be drawn out; seconds. */
const OWN_RHYTHM = 0.8;

/** Slowest sensible seconds per unit in a set of a movement in which something is held. */
export const slowestCycle = (fastest: number, rules: Rules): number =>
  fastest * (fastest < OWN_RHYTHM ? rules.easyInSet : rules.slowestInSet);

/** Length of work up to which rests are a few breaths; in longer work they are as long as it takes. Seconds. */
const SHORT_WORK = 1200;

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
  const easy = largestSet(fast + slow, question, rules, fastest, EASY);
  const gaps = unbrokenOnly || amount <= easy ? 0 : Math.ceil(amount / Math.max(1, easy)) - 1;
  if (gaps > 0 && length > SHORT_WORK) return Number.POSITIVE_INFINITY;
  const rests = (gaps + (mayBreathe ? 1 : 0)) * rules.breathLongest;
  return rests + amount * slowestCycle(fastest, rules);
}

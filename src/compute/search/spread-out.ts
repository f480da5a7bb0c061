import { evenSets } from "./even-sets.ts";
import { largestSet, type SetQuestion } from "./largest-sets.ts";
import type { SetPlan } from "./set-plan.ts";
import type { Rules } from "../motion/rules.ts";

/** A set of at most this share of what is possible is never broken. */
const EASY = 0.5;

/**
 * Sets for more time than the fastest way needs. What is left over goes into the rhythm of the reps, as far as something held lets it be
 * drawn out, then into a breath before the first set and rests between them, all of one length. The fewest sets are taken whose
 * rests are no longer than the longest sensible one; a set that is easy is not broken, however long the breath before it.
 *
 * @param fast the fastest way, for where nothing else fits
 * @param time seconds to spend from here on
 * @param waited seconds of rest that were needed before
 */
export function spreadOut(
  question: SetQuestion,
  rules: Rules,
  fast: SetPlan,
  time: number,
  waited: number,
): SetPlan {
  const total = time + waited;
  const unbroken = inOneSet(question, rules, time);
  if (unbroken) return { ...fast, ...unbroken, restFirst: waited + unbroken.restFirst, total };
  const broken = inFewSets(question, rules, time);
  if (broken) return { ...fast, ...broken, restFirst: waited + broken.restFirst, total };
  const breaks = (fast.sizes.length - 1) * fast.rest;
  return { ...fast, cycle: (time - breaks) / question.amount, restFirst: waited, total };
}

type Spread = Pick<SetPlan, "sizes" | "rest" | "cycle" | "restFirst">;

/** All of it in one set, with a breath before it where that helps; undefined where that is too much or leaves too much time. */
function inOneSet(question: SetQuestion, rules: Rules, time: number): Spread | undefined {
  const { amount, fastest, fast, slow, held, unbrokenOnly, mayBreathe } = question;
  const even = time / amount;
  const one = { sizes: [amount], rest: 0 };
  if (unbrokenOnly) return { ...one, cycle: even, restFirst: 0 };
  const slowest = held ? fastest * rules.slowestInSet : Number.POSITIVE_INFINITY;
  const reach = (use: number, cycle: number): number => largestSet(fast + slow, question, rules, cycle, use);
  const easy = amount <= reach(EASY, fastest);
  if (!easy && amount > reach(rules.spareShare, Math.min(even, slowest))) return undefined;
  const natural = Math.min(even, held ? fastest * rules.easyInSet : even);
  const breath = time - amount * natural;
  if (mayBreathe && breath <= rules.breathLongest) return { ...one, cycle: natural, restFirst: breath };
  const cycle = mayBreathe ? Math.min(even, slowest) : even;
  const waiting = time - amount * cycle;
  if (!easy && (waiting > rules.breathLongest + 1e-9 || cycle > slowest + 1e-9)) return undefined;
  return { ...one, cycle, restFirst: waiting };
}

/** The fewest even sets whose rests, and the breath before them, are none too long. */
function inFewSets(question: SetQuestion, rules: Rules, time: number): Spread | undefined {
  const { amount, fastest } = question;
  const most = Math.ceil(amount);
  for (let count = 2; count <= most; count += 1) {
    const gaps = question.mayBreathe ? count : count - 1;
    const relaxed = time - amount * fastest * rules.easyInSet;
    const hurried = time - amount * fastest;
    const drawnOut = time - amount * fastest * rules.slowestInSet;
    if (drawnOut / gaps > rules.breakLongest) continue;
    const wanted = Math.max(relaxed / gaps, rules.breakShortest);
    const rest = Math.min(rules.breakLongest, wanted, hurried / gaps);
    if (rest < rules.breakShortest - 1e-9) return undefined;
    const sets = evenSets(question, rules, count, rest, rules.spareShare);
    if (!sets || sets.use > rules.spareShare + 1e-9) continue;
    const breaks = (sets.sizes.length - 1) * rest;
    const restFirst = question.mayBreathe ? Math.min(rest, rules.breathLongest) : 0;
    return { sizes: sets.sizes, rest, cycle: (time - breaks - restFirst) / amount, restFirst };
  }
  return undefined;
}

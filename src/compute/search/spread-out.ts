import { type CoachSets, coachSets, type Shapes } from "./coach-sets.ts";
import { useOf } from "./even-sets.ts";
import { largestSet, type SetQuestion } from "./largest-sets.ts";
import { slowestCycle } from "./longest-time.ts";
import type { SetPlan } from "./set-plan.ts";
import type { Rules } from "../motion/rules.ts";
import { SEARCH_FIXED } from "./fixed-constants.ts";

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

/** Shares of an easy rhythm's ease that are given up for rest, and how much nearer to failure sets then come. */
const HURRIES = [
  [1, 0],
  [0.5, 0],
  [0, 0],
  [0, 0.1],
  [0, 0.2],
] as const;

/** Times the slowest rhythm of something held at which reps are no set any more: it is put down instead. Judgement. */
const DRAWN_TOO_FAR = SEARCH_FIXED.drawnTooFar.value;

/** What a hurried rhythm must save of what a coach dislikes about sets. Judgement. */
const HURRY = 1;

/** Units from which an easy set is parted rather than stood before. Judgement. */
const LEAST_PARTED = SEARCH_FIXED.leastParted.value;

type Spread = Pick<SetPlan, "sizes" | "rest" | "cycle" | "restFirst">;

/** All of it in one set, with a breath before it where that helps; undefined where that is too much or leaves too much time. */
function inOneSet(question: SetQuestion, rules: Rules, time: number): Spread | undefined {
  const { amount, fastest, fast, slow, held, unbrokenOnly, mayBreathe } = question;
  const even = time / amount;
  const one = { sizes: [amount], rest: 0 };
  if (unbrokenOnly) return { ...one, cycle: even, restFirst: 0 };
  const slowest = held ? slowestCycle(fastest, rules) : Number.POSITIVE_INFINITY;
  const reach = (use: number, cycle: number): number => largestSet(fast + slow, question, rules, cycle, use);
  const easy = amount <= reach(rules.easySet, fastest);
  if (!easy && amount > reach(rules.spareShare, Math.min(even, slowest))) return undefined;
  const natural = Math.min(even, held ? fastest * rules.easyInSet : even);
  // Where no breath may be taken first, an easy set is not drawn out until it is no rhythm any more.
  if (!mayBreathe && amount >= 2 && even > DRAWN_TOO_FAR * slowest) return undefined;
  const breath = time - amount * natural;
  if (mayBreathe && breath <= rules.fewBreaths) return { ...one, cycle: natural, restFirst: breath };
  const cycle = mayBreathe ? Math.min((time - rules.fewBreaths) / amount, slowest) : even;
  const waiting = time - amount * cycle;
  // Nobody stands before a set however easy it is: the wait is worth more between two halves of it.
  const isWorthParting = !easy || amount >= LEAST_PARTED;
  if (isWorthParting && (waiting > rules.breathLongest + 1e-9 || cycle > slowest + 1e-9)) return undefined;
  return { ...one, cycle, restFirst: waiting };
}

/**
 * The sets a coach would write for the time that an easy rhythm leaves, or a hurried one where that leaves too little; the rhythm is drawn out
 * where rests would else be too long.
 */
function inFewSets(question: SetQuestion, rules: Rules, time: number): Spread | undefined {
  const { amount, fastest } = question;
  let best: { readonly sets: CoachSets; readonly cycle: number } | undefined;
  const shapes: Shapes = new Map();
  for (const [rhythm, more] of HURRIES) {
    const cycle = fastest * (1 + rhythm * (rules.easyInSet - 1));
    const sets = coachSets(question, rules, time - amount * cycle, rules.spareShare + more, shapes);
    if (sets && (!best || sets.dislike < best.sets.dislike - HURRY)) best = { sets, cycle };
  }
  return best && drawnOut(question, rules, time, best.sets, best.cycle);
}

/** Slows the rhythm down where rests would else be longer than is sensible, as far as the sets stay possible with the shorter ones. */
function drawnOut(
  question: SetQuestion,
  rules: Rules,
  time: number,
  { sizes, restFirst }: CoachSets,
  rhythm: number,
): Spread {
  const { amount, fastest } = question;
  const breaks = sizes.length - 1;
  const restAt = (cycle: number): number => (time - restFirst - amount * cycle) / breaks;
  const wanted = (time - restFirst - breaks * rules.breakLongest) / amount;
  const cycle = Math.max(rhythm, Math.min(slowestCycle(fastest, rules), wanted));
  const use = useOf(question, rules, sizes, restAt(cycle));
  const kept = use !== undefined && use <= rules.spareShare + HURRIES[3][1] ? cycle : rhythm;
  return { sizes, restFirst, cycle: kept, rest: restAt(kept) };
}

import type { Rules } from "../motion/rules.ts";
import { FIVES_FROM, useOf } from "./even-sets.ts";
import { largestSet, type SetQuestion } from "./largest-sets.ts";
import { SEARCH_FIXED } from "./fixed-constants.ts";

/** Sets as a coach would write them, with the rest before the first and between two. */
export type CoachSets = {
  readonly sizes: readonly number[];
  readonly rest: number;
  readonly restFirst: number;
  /** How much a coach would dislike them; only to be compared. */
  readonly dislike: number;
};

/** Ways to part one amount, by their number of sets. */
export type Shapes = Map<number, readonly (readonly number[])[]>;

/** How fast sets fall from one to the next: a factor on each after the first. */
const FALLS = SEARCH_FIXED.setFalls.value;
/** How many times as large as those after it a first set may be where all others are equal. */
const FIRST_OF_TAIL = SEARCH_FIXED.firstOfTail.value;
/** Numbers of sets tried above the fewest, one by one; beyond that each is so much larger than the one before. */
const ONE_BY_ONE = 5;
const FURTHER = 1.35;

/**
 * What a coach dislikes about sets, on one scale; judgement, tried on thirty situations written down beforehand. A break more matters less
 * the more there are; a rest longer than ten seconds, a last set of less than half of the first, and a set near failure are avoided, and so
 * are a few twos among singles; equal sets and whole fives are easier to keep.
 */
const DISLIKE = SEARCH_FIXED.setDislikes.value;

/**
 * The sets a coach would write for an amount where so many seconds are there for rests: few of them, with short rests, falling gently, none
 * near failure. Numbers of sets and ways to fall are tried one after the other and the one with least to dislike is taken; of equals the one
 * with fewer sets. Undefined where none of them is possible.
 *
 * @param resting seconds for all rests together, the breath before the first set included
 * @param most largest share of what is possible then that a set may take
 * @param shapes the ways to part the amount by their number of sets, kept by whoever asks for the same amount again
 */
export function coachSets(
  question: SetQuestion,
  rules: Rules,
  resting: number,
  most: number,
  shapes: Shapes = new Map(),
): CoachSets | undefined {
  const { amount, fast, slow, fastest } = question;
  if (!Number.isInteger(amount)) return undefined;
  const first = Math.floor(largestSet(fast + slow, question, rules, fastest, most) + 1e-9);
  if (first < 1) return undefined;
  let best: CoachSets | undefined;
  for (const count of countsFrom(Math.max(2, Math.ceil(amount / first)), amount)) {
    const { rest, restFirst } = restsFor(question, rules, resting, count);
    if (rest < rules.breakShortest - 1e-9) break;
    // Nothing makes up for so many breaks, and more are disliked more.
    if (best && DISLIKE.break * Math.log(count) - DISLIKE.even >= best.dislike - 1e-9) break;
    if (best && leastDislike(count, rest) >= best.dislike - 1e-9) continue;
    const ofCount = shapes.get(count) ?? [...shapesOf(amount, count)];
    shapes.set(count, ofCount);
    for (const sizes of ofCount) {
      if ((sizes[0] as number) > first && first > 1) continue;
      // Sets that are disliked too much however easy they are need not be followed.
      if (best && dislikeOf(sizes, rest, 0, rules) >= best.dislike - 1e-9) continue;
      const use = useOf(question, rules, sizes, rest);
      if (use === undefined || use > most + 1e-9) continue;
      const dislike = dislikeOf(sizes, rest, use, rules);
      if (!best || dislike < best.dislike - 1e-9) best = { sizes, rest, restFirst, dislike };
    }
  }
  return best;
}

/** Rests of one length, the first of them before the first set where a breath may be taken there, but no longer than that may be. */
function restsFor(
  { mayBreathe }: SetQuestion,
  rules: Rules,
  resting: number,
  count: number,
): Pick<CoachSets, "rest" | "restFirst"> {
  if (!mayBreathe) return { rest: resting / (count - 1), restFirst: 0 };
  const restFirst = Math.min(resting / count, rules.breathLongest);
  return { rest: (resting - restFirst) / (count - 1), restFirst };
}

function* countsFrom(fewest: number, most: number): Generator<number> {
  for (let count = fewest, tried = 0; count <= most; tried += 1) {
    yield count;
    count = tried < ONE_BY_ONE ? count + 1 : Math.ceil(count * FURTHER);
    if (count > most && count < most * FURTHER && tried >= ONE_BY_ONE) yield most;
  }
}

/** Ways to part an amount into so many whole sets, the evenest first; none larger than the one before. */
function* shapesOf(amount: number, count: number): Generator<readonly number[]> {
  if (amount >= FIVES_FROM && amount % 5 === 0 && count <= amount / 5)
    yield parted(amount / 5, count, 1).map((fives) => 5 * fives);
  const seen: (readonly number[])[] = [];
  for (const fall of FALLS) {
    const sizes = parted(amount, count, fall);
    if (seen.some((other) => other.every((size, i) => size === sizes[i]))) continue;
    seen.push(sizes);
    yield sizes;
  }
  // A large first set, then equal ones: what comes back in each rest is about the same.
  for (const share of FIRST_OF_TAIL) {
    const first = Math.ceil((share * amount) / (count - 1 + share));
    if (count > 1 && amount - first >= count - 1) yield [first, ...parted(amount - first, count - 1, 1)];
  }
}

/** A whole number parted in the proportion of falling powers, each at least one; what rounding leaves goes to the first ones. */
function parted(whole: number, count: number, fall: number): readonly number[] {
  const sum = fall === 1 ? count : (1 - fall ** count) / (1 - fall);
  const sizes = Array.from({ length: count }, (_, i) => Math.max(1, Math.floor((whole * fall ** i) / sum)));
  let left = whole - sizes.reduce((all, size) => all + size, 0);
  for (let i = 0; left > 0; i = (i + 1) % count, left -= 1) sizes[i] = (sizes[i] as number) + 1;
  for (let i = 0; left < 0 && i < count; i += 1) {
    const taken = Math.min(-left, (sizes[i] as number) - 1);
    sizes[i] = (sizes[i] as number) - taken;
    left += taken;
  }
  return sizes.sort((a, b) => b - a);
}

/** What is disliked about a number of sets and their rests, however the sets fall. */
const leastDislike = (count: number, rest: number): number =>
  DISLIKE.break * Math.log(count) + DISLIKE.longRest * Math.max(0, rest - DISLIKE.fromRest) - DISLIKE.even;

function dislikeOf(sizes: readonly number[], rest: number, use: number, rules: Rules): number {
  const [first = 1] = sizes;
  const last = sizes.at(-1) ?? first;
  // Between one rep and two no fall is felt.
  const fall = first <= 2 ? 0 : Math.max(0, DISLIKE.fallFrom - last / first);
  return (
    DISLIKE.break * Math.log(sizes.length) +
    DISLIKE.longRest * Math.max(0, rest - DISLIKE.fromRest) +
    DISLIKE.fall * fall +
    DISLIKE.nearFailure * Math.max(0, use - rules.spareShare) +
    DISLIKE.oddTwos * Number(first === 2 && sizes.filter((size) => size === 1).length * 2 > sizes.length) -
    (first === last ? DISLIKE.even : 0)
  );
}

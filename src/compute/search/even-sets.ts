import { fastRefilled, slowRefilled } from "../motion/refill-law.ts";
import { largestSet, refillIn, type SetQuestion } from "./largest-sets.ts";
import type { Rules } from "../motion/rules.ts";
import { SEARCH_FIXED } from "./fixed-constants.ts";

/** Sizes of sets in order, and the largest share of what is possible then that any of them takes. */
type EvenSets = { readonly sizes: readonly number[]; readonly use: number };

/** From this amount on, whole fives are tried: they are easier to count. */
export const FIVES_FROM = SEARCH_FIXED.fivesFrom.value;
/** Set sizes are tried in steps of this share. */
const STEP = 0.08;

/**
 * Sizes of so many sets with such a rest between them, as a coach would write them: in fives where the amount is large and whole fives
 * go in, else as even as whole units allow, each within a share of what is possible then; where even sets are too much, as large as
 * that share allows up to the smallest first set that is enough. No set is larger than the one before. Where none keeps to the share,
 * the sets that need the least of it; undefined where more than all would be needed.
 *
 * @param most share of what is possible that a set of more than one unit may take
 */
export function evenSets(
  question: SetQuestion,
  rules: Rules,
  count: number,
  rest: number,
  most: number,
): EvenSets | undefined {
  let best: EvenSets | undefined;
  for (const wanted of candidates(question, rules, count, most)) {
    const sets = fitSets(question, rules, wanted, rest);
    if (!sets) continue;
    if (sets.use <= most + 1e-9) return sets;
    if (!best || sets.use < best.use) best = sets;
  }
  return best;
}

/**
 * The largest share of what is possible then that sets of given sizes take, with such a rest between them; undefined where one is more than
 * is possible.
 */
export const useOf = (
  question: SetQuestion,
  rules: Rules,
  sizes: readonly number[],
  rest: number,
): number | undefined => fitSets(question, rules, { sizes }, rest)?.use;

/** What is wanted of each set: exact sizes that add up, or a cap on every one and a share of what is possible. */
type Wanted =
  | { readonly sizes: readonly number[] }
  | { readonly count: number; readonly cap: number; readonly most: number };

function* candidates(question: SetQuestion, rules: Rules, count: number, most: number): Generator<Wanted> {
  const { amount, fast, slow, fastest } = question;
  const whole = Number.isInteger(amount);
  if (whole && amount >= FIVES_FROM && amount % 5 === 0 && count <= amount / 5)
    yield { sizes: shared(amount / 5, count).map((fives) => 5 * fives) };
  if (whole && count <= amount) yield { sizes: shared(amount, count) };
  const first = Math.floor(largestSet(fast + slow, question, rules, fastest, 1) + 1e-9);
  for (const share of most < 1 ? [most, 1] : [1])
    for (let cap = Math.ceil(amount / count); cap <= first; cap += Math.max(1, Math.floor(cap * STEP)))
      yield { count, cap, most: share };
}

/** A whole number shared out as evenly as whole numbers allow, the larger shares first. */
const shared = (whole: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => Math.floor(whole / count) + (i < whole % count ? 1 : 0));

/** The largest whole set wanted where so much is possible; a single wherever one is. */
const cappedAt = (wanted: Wanted, possible: number): number =>
  "cap" in wanted
    ? Math.min(wanted.cap, Math.max(Math.min(1, possible), Math.floor(possible * wanted.most + 1e-9)))
    : 0;

/** The sets wanted, as far as the muscle allows them; undefined where they do not add up to the amount. */
function fitSets(question: SetQuestion, rules: Rules, wanted: Wanted, rest: number): EvenSets | undefined {
  const refill = refillIn(rest, question, rules);
  const exact = "sizes" in wanted ? wanted.sizes : undefined;
  const count = "sizes" in wanted ? wanted.sizes.length : wanted.count;
  let { fast, slow } = question;
  let left = question.amount;
  let before = Number.POSITIVE_INFINITY;
  let use = 0;
  const sizes: number[] = [];
  for (let set = 0; set < count; set += 1) {
    const possible = largestSet(fast + slow, question, rules, question.fastest, 1);
    const size = exact?.[set] ?? Math.min(before, cappedAt(wanted, possible), left);
    if (size <= 0 || size > Math.max(possible, possible >= 1 - 1e-9 ? 1 : 0) + 1e-9) return undefined;
    sizes.push(size);
    if (size > 1) use = Math.max(use, size / possible);
    left -= size;
    if (left <= 1e-9) return { sizes, use };
    // What is left of a unit at the end belongs to the last set.
    if (left < 1 && set === count - 1) return undefined;
    before = size;
    const kept = Math.max(0, 1 - size / question.unbroken / (fast + slow));
    fast = fastRefilled(fast * kept, refill);
    slow = slowRefilled(slow * kept, refill);
  }
  return undefined;
}

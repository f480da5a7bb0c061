import { evenSets, useOf } from "./even-sets.ts";
import type { SetQuestion } from "./largest-sets.ts";
import { LONGEST_TRIED } from "./least-time.ts";
import type { SetPlan } from "./set-plan.ts";
import type { Rules } from "../motion/rules.ts";
import { spacedSets } from "./spaced-sets.ts";

/** The shortest rest that is enough is found to this, seconds. */
const REST_TO = 0.25;

/**
 * Sets that somebody has settled, with what they leave open: the shortest rest with which sizes that are given are possible, or the
 * fewest even sets for a rest that is given. Rests that are not given are also as long as a load near the best asks for between its reps.
 * Time beyond what they need goes into the cycle, then into rests that are not given, then into a breath; of such a load all into rests. Undefined where nothing is given, or where it is not possible as given: then it is for the caller
 * to tell, and nothing is bent.
 *
 * @param time seconds the work should take, breaks included; less than possible gives the fastest possible
 */
export function givenSets(question: SetQuestion, rules: Rules, time: number): SetPlan | undefined {
  const { given, amount, fastest, unbrokenOnly } = question;
  if (given === undefined || unbrokenOnly) return undefined;
  const found =
    given.sizes === undefined
      ? fewestSets(question, rules, given.rest ?? rules.breakShortest)
      : sizedSets(question, rules, sizesFor(given.sizes, amount), given.rest);
  if (!found) return undefined;
  const gaps = found.sizes.length - 1;
  const byMuscle = amount * fastest + gaps * found.rest;
  const spaced =
    given.rest === undefined && gaps > 0 ? spacedSets(question, rules, byMuscle)?.total : undefined;
  const leastTotal = spaced ?? byMuscle;
  const rest = spaced === undefined ? found.rest : (spaced - amount * fastest) / gaps;
  const spare = Math.max(0, time - leastTotal);
  const drawn = spaced === undefined ? Math.min(spare, amount * fastest * (rules.easyInSet - 1)) : 0;
  const longer = given.rest === undefined ? Math.max(0, rules.breakLongest - rest) * gaps : 0;
  const rested = spaced === undefined ? Math.min(spare - drawn, longer) : spare;
  const left = spare - drawn - rested;
  const breath = question.mayBreathe ? Math.min(left, rules.breathLongest) : 0;
  return {
    sizes: found.sizes,
    rest: rest + (gaps > 0 ? rested / gaps : 0),
    cycle: fastest + (drawn + left - breath) / amount,
    restFirst: breath,
    total: leastTotal + spare,
    leastTotal,
  };
}

/** Sizes in order up to an amount; one alone is repeated, and the last set takes what is left. */
function sizesFor(sizes: readonly number[], amount: number): readonly number[] {
  const taken: number[] = [];
  let left = amount;
  for (let set = 0; left > 1e-9; set += 1) {
    const size = Math.min(left, (sizes.length === 1 ? sizes[0] : sizes[set]) ?? left);
    taken.push(size);
    left -= size;
  }
  return taken;
}

type Found = { readonly sizes: readonly number[]; readonly rest: number };

/** The sizes with the rest given, or the shortest that is enough; undefined where the muscle cannot. */
function sizedSets(
  question: SetQuestion,
  rules: Rules,
  sizes: readonly number[],
  rest: number | undefined,
): Found | undefined {
  const isPossible = (each: number): boolean => useOf(question, rules, sizes, each) !== undefined;
  if (rest !== undefined) return isPossible(rest) ? { sizes, rest } : undefined;
  if (isPossible(rules.breakShortest)) return { sizes, rest: rules.breakShortest };
  let [low, high]: [number, number] = [rules.breakShortest, LONGEST_TRIED];
  if (!isPossible(high)) return undefined;
  while (high - low > REST_TO) {
    const middle = (low + high) / 2;
    if (isPossible(middle)) high = middle;
    else low = middle;
  }
  return { sizes, rest: high };
}

/** The fewest even sets that keep reps to spare with such a rest between them. */
function fewestSets(question: SetQuestion, rules: Rules, rest: number): Found | undefined {
  for (let count = 1; count <= Math.ceil(question.amount); count += 1) {
    const sets = evenSets(question, rules, count, rest, rules.spareShare);
    if (sets && sets.use <= rules.spareShare + 1e-9) return { sizes: sets.sizes, rest };
  }
  return undefined;
}

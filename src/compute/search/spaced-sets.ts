import type { Rules } from "../motion/rules.ts";
import { useOf } from "./even-sets.ts";
import { largestSet, type SetQuestion } from "./largest-sets.ts";
import type { SetPlan } from "./set-plan.ts";

/**
 * Sets of a load so near the best lift that its reps need a distance of their own, whatever the muscles could do: what is easily done in one
 * set comes at once, every rep beyond it takes that distance. Singles of a heavy bar that comes from the floor for every rep; of one that
 * would have to be brought up again, and of lighter ones, twos and threes with the same mean distance. Undefined where it asks for no more
 * than the muscles do.
 *
 * @param least seconds of the fastest way by the muscles
 */
export function spacedSets(
  question: SetQuestion,
  rules: Rules,
  least: number,
): Pick<SetPlan, "sizes" | "rest" | "total"> | undefined {
  const { amount, apart, fastest, fast, slow, unbrokenOnly, singly } = question;
  if (!(apart > fastest) || amount < 2 || unbrokenOnly || !Number.isInteger(amount)) return undefined;
  const together = Math.floor(rules.repsTogether);
  const possible = Math.floor(largestSet(fast + slow, question, rules, fastest, rules.spareShare));
  const atOnce = Math.max(1, singly ? Math.min(possible, together) : possible);
  const total = amount * fastest + Math.max(0, amount - atOnce) * (apart - fastest);
  if (total <= least) return undefined;
  for (let size = singly ? 1 : Math.min(together, atOnce); size >= 1; size -= 1) {
    const spaced = { ...inSetsOf(size, amount, total - amount * fastest), total };
    if (spaced.sizes.length < 2) return undefined;
    if (size === 1 || useOf(question, rules, spaced.sizes, spaced.rest) !== undefined) return spaced;
  }
  return undefined;
}

/** An amount in sets of one size, the last of what is left, with seconds of rest shared out between them. */
function inSetsOf(size: number, amount: number, resting: number): Pick<SetPlan, "sizes" | "rest"> {
  const count = Math.ceil(amount / size);
  const sizes = Array.from({ length: count }, (_, i) => Math.min(size, amount - i * size));
  return { sizes, rest: resting / Math.max(1, count - 1) };
}

/** A plan of twos and threes of a heavy bar from the floor as singles, where they are so far apart that the bar is let go after each anyway. */
export function asSingles(question: SetQuestion, rules: Rules, plan: SetPlan): SetPlan {
  const { singly, amount } = question;
  const [first = amount] = plan.sizes;
  const time = plan.total - plan.restFirst;
  const isApart = time / amount >= rules.singlesApart;
  if (!singly || plan.sizes.length < 2 || !Number.isInteger(amount) || !isApart || first > rules.repsTogether)
    return plan;
  return { ...plan, ...inSetsOf(1, amount, time - amount * plan.cycle) };
}

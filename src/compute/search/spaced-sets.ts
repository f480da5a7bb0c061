import type { Rules } from "../motion/rules.ts";
import { largestSet, type SetQuestion } from "./largest-sets.ts";

/**
 * Sets of a load so near the best lift that its reps need a distance of their own, whatever the muscles could do: what is easily done in one
 * set comes at once, every rep beyond it takes that distance. Singles where it is long, twos and threes with the same mean distance where
 * it is short. Undefined where it asks for no more than the muscles do.
 *
 * @param least seconds of the fastest way by the muscles
 */
export function spacedSets(
  question: SetQuestion,
  rules: Rules,
  least: number,
): { readonly sizes: readonly number[]; readonly rest: number; readonly total: number } | undefined {
  const { amount, apart, fastest, fast, slow, unbrokenOnly } = question;
  if (!(apart > fastest) || amount < 2 || unbrokenOnly || !Number.isInteger(amount)) return undefined;
  const atOnce = Math.max(1, Math.floor(largestSet(fast + slow, question, rules, fastest, rules.spareShare)));
  const total = amount * fastest + Math.max(0, amount - atOnce) * (apart - fastest);
  if (total <= least) return undefined;
  const size = apart >= rules.singlesApart ? 1 : Math.min(Math.floor(rules.repsTogether), atOnce);
  const count = Math.ceil(amount / size);
  if (count < 2) return undefined;
  const sizes = Array.from({ length: count }, (_, i) => Math.min(size, amount - i * size));
  return { sizes, rest: (total - amount * fastest) / (count - 1), total };
}

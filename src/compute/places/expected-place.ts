import type { PossibleResult } from "./possible-results.ts";
import { placeOf, type RankedField } from "./rank-field.ts";

/**
 * The mean place over everything that may happen. Places are averaged, never scores: a capped and a finished result
 * have no mean. `better` improves every result by so many units of its own side: seconds less, or reps or load more.
 */
export function expectedPlace(
  field: RankedField,
  results: readonly PossibleResult[],
  { better = 0, tied = 0.5 }: { readonly better?: number; readonly tied?: number } = {},
): number {
  const total = results.reduce((sum, { chance }) => sum + chance, 0);
  return results.reduce((sum, { side, score, chance }) => {
    const lowerIsBetter = side === "finished" && field.lowerIsBetter;
    return (
      sum + (chance / total) * placeOf(field, side, lowerIsBetter ? score - better : score + better, tied)
    );
  }, 0);
}

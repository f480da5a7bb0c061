import type { Range } from "../../models/plan/basics.ts";
import type { Side } from "./rank-field.ts";
import { PLACES_FIXED } from "./fixed-constants.ts";

/** One result an athlete may have, and its chance. Scores in the unit of the field. */
export type PossibleResult = { readonly side: Side; readonly score: number; readonly chance: number };

/**
 * A range as three results: the cautious and the hopeful end with 3 chances in ten each, the middle with 4. Swanson's
 * rule for the mean of a skewed quantity known by its 10th, 50th and 90th percentile (Keefer and Bodily 1983; recalled).
 */
export const resultsOfRange = (range: Range, side: Side, chance = 1): readonly PossibleResult[] => [
  { side, score: range.cautious, chance: PLACES_FIXED.rangeWeights.value.ends * chance },
  { side, score: range.middle, chance: PLACES_FIXED.rangeWeights.value.middle * chance },
  { side, score: range.hopeful, chance: PLACES_FIXED.rangeWeights.value.ends * chance },
];

/** A cap in seconds, and all that is counted for the score. */
export type Cap = { readonly seconds: number; readonly work: number };

/** A finish later than the cap is a result of those stopped by it: as much done as fits into the cap at that pace. */
export function stoppedByCap(result: PossibleResult, cap: Cap | undefined): PossibleResult {
  const { side, score, chance } = result;
  if (cap === undefined || side !== "finished" || score <= cap.seconds) return result;
  return { side: "capped", score: Math.floor((cap.work * cap.seconds) / score), chance };
}

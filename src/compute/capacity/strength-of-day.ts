import { interpolate } from "../../numerics/interpolate.ts";
import type { BEST_LIFT_CONSTANTS } from "./best-lift-constants.ts";
import type { KnownBy } from "./known-by.ts";

/** The load made half the time on a day over the best known: mean and one standard deviation, as shares of the best. */
export type StrengthOfDay = { readonly mean: number; readonly spread: number };

/** Bests for which mean and spread are stated, kilograms. */
const BESTS = [50, 80, 120] as const;

/**
 * The strength of a day around a best, by its weight and how much is known: light bests are beaten oftener and vary
 * more as a share, and so does a best that is but one result. Straight between 50, 80 and 120 kg, level beyond.
 */
export function strengthOfDay(
  kilograms: number,
  known: KnownBy,
  overheadCatch: boolean,
  constants: Readonly<Record<keyof typeof BEST_LIFT_CONSTANTS, number>>,
): StrengthOfDay {
  const at = (light: number, middle: number, heavy: number): number =>
    interpolate(BESTS, [light, middle, heavy], kilograms);
  const mean = at(constants.dayMeanLight, constants.dayMeanMiddle, constants.dayMeanHeavy);
  const spread = at(constants.daySpreadLight, constants.daySpreadMiddle, constants.daySpreadHeavy);
  const more = {
    "one-result": { mean: constants.oneResultMean, spread: constants.oneResultSpread },
    "few-results": { mean: constants.fewResultsMean, spread: constants.fewResultsSpread },
    "many-results": { mean: 0, spread: 1 },
  }[known];
  return {
    mean: mean + more.mean + (overheadCatch ? constants.snatchDayMean : 0),
    spread: spread * more.spread * (overheadCatch ? constants.snatchDaySpread : 1),
  };
}

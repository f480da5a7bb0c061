import { fitLine } from "../../numerics/fit-line.ts";

/** As much of one task as was done in a time. `error` is relative, of the amount. */
export type EffortPoint = { readonly amount: number; readonly time: number; readonly error: number };

/** A critical rate (units per second) and a reserve (units) with their standard errors, where there are enough points. */
type RateAndReserve = {
  readonly rate: number;
  readonly reserve: number;
  readonly rateError?: number;
  readonly reserveError?: number;
};

/**
 * Fits amount = rate x time + reserve to several efforts by least squares weighted by how sure each is. Undefined where the efforts do
 * not say it: fewer than two different times, or a rate or reserve that is not positive.
 *
 * @example fitRateAndReserve([{ amount: 60, time: 180, error: 0.03 }, { amount: 98, time: 420, error: 0.03 }])
 * // => { rate: 0.1583..., reserve: 31.5 }
 */
export function fitRateAndReserve(points: readonly EffortPoint[]): RateAndReserve | undefined {
  const line = fitLine(
    points.map(({ amount, time, error }) => ({ x: time, y: amount, weight: 1 / (error * amount) ** 2 })),
  );
  if (!line || !(line.slope > 0) || !(line.intercept > 0)) return undefined;
  return {
    rate: line.slope,
    reserve: line.intercept,
    ...(line.slopeError === undefined ? {} : { rateError: line.slopeError }),
    ...(line.interceptError === undefined ? {} : { reserveError: line.interceptError }),
  };
}

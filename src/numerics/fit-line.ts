/** One observation: `y` at `x`, with a weight (one over the variance of `y`, or any number in proportion to it). */
type Observation = { readonly x: number; readonly y: number; readonly weight: number };

/** A straight line with what is known of its two numbers. Errors are standard errors; absent with two points. */
type Line = {
  readonly slope: number;
  readonly intercept: number;
  readonly slopeError?: number;
  readonly interceptError?: number;
  /** Weighted mean square of what the line leaves over, with n - 2 degrees of freedom; absent with two points. */
  readonly residualVariance?: number;
};

/**
 * Fits a straight line by weighted least squares. Undefined with fewer than two different `x` or without positive weight.
 *
 * Standard errors are scaled by what the line leaves over (weights are taken as relative). Normal equations about the
 * weighted mean, as in Bevington and Robinson, Data Reduction and Error Analysis, chapter 6.
 *
 * @example fitLine([{ x: 0, y: 1, weight: 1 }, { x: 2, y: 5, weight: 1 }]) // => { slope: 2, intercept: 1 }
 */
export function fitLine(observations: readonly Observation[]): Line | undefined {
  let weights = 0;
  let sumX = 0;
  let sumY = 0;
  for (const { x, y, weight } of observations) {
    weights += weight;
    sumX += weight * x;
    sumY += weight * y;
  }
  if (!(weights > 0)) return undefined;
  const meanX = sumX / weights;
  const meanY = sumY / weights;
  let spread = 0;
  let joint = 0;
  for (const { x, y, weight } of observations) {
    spread += weight * (x - meanX) ** 2;
    joint += weight * (x - meanX) * (y - meanY);
  }
  // Equal arguments differ from their mean in the last bit only.
  if (!(spread > 1e-20 * weights * (1 + meanX * meanX))) return undefined;
  const slope = joint / spread;
  const intercept = meanY - slope * meanX;
  const freedom = observations.length - 2;
  if (freedom < 1) return { slope, intercept };
  let left = 0;
  for (const { x, y, weight } of observations) left += weight * (y - intercept - slope * x) ** 2;
  const residualVariance = left / freedom;
  return {
    slope,
    intercept,
    slopeError: Math.sqrt(residualVariance / spread),
    interceptError: Math.sqrt(residualVariance * (1 / weights + meanX ** 2 / spread)),
    residualVariance,
  };
}

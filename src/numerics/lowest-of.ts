/**
 * Where a noisy function with one valley is lowest, from samples of it: the bottom of the parabola through all samples by least squares,
 * kept between the first and the last. Where the parabola is no valley, the lowest sample (the first of equal ones).
 *
 * Normal equations about the mean of the arguments. At least three samples at different arguments are needed.
 *
 * @example lowestOf([[0, 4], [1, 1], [3, 1], [4, 4]]) // => 2
 */
export function lowestOf(samples: readonly (readonly [at: number, value: number])[]): number {
  const mean = samples.reduce((sum, [at]) => sum + at, 0) / samples.length;
  let [s1, s2, s3, s4, y0, y1, y2] = [0, 0, 0, 0, 0, 0, 0];
  for (const [at, value] of samples) {
    const x = at - mean;
    s1 += x;
    s2 += x * x;
    s3 += x ** 3;
    s4 += x ** 4;
    y0 += value;
    y1 += value * x;
    y2 += value * x * x;
  }
  const n = samples.length;
  // Cramer's rule for value = a + b x + c x^2.
  const whole = n * (s2 * s4 - s3 * s3) - s1 * (s1 * s4 - s2 * s3) + s2 * (s1 * s3 - s2 * s2);
  const forB = n * (y1 * s4 - s3 * y2) - y0 * (s1 * s4 - s2 * s3) + s2 * (s1 * y2 - y1 * s2);
  const forC = n * (s2 * y2 - s3 * y1) - s1 * (s1 * y2 - y1 * s2) + y0 * (s1 * s3 - s2 * s2);
  const [b, c] = [forB / whole, forC / whole];
  if (!(c > 0) || !Number.isFinite(b)) return lowestSample(samples);
  const ends = samples.map(([at]) => at);
  return Math.min(Math.max(...ends), Math.max(Math.min(...ends), mean - b / (2 * c)));
}

function lowestSample(samples: readonly (readonly [number, number])[]): number {
  let lowest = samples[0] ?? [Number.NaN, Number.NaN];
  for (const sample of samples) if (sample[1] < lowest[1]) lowest = sample;
  return lowest[0];
}

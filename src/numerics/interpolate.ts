/**
 * The value at `x` of the straight pieces through the points (`xs`, `ys`); beyond the ends the end value holds.
 *
 * `xs` ascends strictly and has at least one value, and `ys` is as long. Search by halving.
 *
 * @example interpolate([0, 10], [1, 3], 5) // => 2
 */
export function interpolate(xs: ArrayLike<number>, ys: ArrayLike<number>, x: number): number {
  let low = 0;
  let high = xs.length - 1;
  if (x <= (xs[low] ?? Number.NaN)) return ys[low] ?? Number.NaN;
  if (x >= (xs[high] ?? Number.NaN)) return ys[high] ?? Number.NaN;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((xs[middle] ?? Number.NaN) <= x) low = middle;
    else high = middle;
  }
  const x0 = xs[low] ?? Number.NaN;
  const x1 = xs[high] ?? Number.NaN;
  const y0 = ys[low] ?? Number.NaN;
  const y1 = ys[high] ?? Number.NaN;
  return y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
}

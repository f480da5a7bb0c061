/**
 * The value below which a share of a sample lies, from a sample in ascending order.
 *
 * Linear interpolation between order statistics (type 7 of Hyndman and Fan 1996, the usual default of statistics programs).
 * Shares outside 0 to 1 give the end values. An empty sample gives NaN, which a caller must rule out.
 *
 * @example quantileSorted([1, 2, 3, 4], 0.5) // => 2.5
 */
export function quantileSorted(ascending: ArrayLike<number>, share: number): number {
  const last = ascending.length - 1;
  const position = Math.min(1, Math.max(0, share)) * last;
  const below = Math.floor(position);
  const low = ascending[below] ?? Number.NaN;
  const high = ascending[Math.min(below + 1, last)] ?? low;
  return low + (position - below) * (high - low);
}

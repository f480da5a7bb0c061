/**
 * Finds where a function with a single valley is lowest between two points.
 *
 * Golden-section search (Kiefer 1953), `steps` evaluations after the first two; the bracket shrinks to 0.618 of itself with
 * each. The best point evaluated is returned. On a flat stretch the lower argument wins.
 *
 * @example goldenSection((x) => (x - 1) ** 2, 0, 3, 40).at // => 1.0000000...
 */
export function goldenSection(
  of: (x: number) => number,
  low: number,
  high: number,
  steps: number,
): { readonly at: number; readonly value: number } {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let a = low;
  let b = high;
  let inner = b - ratio * (b - a);
  let outer = a + ratio * (b - a);
  let atInner = of(inner);
  let atOuter = of(outer);
  for (let step = 0; step < steps; step += 1) {
    if (atInner <= atOuter) {
      b = outer;
      outer = inner;
      atOuter = atInner;
      inner = b - ratio * (b - a);
      atInner = of(inner);
    } else {
      a = inner;
      inner = outer;
      atInner = atOuter;
      outer = a + ratio * (b - a);
      atOuter = of(outer);
    }
  }
  return atInner <= atOuter ? { at: inner, value: atInner } : { at: outer, value: atOuter };
}

/**
 * The chance that a standard normal draw is at most `x`.
 *
 * Rational approximation of Hart (1968) as given by West (2005), an absolute error under 1e-15 (in the far tail,
 * beyond 7 deviations, eight significant digits).
 *
 * @example normalBelow(1.96) // => 0.97500210485...
 */
export function normalBelow(x: number): number {
  const size = Math.abs(x);
  if (size > 37) return x > 0 ? 1 : 0;
  const decay = Math.exp((-size * size) / 2);
  let tail: number;
  if (size < 7.07106781186547) {
    let above = 3.52624965998911e-2 * size + 0.700383064443688;
    above = above * size + 6.37396220353165;
    above = above * size + 33.912866078383;
    above = above * size + 112.079291497871;
    above = above * size + 221.213596169931;
    above = above * size + 220.206867912376;
    let below = 8.83883476483184e-2 * size + 1.75566716318264;
    below = below * size + 16.064177579207;
    below = below * size + 86.7807322029461;
    below = below * size + 296.564248779674;
    below = below * size + 637.333633378831;
    below = below * size + 793.826512519948;
    below = below * size + 440.413735824752;
    tail = (decay * above) / below;
  } else {
    const fraction = size + 1 / (size + 2 / (size + 3 / (size + 4 / (size + 0.65))));
    tail = decay / (fraction * 2.506628274631);
  }
  return x > 0 ? 1 - tail : tail;
}

/** The height of the standard normal curve at `x`. @example normalDensity(0) // => 0.39894228... */
export const normalDensity = (x: number): number => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);

/**
 * The point below which a standard normal draw lies with the given chance: the inverse of `normalBelow`.
 *
 * Rational approximation of Acklam (2003) with one step of Halley's method, about 15 significant digits. A chance of 0 or 1
 * gives an infinite value.
 *
 * @example normalQuantile(0.975) // => 1.95996398...
 */
export function normalQuantile(chance: number): number {
  if (chance <= 0) return Number.NEGATIVE_INFINITY;
  if (chance >= 1) return Number.POSITIVE_INFINITY;
  const start = firstGuess(chance);
  const error = normalBelow(start) - chance;
  const step = error / normalDensity(start);
  return start - step / (1 + (start * step) / 2);
}

function firstGuess(chance: number): number {
  const edge = 0.02425;
  if (chance > 1 - edge) return -firstGuess(1 - chance);
  if (chance < edge) {
    const q = Math.sqrt(-2 * Math.log(chance));
    let above = -7.784894002430293e-3 * q - 3.223964580411365e-1;
    above = above * q - 2.400758277161838;
    above = above * q - 2.549732539343734;
    above = above * q + 4.374664141464968;
    above = above * q + 2.938163982698783;
    let below = 7.784695709041462e-3 * q + 3.224671290700398e-1;
    below = below * q + 2.445134137142996;
    below = below * q + 3.754408661907416;
    return above / (below * q + 1);
  }
  const q = chance - 0.5;
  const r = q * q;
  let above = -3.969683028665376e1 * r + 2.209460984245205e2;
  above = above * r - 2.759285104469687e2;
  above = above * r + 1.38357751867269e2;
  above = above * r - 3.066479806614716e1;
  above = above * r + 2.506628277459239;
  let below = -5.447609879822406e1 * r + 1.615858368580409e2;
  below = below * r - 1.556989798598866e2;
  below = below * r + 6.680131188771972e1;
  below = below * r - 1.328068155288572e1;
  return (above * q) / (below * r + 1);
}

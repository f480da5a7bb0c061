import { normalBelow, normalDensity } from "../../numerics/normal.ts";
import type { Belief } from "./day-strength.ts";

/**
 * The chance of making a load, given what is believed of the day: the normal chance that strength with the noise of one
 * attempt reaches it. `strength` is the share of the day's strength there is at that moment, 1 when fresh.
 *
 * @example makeChance(100, { mean: 100, spread: 3, noise: 4 }) // => 0.5
 */
export const makeChance = (load: number, belief: Belief, strength = 1): number =>
  normalBelow((strength * belief.mean - load) / Math.hypot(strength * belief.spread, belief.noise));

/**
 * The belief after one made or missed lift: the normal distribution with the mean and spread of the exact posterior
 * (moment matching of a probit observation). A make or a miss moves it little, as more than half of the variance is the
 * attempt and not the day.
 */
export function updateBelief(belief: Belief, load: number, made: boolean, strength = 1): Belief {
  const width = Math.hypot(strength * belief.spread, belief.noise);
  const z = ((strength * belief.mean - load) / width) * (made ? 1 : -1);
  const push = ratioOfNormals(z);
  const gain = (strength * belief.spread ** 2) / width;
  return {
    ...belief,
    mean: belief.mean + (made ? 1 : -1) * gain * push,
    spread: Math.sqrt(Math.max(0, belief.spread ** 2 - gain ** 2 * push * (z + push))),
  };
}

/** Density over distribution of the standard normal; far in the tail where both vanish, minus z. */
export const ratioOfNormals = (z: number): number => (z < -30 ? -z : normalDensity(z) / normalBelow(z));

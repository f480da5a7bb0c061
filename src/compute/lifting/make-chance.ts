import { normalBelow } from "../../numerics/normal.ts";
import type { Belief } from "./day-strength.ts";

/**
 * The chance of making a load, given what is believed of the day: the normal chance that strength with the noise of one
 * attempt reaches it. `strength` is the share of the day's strength there is at that moment, 1 when fresh.
 *
 * @example makeChance(100, { mean: 100, spread: 3, noise: 4, slip: 0 }) // => 0.5
 */
export const makeChance = (load: number, belief: Belief, strength = 1): number =>
  normalBelow((strength * belief.mean - load) / Math.hypot(strength * belief.spread, belief.noise));

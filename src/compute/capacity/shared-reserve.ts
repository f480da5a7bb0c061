import type { Athlete, IsoDate } from "../../models/athlete.ts";
import type { Movement } from "../../models/movement.ts";
import { seconds, type Seconds } from "../../models/quantity.ts";
import type { CapacityConstants } from "./constants.ts";
import { fitRateAndReserve } from "./fit-effort.ts";
import { ownEfforts } from "./own-efforts.ts";
import { CAPACITY_FIXED } from "./fixed-constants.ts";

/** The reserve all movements share, and its relative error. */
type SharedReserve = { readonly seconds: Seconds; readonly error: number };

/** Efforts nearer in time than this ratio say nothing about a reserve. */
const APART = CAPACITY_FIXED.reserveApart.value;

/**
 * The athlete's shared reserve from all movements with two or more efforts of different length.
 *
 * Reserve reps over critical rate are seconds of a movement; times its exponent they are seconds of critical-rate work, since speeding
 * up costs the rate to that power. The estimates are averaged on a log scale with the usual reserve (as one more
 * estimate with its own spread), because a reserve from two efforts is soft; the result is kept inside what is known.
 */
export function sharedReserve(
  athlete: Athlete,
  movements: ReadonlyMap<string, Movement>,
  date: IsoDate,
  constants: CapacityConstants,
): SharedReserve {
  let weight = 1 / constants.reserveSpreadUsual ** 2;
  const usual = constants.reserveUsual * (athlete.level === "elite" ? constants.reserveElite : 1);
  let sum = weight * Math.log(usual);
  for (const id of new Set(athlete.efforts.map((effort) => effort.movement))) {
    const movement = movements.get(id);
    const unit = movement?.counts[0];
    if (!movement || !unit) continue;
    const efforts = ownEfforts(athlete, movement, unit, date, constants);
    const alike = efforts.filter(({ kilograms }) => kilograms === efforts[0]?.kilograms);
    const [first, last] = [alike[0], alike.at(-1)];
    if (!first || !last || last.time < APART * first.time) continue;
    const fit = fitRateAndReserve(alike);
    if (!fit) continue;
    const estimate = (movement.kappa.value * fit.reserve) / fit.rate;
    const certainty = 1 / constants.reserveSpreadFitted ** 2;
    sum += certainty * Math.log(clamp(estimate, constants));
    weight += certainty;
  }
  return {
    seconds: seconds(clamp(Math.exp(sum / weight), constants)),
    error: 1 / Math.sqrt(weight),
  };
}

const clamp = (reserve: number, { reserveShortest, reserveLongest }: CapacityConstants): number =>
  Math.min(reserveLongest, Math.max(reserveShortest, reserve));

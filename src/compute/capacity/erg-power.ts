import type { ErgKind } from "../../models/vocabulary.ts";
import { CAPACITY_FIXED } from "./fixed-constants.ts";

/**
 * The open conventions by which the displays of flywheel ergs relate pace, power and calories. An air bike has none: makers'
 * calorie formulas are not published.
 */

/** Watts are this over the cube of seconds per metre. Open convention, seen in several restatements. */
const DRAG = CAPACITY_FIXED.ergDrag.value;
/** Kilocalories per hour and watt of work. */
const CALORIES_PER_WATT_HOUR = CAPACITY_FIXED.ergCalories.value;
/** Work assumed for each unit of output: about a quarter of what is burnt. */
const ASSUMED_COST = CAPACITY_FIXED.ergCost.value;
/** Calories per hour shown at no power, whatever the body mass. Sources disagree on it; check on a machine. */
const CALORIES_AT_REST = CAPACITY_FIXED.ergAtRest.value;
/** A bike erg shows twice the metres of a rower for the same power, so that 1000 m take as long as 500 m. Judgement. */
const BIKE_METRES = CAPACITY_FIXED.bikeErgMetres.value;

const metresFactor = (erg: ErgKind): number => (erg === "bike-erg" ? BIKE_METRES : 1);

/** Watts at a pace in seconds per metre. @example powerOfPace("row", 0.24) // => 202.546... */
export const powerOfPace = (erg: ErgKind, secondsPerMetre: number): number =>
  DRAG / (secondsPerMetre * metresFactor(erg)) ** 3;

/** Seconds per metre at a power in watts; the inverse of `powerOfPace`. */
export const paceOfPower = (erg: ErgKind, watts: number): number =>
  Math.cbrt(DRAG / watts) / metresFactor(erg);

/** Calories per hour at so many seconds per calorie. @example caloriesPerHour(3.6) // => 1000 */
export const caloriesPerHour = (secondsPerCalorie: number): number => 3600 / secondsPerCalorie;

/** Watts at so many seconds per calorie; 0 where the display would count that much for no work. */
export const powerOfCalories = (secondsPerCalorie: number): number =>
  Math.max(
    0,
    (caloriesPerHour(secondsPerCalorie) - CALORIES_AT_REST) / (ASSUMED_COST * CALORIES_PER_WATT_HOUR),
  );

/** Seconds per calorie at a power in watts. @example secondsPerCalorie(202.546) // => 3.611... */
export const secondsPerCalorie = (watts: number): number =>
  3600 / (ASSUMED_COST * CALORIES_PER_WATT_HOUR * watts + CALORIES_AT_REST);

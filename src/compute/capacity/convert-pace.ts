import type { Movement } from "../../models/movement.ts";
import type { AmountUnit, ErgKind } from "../../models/vocabulary.ts";
import {
  caloriesPerHour,
  paceOfPower,
  powerOfCalories,
  powerOfPace,
  secondsPerCalorie,
} from "./erg-power.ts";
import { CAPACITY_FIXED } from "./fixed-constants.ts";

/**
 * A pace of a movement in another unit it is counted in; undefined where nothing says how the two go together.
 *
 * Reps and metres by the distance per rep; metres and calories of a rower, ski erg or bike erg by the open power formulas; those of
 * an air bike, of which no formula is open, by our judgement.
 */
export function convertPace(
  movement: Movement,
  secondsPerUnit: number,
  from: AmountUnit,
  to: AmountUnit,
): number | undefined {
  if (from === to) return secondsPerUnit;
  if (from === "seconds" || to === "seconds") return undefined;
  const { metresPerRep, erg } = movement;
  if (metresPerRep !== undefined && from === "reps" && to === "metres") return secondsPerUnit / metresPerRep;
  if (metresPerRep !== undefined && from === "metres" && to === "reps") return secondsPerUnit * metresPerRep;
  if (erg === "air-bike") return airBikePace(secondsPerUnit, from, to);
  if (!hasOpenFormula(erg)) return undefined;
  if (from === "metres" && to === "calories") return secondsPerCalorie(powerOfPace(erg, secondsPerUnit));
  if (from === "calories" && to === "metres") {
    const watts = powerOfCalories(secondsPerUnit);
    return watts > 0 ? paceOfPower(erg, watts) : undefined;
  }
  return undefined;
}

/**
 * What an air bike shows of metres at its rate of calories: the fan takes the cube of the speed. About 36 km/h at 20 calories a
 * minute and 28 at 10. No maker publishes it; judgement, from what such machines show.
 */
const AIR_BIKE_POWER = CAPACITY_FIXED.airBikePower.value;
const AIR_BIKE_SPEED = 10; // metres per second
const AIR_BIKE_CALORIES = CAPACITY_FIXED.airBikeCalories.value;

function airBikePace(secondsPerUnit: number, from: AmountUnit, to: AmountUnit): number | undefined {
  if (from === "calories" && to === "metres")
    return 1 / (AIR_BIKE_SPEED * Math.cbrt(1 / secondsPerUnit / AIR_BIKE_CALORIES));
  if (from === "metres" && to === "calories")
    return 1 / (AIR_BIKE_CALORIES * (1 / secondsPerUnit / AIR_BIKE_SPEED) ** AIR_BIKE_POWER);
  return undefined;
}

/** Speeding up is never free; the closed form of the effort needs more than 1. */
const LEAST_KAPPA = CAPACITY_FIXED.leastKappa.value;

const hasOpenFormula = (erg: ErgKind | undefined): erg is ErgKind => erg !== undefined && erg !== "air-bike";

/**
 * How dear it is to speed up a movement in a unit other than its usual one: the exponent is stated for the usual unit and carried over
 * by how power goes with each rate (the cube of metres, a straight line with an offset for calories).
 */
export function convertKappa(movement: Movement, unit: AmountUnit, secondsPerUnit: number): number {
  const kappa = movement.kappa.value;
  const usual = movement.counts[0];
  if (usual === undefined || usual === unit) return kappa;
  if (movement.erg === "air-bike")
    return unit === "metres" ? AIR_BIKE_POWER * kappa : Math.max(LEAST_KAPPA, kappa / AIR_BIKE_POWER);
  if (!hasOpenFormula(movement.erg)) return kappa;
  const usualPace = convertPace(movement, secondsPerUnit, unit, usual);
  if (usualPace === undefined) return kappa;
  // Near the calories a display shows for no work, faster would cost no more than slower.
  return Math.max(
    LEAST_KAPPA,
    (kappa * powerExponent(unit, secondsPerUnit)) / powerExponent(usual, usualPace),
  );
}

/** Relative change of power per relative change of rate: the cube for metres, more than one for calories, some of which are free. */
function powerExponent(unit: AmountUnit, secondsPerUnit: number): number {
  if (unit !== "calories") return 3;
  const shown = caloriesPerHour(secondsPerUnit);
  const atRest = caloriesPerHour(secondsPerCalorie(0));
  return shown > atRest ? shown / (shown - atRest) : 1;
}

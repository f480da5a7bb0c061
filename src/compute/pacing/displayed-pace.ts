import type { Movement } from "../../models/movement.ts";
import type { PacingRow } from "../../models/plan/pacing.ts";
import type { AmountUnit } from "../../models/vocabulary.ts";
import { caloriesPerHour, powerOfCalories, powerOfPace } from "../capacity/erg-power.ts";
import { PACING_FIXED } from "./fixed-constants.ts";

/** Seconds a metre beyond which nobody runs or walks: a pace in water, which is read per 100 m. Judgement: 15 min per km is a stroll. */
const SLOWEST_ON_FOOT = PACING_FIXED.slowestOnFoot.value;

/** Pace as the machine or the watch shows it; undefined where nothing shows one. */
export function displayedPace(
  movement: Movement,
  unit: AmountUnit,
  secondsPerUnit: number,
): PacingRow["displayed"] | undefined {
  if (!(secondsPerUnit > 0)) return undefined;
  if (movement.kind === "run" && unit === "metres") {
    return secondsPerUnit > SLOWEST_ON_FOOT
      ? { kind: "per-100-m", value: secondsPerUnit * 100 }
      : { kind: "per-km", value: secondsPerUnit * 1000 };
  }
  if (movement.erg === undefined) return undefined;
  if (unit === "calories") {
    const value = caloriesPerHour(secondsPerUnit);
    return movement.erg === "air-bike"
      ? { kind: "calories-per-hour", value }
      : { kind: "calories-per-hour", value, watts: powerOfCalories(secondsPerUnit) };
  }
  if (unit !== "metres" || movement.erg === "air-bike") return undefined;
  const watts = powerOfPace(movement.erg, secondsPerUnit);
  return movement.erg === "bike-erg"
    ? { kind: "per-1000-m", value: secondsPerUnit * 1000, watts }
    : { kind: "per-500-m", value: secondsPerUnit * 500, watts };
}

import type { Athlete } from "../../models/athlete.ts";
import type { Movement } from "../../models/movement.ts";
import { bodyMassOf } from "./body-mass.ts";
import type { BodyMassConstants } from "./body-mass-constants.ts";
import { CAPACITY_FIXED } from "./fixed-constants.ts";

/** Factors on the seconds a unit of a movement takes and on the units of a set, by how heavy somebody is. */
type MassEffect = { readonly time: number; readonly set: number };

const NONE: MassEffect = { time: 1, set: 1 };
/** Beyond this ratio to the usual mass, either way, the law is not carried. */
const MOST = CAPACITY_FIXED.mostMassRatio.value;

/**
 * What body mass does to a pace of which nothing but a level is known: who is heavier than usual for the sex is slower at what carries the
 * body (runs; reps on bar, rings, wall and floor) and quicker at machines that carry it. Loads are no part of it: best lifts are estimated
 * from body mass by themselves.
 *
 * Speeds of people of one shape go with mass to a power (allometry). Of machines the power given goes with the two thirds of mass, so
 * metres a second with two ninths of it (the fan law).
 */
export function massEffect(
  athlete: Pick<Athlete, "bodyMass" | "sex">,
  { kind, counts }: Pick<Movement, "kind" | "counts">,
  constants: BodyMassConstants,
): MassEffect {
  if (athlete.bodyMass === undefined) return NONE;
  const usual = bodyMassOf({ ...(athlete.sex !== undefined && { sex: athlete.sex }) }, constants).kilograms;
  const ratio = Math.min(MOST, Math.max(1 / MOST, athlete.bodyMass / usual));
  if (kind === "run") return { time: ratio ** constants.massOnRuns, set: 1 };
  if (kind === "erg") {
    const power = counts[0] === "calories" ? constants.massOnPower : constants.massOnPower / 3;
    return { time: ratio ** -power, set: 1 };
  }
  if (kind !== "gymnastics" && kind !== "bodyweight" && kind !== "jump") return NONE;
  return { time: ratio ** constants.massOnReps, set: ratio ** -constants.massOnReps };
}

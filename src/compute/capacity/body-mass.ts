import type { Athlete } from "../../models/athlete.ts";
import type { BodyMassConstants } from "./body-mass-constants.ts";
import { bySex } from "./by-sex.ts";

/** A body mass in kilograms, and its spread as a share. */
export type BodyMass = { readonly kilograms: number; readonly error: number };

/** Body mass as stated, else that usual for the sex; the mean of both where that is not stated either. */
export function bodyMassOf(
  { bodyMass, sex }: Pick<Athlete, "bodyMass" | "sex">,
  { bodyMassFemale: female, bodyMassMale: male, bodyMassError }: BodyMassConstants,
): BodyMass {
  if (bodyMass !== undefined) return { kilograms: bodyMass, error: 0 };
  return { kilograms: bySex({ female, male }, sex), error: bodyMassError };
}

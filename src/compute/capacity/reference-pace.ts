import type { Movement, ReferencePace } from "../../models/movement.ts";
import type { AmountUnit } from "../../models/vocabulary.ts";
import { ageEffect } from "./age-effect.ts";
import { bySex } from "./by-sex.ts";
import { convertPace } from "./convert-pace.ts";
import { massEffect } from "./mass-effect.ts";
import type { Subject } from "./subject.ts";
import { CAPACITY_FIXED } from "./fixed-constants.ts";

/** Seconds for which a steady reference pace is meant to be held. */
export const STEADY_SECONDS = CAPACITY_FIXED.steadySeconds.value;

/** The reference of a movement for a level and sex, in one unit: steady and fastest seconds per unit, units in one set. */
export type Reference = { readonly steady: number; readonly fastest: number; readonly unbroken: number };

/**
 * The reference of a movement for somebody of a level, sex, age and body mass, in a unit it may be counted in; undefined where nothing converts
 * its usual unit into it.
 */
export function referencePace(
  { athlete, sex, date, constants }: Pick<Subject, "athlete" | "sex" | "date" | "constants">,
  movement: Movement,
  unit: AmountUnit,
): Reference | undefined {
  const { level } = athlete;
  const pace: ReferencePace = movement.pace;
  const usual = movement.counts[0] ?? "reps";
  const mass = massEffect(athlete, movement, constants);
  const age = ageEffect(athlete, date, constants);
  const time = mass.time * age.time;
  const ofSex = bySex(pace.bySex, sex);
  const steady = convertPace(movement, pace.steady[level] * ofSex * time, usual, unit);
  const fastest = convertPace(movement, pace.fastest[level] * ofSex * Math.sqrt(time), usual, unit);
  if (steady === undefined || fastest === undefined) return undefined;
  // Units of one set convert like any amount: by how long it takes at the steady pace.
  const set = (pace.unbroken[level] * pace.steady[level] * time) / steady;
  return {
    steady,
    fastest,
    unbroken: hasSets(movement) ? Math.max(1, set * mass.set * age.set) : Number.POSITIVE_INFINITY,
  };
}

/** Whether a movement is done in sets at all; nobody puts an erg or a run down. */
export const hasSets = (movement: Movement): boolean => movement.kind !== "erg" && movement.kind !== "run";

/** Whether something is held, hung on or turned, so that only putting it down, coming off or stopping rests. */
export const isHeld = (movement: Movement): boolean =>
  ["barbell", "dumbbell", "kettlebell", "odd-object", "gymnastics", "carry", "rope"].includes(movement.kind);

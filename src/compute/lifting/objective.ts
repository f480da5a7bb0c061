import type { Field } from "../../models/field.ts";
import type { Lifting } from "../../models/plan/lifting.ts";
import { inKilograms, KILOGRAMS_PER_POUND } from "../../models/quantity.ts";
import { placeOfLoad } from "../places/places-of.ts";
import type { LiftingInput } from "./lifting-input.ts";
import { LIFTING_FIXED } from "./fixed-constants.ts";

/** What a best made load is worth in the sense the coach asks for. */
export type Objective = {
  readonly kind: Lifting["objective"];
  readonly worth: (best: number | undefined) => number;
  /** Whether a load just over a round one is worth a little of its chance, because nothing is known of the field but that it counts. */
  readonly cutsTies: boolean;
  /** A load to be reached, kilograms. */
  readonly reach?: number;
};

/** Worth of a kilogram beside reaching the load asked for, so that the plan still goes on after it. */
const BESIDE = LIFTING_FIXED.worthBeside.value;

/** Places a kilogram is worth beside those it passes, so that who is out of the field's reach still lifts. */
const PER_KILOGRAM = LIFTING_FIXED.placesPerKilogram.value;

/**
 * The coach's objective as a worth of the best made load: its kilograms, its place among the field (less is better, so
 * negative), or whether it reaches a load. Where what is asked needs something that is not at hand (a field of loads, a load to
 * reach) or lifts are added up, it is the expected lift.
 */
export function objectiveOf(
  { objective, objectiveLoad, field }: Pick<LiftingInput, "objective" | "objectiveLoad" | "field">,
  adds: boolean,
): Objective {
  if (objective === "expected-place" && field?.kind === "load" && field.finished.length > 0 && !adds) {
    const place = placeOfLoad(field);
    return {
      kind: "expected-place",
      cutsTies: false,
      worth: (best) =>
        best === undefined ? -place(undefined) - 1 : PER_KILOGRAM * best - place(inFieldUnit(best, field)),
    };
  }
  if (objective === "chance-of-load" && objectiveLoad && !adds) {
    const reach = inKilograms(objectiveLoad);
    return {
      kind: "chance-of-load",
      cutsTies: false,
      reach,
      worth: (best = 0) => (best >= reach - 0.005 ? 1 : 0) + (BESIDE * best) / reach,
    };
  }
  return { kind: "expected-lift", cutsTies: !adds && field === undefined, worth: (best) => best ?? 0 };
}

/** Kilograms in the unit of a field, to a hundredth, so that 225 lb meets 225. */
export const inFieldUnit = (kilograms: number, field: Field): number =>
  Math.round((field.unit === "lb" ? kilograms / KILOGRAMS_PER_POUND : kilograms) * 100) / 100;

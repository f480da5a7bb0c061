import type { Movement } from "../../models/movement.ts";
import { movementByName, namesOfMovements, type MovementByName } from "./movement-names.ts";
import { LIFT_SPELLINGS, SPELLINGS, type Readings } from "./movement-spellings.ts";
import { comparable, nearestName } from "../../models/nearest.ts";
import type { MassUnit } from "../../models/quantity.ts";
import { plainText } from "../quantities/plain-text.ts";
import { ownEntry } from "../../models/own-entry.ts";

/** What a written name of a movement stands for. */
export type FoundMovement =
  | {
      readonly kind: "found";
      readonly movement: Movement;
      /** The name is not one of the library's, but how sheets head it. */
      readonly bySpelling: boolean;
      readonly label: Label;
    }
  | { readonly kind: "either"; readonly movements: readonly Movement[] }
  /** Names are tried by the hundred, and the nearest is looked for only where somebody is told. */
  | { readonly kind: "none"; readonly nearest?: string | undefined };

/** What stands beside the name in the heading of a column: a unit, a number of reps. */
type Label = { readonly unit?: MassUnit; readonly reps?: number };

export type FindMovement = (written: string) => FoundMovement;

/**
 * Finds movements by id, name, plural, alias or the spellings of sheets, blind to case, accents, spaces and hyphens. A
 * unit in brackets and a repetition maximum beside the name are taken as a label: `CJ (kg)`, `strict pull-up 3RM`.
 */
export function movementFinder(movements: ReadonlyMap<string, Movement>): FindMovement {
  const byName = movementByName(movements);
  const names = namesOfMovements(movements);
  return (written) => {
    const { name, label } = takeLabelOff(plainText(written));
    // A plus that joins nothing leaves something open: a lift and something.
    const open = /\+\s*$/.test(name);
    const forms = [written, name, andsOf(name)];
    const movement = open ? undefined : forms.map(byName).find((found) => found !== undefined);
    if (movement) return { kind: "found", movement, bySpelling: false, label };
    const readings = forms.map((form) => spellingOf(form)).find((found) => found !== undefined) ?? [];
    const known = readings.flatMap((reading) => firstKnown(reading, byName));
    const [only] = known;
    if (only && readings.length === 1 && !open)
      return { kind: "found", movement: only, bySpelling: true, label };
    if (only) return { kind: "either", movements: known };
    return {
      kind: "none",
      get nearest() {
        return nearestName(name, names);
      },
    };
  };
}

/**
 * Finds the movement of a lift. Beside what the other finder does, a squat is the back squat here, and a name for any way
 * from the ground overhead is not one lift.
 */
export function liftFinder(movements: ReadonlyMap<string, Movement>): FindMovement {
  const find = movementFinder(movements);
  const byName = movementByName(movements);
  return (written) => {
    const { name, label } = takeLabelOff(plainText(written));
    const readings = ownEntry(LIFT_SPELLINGS, comparable(name)) ?? [];
    const known = readings.flatMap((reading) => firstKnown(reading, byName));
    const [only, another] = known;
    if (only && another) return { kind: "either", movements: known };
    return only ? { kind: "found", movement: only, bySpelling: true, label } : find(written);
  };
}

function takeLabelOff(text: string): { readonly name: string; readonly label: Label } {
  const unit = /[([_ ](kgs?|lbs?)[)\]]?$/i.exec(text)?.[1]?.toLowerCase();
  const reps = /\b(\d+)\s*-?\s*RM\b/i.exec(text)?.[1];
  const name = text
    .replace(/\s*[([_ ](kgs?|lbs?)[)\]]?$/i, "")
    .replace(/\b\d+\s*-?\s*RM\b/i, "")
    .replace(/\b(?:one rep max|PR|PB|best|max)\b/i, "")
    .trim();
  const label: Label = {
    ...(unit === undefined ? {} : { unit: unit.startsWith("k") ? "kg" : "lb" }),
    ...(reps === undefined ? {} : { reps: Number(reps) }),
  };
  return { name: name === "" ? text : name, label };
}

const andsOf = (name: string): string => name.replace(/\s*[&+]\s*(?=\S)/g, " and ");

const spellingOf = (form: string): Readings | undefined => ownEntry(SPELLINGS, comparable(form));

function firstKnown(names: readonly string[], byName: MovementByName): readonly Movement[] {
  const movement = names.map(byName).find((found) => found !== undefined);
  return movement ? [movement] : [];
}

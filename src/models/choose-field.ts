import type { Field } from "./field.ts";
import type { Movement } from "./movement.ts";
import { comparable } from "./nearest.ts";
import type { Part, Step } from "./workout.ts";
import { ownEntry } from "./own-entry.ts";
import { divisionWords } from "./sex-words.ts";

/** For whom a field is looked for, and what they lift: the names of the movements, where a part is lifted for load. */
type FieldWanted = { readonly division: string; readonly lifts: readonly string[] };

/** The fields one file was read as. */
export const fieldsOfFile = (fields: ReadonlyMap<string, Field>, file: string): readonly Field[] =>
  [...fields.values()].filter(({ id }) => id === file || id.startsWith(`${file}/`));

/**
 * Of the fields of one file, the one that ranks a division (and lift): a field that names neither ranks everybody; one that
 * names a division ranks only that, however its sex is called, and one that names a lift only that. Of several the one that
 * says most. Undefined where none does: nobody is ranked among others than their own.
 *
 * @example chooseField([menOfWave, womenOfWave], { division: "women", lifts: [] }) // => womenOfWave
 */
export function chooseField(fields: readonly Field[], wanted: FieldWanted): Field | undefined {
  const ranking = fields.filter((field) => ranks(field, wanted));
  const words = (field: Field): number => divisionWords(field.division ?? "").length;
  return ranking.reduce<Field | undefined>(
    (best, field) => (best === undefined || words(field) > words(best) ? field : best),
    undefined,
  );
}

function ranks({ division: group = "" }: Field, { division, lifts }: FieldWanted): boolean {
  const words = divisionWords(group);
  const own = divisionWords(division);
  const namesDivision = own.every((word) => words.includes(word));
  const rest = namesDivision ? words.filter((word) => !own.includes(word)) : words;
  if (rest.length === 0) return true;
  return lifts.some((lift) => comparable(lift) === comparable(rest.join(" ")));
}

/** Names of everything a division lifts in a part. */
export function namesLifted(
  part: Part,
  division: string,
  movements: ReadonlyMap<string, Movement>,
): readonly string[] {
  const ids = new Set(movementsIn(ownEntry(part.work, division) ?? []));
  return [...ids].flatMap((id) => {
    const movement = movements.get(id);
    return movement ? [id, movement.name, movement.plural, ...movement.aliases] : [];
  });
}

const movementsIn = (steps: readonly Step[]): readonly string[] =>
  steps.flatMap((step) => {
    if (step.kind === "rest") return [];
    return step.kind === "block"
      ? movementsIn(step.steps)
      : step.pieces.flatMap(({ movements }) => movements);
  });

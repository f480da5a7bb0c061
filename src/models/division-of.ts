import type { Athlete } from "./athlete.ts";
import { divisionWords, isSameDivision, sexOfDivision } from "./sex-words.ts";
import type { Workout } from "./workout.ts";

/** Why it is not clear in which division of a workout an athlete is. */
export type UnclearDivision =
  | "not-listed"
  | "several-of-the-sex"
  | "none-of-the-sex"
  /** An age, in years, that belongs to a division listed. */
  | "age";

/**
 * The division of a workout an athlete is in: the one stated, however its sex is written; the one the workout plans it as; the
 * only one of the sex stated or known. Everything else is unclear, and is asked. Nothing where neither division nor sex
 * is known: then nobody can ask about it better than the brief, which says what it assumed.
 *
 * @param year of the day planned for, by which an age is told
 * @example divisionOf({ sex: "female" }, { divisions: ["men", "women"] }) // => { division: "women", by: "sex" }
 */
export function divisionOf(
  athlete: Pick<Athlete, "division" | "sex" | "birthYear">,
  workout: Pick<Workout, "divisions" | "plannedAs">,
  year?: number,
):
  | { readonly division: string; readonly by: "stated" | "planned-as" | "sex" }
  | { readonly unclear: UnclearDivision; readonly near?: string }
  | undefined {
  const { divisions } = workout;
  const stated = athlete.division;
  const same = stated && divisions.find((name) => isSameDivision(name, stated));
  if (same) return { division: same, by: "stated" };
  const said = plannedAs(stated ?? athlete.sex, workout);
  if (said !== undefined) return { division: said, by: "planned-as" };
  const sex = stated === undefined ? athlete.sex : sexOfDivision(stated);
  if (stated !== undefined && !isOnlySex(stated)) return { unclear: "not-listed" };
  if (sex === undefined) return undefined;
  const ofSex = divisions.filter((name) => sexOfDivision(name) === sex);
  const plain = ofSex.find(isOnlySex) ?? (ofSex.length === 1 ? ofSex[0] : undefined);
  if (stated === undefined) {
    const old = year === undefined ? undefined : ofAge(ofSex, year - (athlete.birthYear ?? year));
    if (old !== undefined && old !== plain) return { unclear: "age", near: old };
  }
  if (plain !== undefined) return { division: plain, by: stated === undefined ? "sex" : "stated" };
  if (ofSex.length > 1) return { unclear: "several-of-the-sex" };
  // One division for everybody is everybody's.
  const [only] = divisions;
  if (divisions.length === 1 && only !== undefined && sexOfDivision(only) === undefined)
    return { division: only, by: "sex" };
  return { unclear: "none-of-the-sex" };
}

const isOnlySex = (name: string): boolean =>
  divisionWords(name).length === 1 && sexOfDivision(name) !== undefined;

const plannedAs = (
  name: string | undefined,
  { plannedAs: said }: Pick<Workout, "plannedAs">,
): string | undefined =>
  name === undefined ? undefined : said?.find(({ of }) => isSameDivision(of, name))?.as;

/** The division whose ages, such as `55+` or `14-15`, hold this one; the narrowest first. */
function ofAge(divisions: readonly string[], age: number): string | undefined {
  const ages = divisions.flatMap((name) => {
    const [, from, to] = /(\d{2})\s*(?:\+|-\s*(\d{2})|$)/.exec(name) ?? [];
    return from === undefined ? [] : [{ name, from: Number(from), to: to === undefined ? 120 : Number(to) }];
  });
  return ages.filter(({ from, to }) => age >= from && age <= to).toSorted((a, b) => b.from - a.from)[0]?.name;
}

import type { Athlete, IsoDate } from "../../models/athlete.ts";
import type { AgeConstants } from "./age-constants.ts";

/** Factors on the seconds a unit takes, on the units of a set and on a best lift, by how old somebody is. */
type AgeEffect = { readonly time: number; readonly set: number; readonly lift: number };

const NONE: AgeEffect = { time: 1, set: 1, lift: 1 };

/**
 * What age does to what is usual of a level, whose paces and lifts are those of people up to the middle of their thirties: who is older
 * is slower and less strong by the year, by how masters' records fall. Own results have it in them already.
 */
export function ageEffect(
  { birthYear }: Pick<Athlete, "birthYear">,
  date: IsoDate,
  { ageFrom, ageUntil, ageOnPace, ageOnLifts }: AgeConstants,
): AgeEffect {
  if (birthYear === undefined) return NONE;
  const age = Number(date.slice(0, 4)) - birthYear;
  const years = Math.max(0, Math.min(ageUntil, age) - ageFrom);
  const time = Math.exp(ageOnPace * years);
  return { time, set: 1 / time, lift: Math.exp(-ageOnLifts * years) };
}

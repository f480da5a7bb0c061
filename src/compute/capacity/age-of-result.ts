import type { IsoDate } from "../../models/athlete.ts";

/**
 * Whole days from one date to a later one; 0 when it lies in the future. Day numbers of the proleptic Gregorian
 * calendar, counted from March so that the leap day comes last.
 *
 * @example daysBetween("2024-02-28", "2024-03-01") // => 2
 */
export const daysBetween = (from: IsoDate, to: IsoDate): number =>
  Math.max(0, dayNumber(to) - dayNumber(from));

/**
 * Days from a result to the Monday on or before a day, 0 when it is younger. What a result tells fades over months; counted
 * by weeks, a plan of one evening and that of the next morning are the same.
 *
 * @example ageOnMonday("2026-11-02", "2026-11-26") // => 21, since 26 November 2026 is a Thursday
 */
export const ageOnMonday = (from: IsoDate, to: IsoDate): number => {
  const sinceMonday = (dayNumber(to) - dayNumber(A_MONDAY)) % 7;
  return Math.max(0, daysBetween(from, to) - ((sinceMonday + 7) % 7));
};

/** Any Monday: days before it count too. */
const A_MONDAY: IsoDate = "2001-01-01";

function dayNumber(date: IsoDate): number {
  const [year = 0, month = 1, day = 1] = date.split("-").map(Number);
  const fromMarch = (month + 9) % 12;
  const years = year - (month <= 2 ? 1 : 0);
  return (
    365 * years +
    Math.floor(years / 4) -
    Math.floor(years / 100) +
    Math.floor(years / 400) +
    Math.floor((153 * fromMarch + 2) / 5) +
    day
  );
}

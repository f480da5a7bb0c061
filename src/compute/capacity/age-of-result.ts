import type { IsoDate } from "../../models/athlete.ts";

/**
 * Whole days from one date to a later one; 0 when it lies in the future. Day numbers of the proleptic Gregorian
 * calendar, counted from March so that the leap day comes last.
 *
 * @example daysBetween("2024-02-28", "2024-03-01") // => 2
 */
export const daysBetween = (from: IsoDate, to: IsoDate): number =>
  Math.max(0, dayNumber(to) - dayNumber(from));

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

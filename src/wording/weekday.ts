import { sayDate } from "./date.ts";

const WEEKDAYS: readonly string[] = [
  "Sunday",
  "Monday",
  "Tuesday",
  "Wednesday",
  "Thursday",
  "Friday",
  "Saturday",
];

/** Days by which the first of each month is moved against the first of January, March to February counted as one year. */
const MOVED: readonly number[] = [0, 3, 2, 5, 0, 3, 5, 1, 4, 6, 2, 4];

/**
 * A day within reach, by its name, from a date or a local date and time; what is not a date is given back as it is. The weekday of the
 * Gregorian calendar by Sakamoto's method (1993).
 *
 * @example sayWeekday("2026-11-27T18:40") // => "Friday, 27 November"
 */
export function sayWeekday(local: string): string {
  const [, year, month, day] = (/^(\d{4})-(\d\d)-(\d\d)/.exec(local) ?? []).map(Number);
  if (year === undefined || month === undefined || day === undefined) return local;
  const y = month < 3 ? year - 1 : year;
  const leaps = Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400);
  const weekday = WEEKDAYS[(y + leaps + (MOVED[month - 1] ?? 0) + day) % 7] ?? "";
  return `${weekday}, ${sayDate(local).replace(/ \d{4}$/, "")}`;
}

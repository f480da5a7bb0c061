const MONTHS: readonly string[] = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

/** A day as people write it; what is not a date is given back as it is. @example sayDate("2026-11-05") // => "5 November 2026" */
export function sayDate(isoDate: string): string {
  const [, year, month, day] = /^(\d{4})-(\d\d)-(\d\d)/.exec(isoDate) ?? [];
  const name = MONTHS[Number(month) - 1];
  return year && name && day ? `${Number(day)} ${name} ${year}` : isoDate;
}

/** The time of day of a local date and time. @example sayTimeOfDay("2026-11-26T18:40") // => "18:40" */
export const sayTimeOfDay = (local: string): string => /T(\d\d:\d\d)/.exec(local)?.[1] ?? local;

/** The day and the time of day. @example sayMoment("2026-11-26T18:40") // => "26 November 2026, 18:40" */
export const sayMoment = (local: string): string =>
  local.includes("T") ? `${sayDate(local)}, ${sayTimeOfDay(local)}` : sayDate(local);

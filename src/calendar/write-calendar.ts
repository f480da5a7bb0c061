import { escapeText, foldLine } from "./fold.ts";

/** An entry of a calendar; times are instants, seconds since 1970 began in UTC. */
export type Entry = {
  /** Stays the same when the entry is moved or renamed, so that a calendar replaces it instead of adding another. */
  readonly uid: string;
  readonly title: string;
  readonly description: string;
  readonly place?: string;
  readonly from: number;
  readonly to: number;
  /** Minutes before the entry at which to remind. */
  readonly remindBefore?: number;
};

/** What a calendar needs to know besides its entries. */
type Edition = {
  readonly name: string;
  /** When this edition was made, an instant; never the time of the build, so that the same plan gives the same bytes. */
  readonly made: number;
  /** Higher for every later edition, so that a calendar knows which one holds. */
  readonly sequence: number;
};

/**
 * A calendar as text: iCalendar of RFC 5545 with the name of RFC 7986. All times are in UTC, which needs no rules of time
 * zones and is shown in the reader's own. A plain file, not an invitation.
 */
export function writeCalendar(entries: readonly Entry[], edition: Edition): string {
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Rigsheet//Rigsheet//EN",
    "CALSCALE:GREGORIAN",
    `NAME:${escapeText(edition.name)}`,
    ...entries.flatMap((entry) => entryLines(entry, edition)),
    "END:VCALENDAR",
  ];
  return lines.map((line) => `${foldLine(line)}\r\n`).join("");
}

function entryLines(entry: Entry, edition: Edition): readonly string[] {
  return [
    "BEGIN:VEVENT",
    `UID:${escapeText(entry.uid)}`,
    `DTSTAMP:${utc(edition.made)}`,
    `SEQUENCE:${edition.sequence}`,
    `DTSTART:${utc(entry.from)}`,
    `DTEND:${utc(entry.to)}`,
    `SUMMARY:${escapeText(entry.title)}`,
    ...(entry.description === "" ? [] : [`DESCRIPTION:${escapeText(entry.description)}`]),
    ...(entry.place === undefined ? [] : [`LOCATION:${escapeText(entry.place)}`]),
    "CLASS:PRIVATE",
    ...(entry.remindBefore === undefined
      ? []
      : [
          "BEGIN:VALARM",
          "ACTION:DISPLAY",
          `TRIGGER:-PT${entry.remindBefore}M`,
          `DESCRIPTION:${escapeText(entry.title)}`,
          "END:VALARM",
        ]),
    "END:VEVENT",
  ];
}

/** An instant as iCalendar writes it. @example utc(0) // => "19700101T000000Z" */
const utc = (instant: number): string =>
  new Date(Math.round(instant) * 1000).toISOString().replace(/[-:]|\.\d+/g, "");

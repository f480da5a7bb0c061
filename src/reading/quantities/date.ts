import { Temporal } from "temporal-polyfill";
import { MONTH_NAMES, monthOf } from "./month-names.ts";
import { plainText } from "./plain-text.ts";
import { ask, askFor, reject, take, type Reading } from "./reading.ts";

/** Order of day and month where a date has only numbers. */
export type DateOrder = "day-first" | "month-first";

const ALLOWED = "a date such as `2026-11-28`";
const YEARS = [1950, 2040] as const;
/** Spreadsheets count days from here (their day 0, 29 February 1900 included as they do). */
const SERIAL_ZERO = "1899-12-30";
const SERIALS = [20_000, 80_000] as const;

/**
 * Reads a date as `2026-11-28`. Written so, or with the month as a word (`3. April 24`, `Apr 3, 2024`), it is taken; with
 * a month and year the middle of the month. Numbers only (`3/4/24`, `04.03.2024`) are taken where one of them can be no
 * month, or `order` is known, else asked about. A spreadsheet's day number is taken and told. A year missing is asked for.
 */
export function readDate(text: string, order?: DateOrder): Reading<string> {
  const written = plainText(text).replace(/^(?:tested|on|since|from|the)\s+(?=\S)/i, "");
  const weekday = /^(mon|tue|wed|thu|fri|sat|sun)[a-z]*\.?,?\s+(?=\S)/i.exec(written);
  const plain = weekday ? written.slice(weekday[0].length) : written;
  const read = readPlain(plain, order);
  if (!weekday || !read.ok || /^\D*\d{4}$/.test(plain)) return read;
  const own = WEEKDAYS[Temporal.PlainDate.from(read.value).dayOfWeek - 1] ?? "";
  if (own.toLowerCase().startsWith((weekday[1] ?? "").toLowerCase())) return read;
  return ask(
    `${read.value} is a ${own}, and another weekday stands before it`,
    [read.value],
    ALLOWED,
    "If the weekday is right, correct the day.",
  );
}

/** Reads the day of a test, of which a year alone says enough: how old it is counts, and half a year changes little. */
export function readTestDay(text: string, order?: DateOrder): Reading<string> {
  const year = /^(?:19|20)\d\d$/.exec(plainText(text))?.[0];
  if (year === undefined) return readDate(text, order);
  const readAs = `${year}-07-01`;
  return take(readAs, false, { problem: `a year without a day; read as the middle of ${year}`, readAs });
}

const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"] as const;

function readPlain(plain: string, order: DateOrder | undefined): Reading<string> {
  const iso =
    /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ]\d\d?:\d\d(?::\d\d(?:\.\d+)?)?(?:Z|[+-]\d\d:?\d\d)?)?$/.exec(
      plain,
    ) ?? /^(\d{4})(\d\d)(\d\d)$/.exec(plain);
  if (iso) return ofNumbers(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const numbers = /^(\d{1,2})[-/. ]+(\d{1,2})[-/. ]+(\d{4}|\d\d)$/.exec(plain);
  if (numbers) return readNumbers(Number(numbers[1]), Number(numbers[2]), yearOf(numbers[3] ?? ""), order);
  const month = /^(\d{4})[-/.](\d{1,2})$/.exec(plain) ?? /^(?<month>\d{1,2})[-/.](?<year>\d{4})$/.exec(plain);
  if (month)
    return readMonth(Number(month.groups?.["year"] ?? month[1]), Number(month.groups?.["month"] ?? month[2]));
  const serial = /^\d{5}(?:\.\d+)?$/.test(plain) ? Math.floor(Number(plain)) : undefined;
  if (serial !== undefined && serial > SERIALS[0] && serial < SERIALS[1]) return readSerial(serial);
  return readWords(plain) ?? withoutDay(plain) ?? reject("this is not a date", ALLOWED);
}

function readNumbers(
  first: number,
  second: number,
  year: number,
  order: DateOrder | undefined,
): Reading<string> {
  const dayFirst = ofNumbers(year, second, first);
  const monthFirst = ofNumbers(year, first, second);
  if (!dayFirst.ok && !monthFirst.ok) return reject("there is no such day", ALLOWED);
  const either = dayFirst.ok && monthFirst.ok && dayFirst.value !== monthFirst.value;
  const likely = order === "month-first" ? monthFirst : dayFirst;
  if (either && order === undefined) {
    return ask(
      "day and month can be read in either order",
      [dayFirst.value, monthFirst.value],
      ALLOWED,
      "Or say once for all files, in content/settings.yaml, `dates: day first` or `dates: month first`.",
    );
  }
  const reading = likely.ok ? likely : dayFirst.ok ? dayFirst : monthFirst;
  return reading.ok ? take(reading.value, false, told(reading.value)) : reading;
}

function readSerial(days: number): Reading<string> {
  const date = Temporal.PlainDate.from(SERIAL_ZERO).add({ days }).toString();
  const problem = `a spreadsheet's number of a day; read as ${date}`;
  return take(date, false, { problem, readAs: date });
}

function readWords(plain: string): Reading<string> | undefined {
  const words = plain.split(/[\s,.\-/]+/).filter((word) => word !== "" && !/^(?:of|de|del|den)$/i.test(word));
  const month = words.map(monthOf).find((value) => value !== undefined);
  if (month === undefined || words.length > 4) return undefined;
  const numbers = words
    .map((word) => /^(\d+)(?:st|nd|rd|th|er|º)?$/i.exec(word)?.[1])
    .filter((word) => word !== undefined);
  const others = words.length - numbers.length;
  if (others !== 1) return undefined;
  const [first = "", second] = numbers;
  if (numbers.length === 1 && first.length === 4)
    return take(ofMonth(Number(first), month), false, toldMonth(Number(first), month));
  if (numbers.length !== 2 || second === undefined) return undefined;
  return first.length === 4
    ? ofNumbers(Number(first), month, Number(second))
    : ofNumbers(yearOf(second), month, Number(first));
}

function readMonth(year: number, month: number): Reading<string> {
  const middle = ofNumbers(year, month, MIDDLE_OF_MONTH);
  return middle.ok ? take(middle.value, false, toldMonth(year, month)) : middle;
}

const MIDDLE_OF_MONTH = 15;

const ofMonth = (year: number, month: number): string =>
  `${year}-${String(month).padStart(2, "0")}-${MIDDLE_OF_MONTH}`;

const toldMonth = (year: number, month: number) => ({
  problem: `a month without a day; read as the middle of ${MONTH_NAMES[month - 1] ?? ""} ${year}`,
  readAs: ofMonth(year, month),
});

const told = (date: string) => ({ problem: `read as ${date}`, readAs: date });

function withoutDay(plain: string): Reading<string> | undefined {
  const year = /^(?:19|20)\d\d$/.exec(plain);
  if (year) return ask("the month is missing", [`${plain}-07-01`], ALLOWED);
  const month = plain.split(/[\s,.]+/).find((word) => monthOf(word) !== undefined);
  const numbersOnly = /^\d{1,2}[-/.]\d{1,2}\.?$/.test(plain);
  const short = /^\p{L}+\.?\s+'?(\d\d)$/u.exec(plain)?.[1];
  if (month !== undefined && short !== undefined) {
    const said = `20${short}-${String(monthOf(month)).padStart(2, "0")}`;
    return ask("the number may be the year or the day", [said], ALLOWED);
  }
  return month !== undefined || numbersOnly
    ? askFor("the year is missing", ALLOWED, "Write the date with its year, such as `2026-01-15`.")
    : undefined;
}

/** Years of two digits belong to the years around ours. */
const yearOf = (digits: string): number => (digits.length === 4 ? Number(digits) : 2000 + Number(digits));

function ofNumbers(year: number, month: number, day: number): Reading<string> {
  if (year < YEARS[0] || year > YEARS[1])
    return reject(`a year lies between ${YEARS[0]} and ${YEARS[1]}`, ALLOWED);
  try {
    return take(Temporal.PlainDate.from({ year, month, day }, { overflow: "reject" }).toString());
  } catch {
    return reject("there is no such day", ALLOWED);
  }
}

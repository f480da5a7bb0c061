import type { Random } from "../../src/numerics/random.ts";

const WHOLE = /-?\d+(?:[.,]\d+)?/g;
const WORD = /[\p{L}][\p{L}'-]*/gu;

const NUMBERS = [
  "0", "-1", "-0", "0.0001", "1e308", "1e-9", "999999999", "9007199254740993", "0x10", "1_000", "٣", "½", "NaN", "Infinity",
  "-Infinity", "1,800", "3000", "12,5", "7.32", "00", "1/0", "0/0", "9".repeat(400), "100000", "400", "0:00", "99:99:99", "1:02",
]; // prettier-ignore
const UNITS = [
  "kg",
  "lb",
  "m",
  "km",
  "ft",
  "cm",
  "in",
  "%",
  "min",
  "s",
  "cal",
  "h",
  "x",
  "#",
  "reps",
  "body mass",
];
const NAMES = [
  "__proto__",
  "constructor",
  "prototype",
  "toString",
  "hasOwnProperty",
  "valueOf",
  "then",
  "null",
  "true",
  "~",
];
const SIGNS = [
  "\u0000", "\u0007", "\u001B[2J", "\u001B]0;owned\u0007", "\r", "\t", "\u0085", "\u2028", "\u202E", "\u200B", "\uFEFF",
  "\uD800", "👩‍🚀", "e\u0301", "Ａ", "ﷺ", "\u00A0", "Ã©", "…", "’", "−", "–",
]; // prettier-ignore
const YAML = [
  "&a ", "*a", "<<: *a", "!!js/function 'x'", "!!binary aGk=", "!!set {a}", "---\n", "...\n", "{", "}", "[", "]", ": ", "- ", "? ",
  "| \n", "> \n", "%YAML 1.1\n", "#", "'", '"', ",", "@", "`", "{}", "[]", "[[[[[[[[[[[[[[[[", "&a [*a, *a]", "!<tag:x> ",
]; // prettier-ignore
const DATES = [
  "2026-02-30", "0000-00-00", "9999-12-31", "1899-12-31", "3/4/26", "13/13/2026", "2026-11-28 25:61", "2100-01-01",
  "2026-03-29 02:30 Europe/Berlin", "yesterday", "45385", "2026-11-28 18:40 or 19:10", "-2026-01-01", "2026-11-28T18:40:00Z",
]; // prettier-ignore
const PROGRAM = [
  "{process.exit(1)}", "{/* */ 1 /* */}", "<script>alert(1)</script>", "${1}", "import x from 'fs'", "export const a = 1",
  "<Target {...x} />", "<Load of={1} />", "../../etc/passwd", "<img src=x onerror=1>", "https://x.example/a.png",
]; // prettier-ignore
const PHRASES = [
  "or out", "in turn", "carry on", "any order:", "unbroken", "tie-break", "each side", "counts 10", "counts 1 per 0 m",
  "until 70 pull-up", "rest 0:00", "max pull-up", "repeat:", "up by -1", "up by 0", "at any load", "at 0 kg", "by +0:00:",
  "to 24/20 in", "every 0:05, 500 rounds:", "10 to 1:", "2 to 20 by 0:", "1 to 500:", "60 rounds:", "12 attempts",
]; // prettier-ignore

type Change = (text: string, random: Random, other: string) => string;

const below = (random: Random, end: number): number => Math.floor(random.uniform() * end);
const oneOf = (random: Random, of: readonly string[]): string => of[below(random, of.length)] ?? "";

const put = (text: string, start: number, end: number, what: string): string =>
  text.slice(0, start) + what + text.slice(end);

/** Another text in place of one match, wherever chance falls. */
function inPlaceOf(text: string, pattern: RegExp, random: Random, what: (found: string) => string): string {
  const found = [...text.matchAll(pattern)];
  const match = found[below(random, found.length)];
  return match === undefined ? text : put(text, match.index, match.index + match[0].length, what(match[0]));
}

const somewhere = (text: string, random: Random, what: string): string => {
  const at = below(random, text.length + 1);
  return put(text, at, at, what);
};

const withLines = (text: string, change: (lines: string[]) => void): string => {
  const lines = text.split("\n");
  change(lines);
  return lines.join("\n");
};

/** A number near the one that stood there: most files that people write are right. */
const near: Change = (text, random) =>
  inPlaceOf(text, /\d+/g, random, (found) => {
    const factor = [0.5, 0.9, 1.1, 2, 3, 7][below(random, 6)] ?? 1;
    return String(Math.round(Number(found) * factor));
  });

const CHANGES: readonly Change[] = [
  ...Array.from({ length: 8 }, () => near),
  (text, random) => inPlaceOf(text, WHOLE, random, () => oneOf(random, NUMBERS)),
  (text, random) => inPlaceOf(text, WHOLE, random, () => oneOf(random, NUMBERS)),
  (text, random) => inPlaceOf(text, WHOLE, random, (found) => String(Number(found) * 10 ** below(random, 7))),
  (text, random) => inPlaceOf(text, WHOLE, random, (found) => `-${found}`),
  (text, random) => inPlaceOf(text, /\b(?:kg|lb|m|cm|min|h|reps|cal|%)(?![\p{L}])/gu, random, () => oneOf(random, UNITS)),
  (text, random) => inPlaceOf(text, WORD, random, () => oneOf(random, NAMES)),
  (text, random) => inPlaceOf(text, /^ *[\p{L} -]+(?=:)/gmu, random, () => oneOf(random, NAMES)),
  (text, random) => inPlaceOf(text, WORD, random, () => oneOf(random, [...other(text)])),
  (text, random, more) => inPlaceOf(text, WORD, random, () => oneOf(random, [...other(more)])),
  (text, random) => inPlaceOf(text, /(?<=: |- ).+$/gm, random, () => oneOf(random, [...PHRASES, ...DATES, ...PROGRAM, ...NUMBERS])),
  (text, random) => inPlaceOf(text, /(?<=- ).+$/gm, random, () => oneOf(random, PHRASES)),
  (text, random, more) => inPlaceOf(text, /(?<=: |- ).+$/gm, random, () => oneOf(random, more.match(/(?<=: |- ).+$/gm) ?? [""])),
  (text, random) => inPlaceOf(text, WORD, random, (found) => found.repeat(1 + below(random, 3000))),
  (text, random) => inPlaceOf(text, /\d{4}-\d\d-\d\d|\d+:\d\d/g, random, () => oneOf(random, DATES)),
  (text, random) => somewhere(text, random, oneOf(random, SIGNS)),
  (text, random) => somewhere(text, random, oneOf(random, YAML)),
  (text, random) => somewhere(text, random, oneOf(random, PROGRAM)),
  (text, random) => inPlaceOf(text, /, /g, random, () => `, ${oneOf(random, PHRASES)}, `),
  (text, random) => {
    const at = below(random, text.length);
    return put(text, at, at + 1 + below(random, 12), "");
  },
  (text, random) => withLines(text, (lines) => lines.splice(below(random, lines.length), 1 + below(random, 3))),
  (text, random) =>
    withLines(text, (lines) => {
      const at = below(random, lines.length);
      lines.splice(at, 0, ...lines.slice(at, at + 1 + below(random, 4)));
    }),
  (text, random) =>
    withLines(text, (lines) => {
      const [one, two] = [below(random, lines.length), below(random, lines.length)];
      [lines[one], lines[two]] = [lines[two] ?? "", lines[one] ?? ""];
    }),
  (text, random) =>
    withLines(text, (lines) => {
      const at = below(random, lines.length);
      lines[at] = " ".repeat(below(random, 9)) + (lines[at] ?? "").trim();
    }),
  (text, random) =>
    withLines(text, (lines) => {
      const line = lines[below(random, lines.length)] ?? "";
      lines.splice(below(random, lines.length), 0, ...Array.from({ length: below(random, 400) }, () => line));
    }),
]; // prettier-ignore

const other = (text: string): readonly string[] => text.match(WORD) ?? [""];

/**
 * A text with one to three changes as slips of the pen, spreadsheets and ill will make them. `more` is another text of which
 * words are taken. Equal seeds give equal texts.
 */
export function changed(text: string, random: Random, more: string): string {
  let result = text;
  const count = random.uniform() < 0.6 ? 1 : 2 + below(random, 2);
  for (let left = count; left > 0; left -= 1) {
    const change = CHANGES[below(random, CHANGES.length)];
    if (change) result = change(result, random, more);
  }
  return result;
}

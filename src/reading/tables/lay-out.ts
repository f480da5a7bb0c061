import { comparable } from "../../models/nearest.ts";
import { joinRounds } from "./join-rounds.ts";
import type { Meaning } from "./meaning.ts";
import { type HeadingContext, readHeading, SILENT, unitWord } from "./read-heading.ts";
import { cellName, type Sheet } from "./sheet.ts";

/** How a table is built: its headings, the units below them, the rows with athletes, and rows passed over. */
export type Layout = {
  /** With the headings above: a sheet with the headings in its first column is turned. */
  readonly sheet: Sheet;
  /** The row of the headings. */
  readonly head: number;
  readonly headings: readonly string[];
  /** Units of a row of units below the headings; empty where there are none. */
  readonly units: readonly (string | undefined)[];
  readonly rows: readonly number[];
  readonly passedOver: readonly { readonly cell: string; readonly text: string; readonly why: string }[];
};

/** Rows in which the headings are looked for, below titles and empty lines. */
const SEARCHED = 15;

const isKnown = ({ kind }: Meaning): boolean => kind !== "unclear";

/**
 * Finds the headings: the row in which most cells say something that is known. A sheet with the headings in its first
 * column, one athlete a column, is turned. Nothing where no two headings are known.
 */
export function layOut(written: Sheet, context: HeadingContext): Layout | undefined {
  const known = (texts: readonly string[]): number =>
    texts.filter((text) => text !== "" && isKnown(readHeading(text, context))).length;
  const bestRow = (sheet: Sheet): { readonly row: number; readonly known: number } =>
    sheet.rows
      .slice(0, SEARCHED)
      .map((cells, row) => ({ row, known: isHeading(cells) ? known(cells) : 0 }))
      .reduce((one, other) => (other.known > one.known ? other : one), { row: -1, known: 0 });
  const upright = bestRow(written);
  const turned = turn(written);
  const aside = bestRow({ ...turned, rows: turned.rows.slice(0, 2) });
  const isAside = aside.known > upright.known && aside.known > 1;
  const [sheet, found] = isAside ? [turned, aside] : [written, upright];
  if (found.known < 2) return undefined;
  return readRows(joinRounds(sheet, found.row, context), found.row);
}

/** Headings are words: a row that is mostly numbers holds results. */
const isHeading = (cells: readonly string[]): boolean => {
  const filled = cells.filter((cell) => cell !== "");
  return filled.filter((cell) => /^[\d.,:\s]+(?:kg|lb|s|min)?$/i.test(cell)).length * 2 < filled.length;
};

const turn = (sheet: Sheet): Sheet => {
  const width = Math.max(0, ...sheet.rows.map(({ length }) => length));
  const rows = Array.from({ length: width }, (_, column) => sheet.rows.map((row) => row[column] ?? ""));
  return { name: sheet.name, rows, isTurned: true };
};

const SUMS =
  /^(?:totals?|sums?|averages?|avg\.?|means?|medians?|max|min|maximum|minimum|count|best|std|sd|Ø|Σ|summe|gesamt|durchschnitt|mittelwert|schnitt|moyenne|somme|total général|promedio|suma|media|snitt|gjennomsnitt)(?:\b.*)?:?$/i;

function readRows(sheet: Sheet, head: number): Layout {
  const headings = sheet.rows[head] ?? [];
  const passedOver: { cell: string; text: string; why: string }[] = [];
  const rows: number[] = [];
  let units: readonly (string | undefined)[] = [];
  const pass = (row: number, why: string): void => {
    const cells = sheet.rows[row] ?? [];
    const column = cells.findIndex((cell) => cell !== "");
    passedOver.push({ cell: cellName(sheet, { row, column }), text: cells[column] ?? "", why });
  };
  for (let row = 0; row < sheet.rows.length; row++) {
    const cells = sheet.rows[row] ?? [];
    const filled = cells.filter((cell) => cell !== "");
    if (row === head || filled.length === 0) continue;
    if (row < head) pass(row, "above the headings");
    else if (row === head + 1 && filled.every((cell) => unitWord(cell) !== undefined || SILENT.test(cell)))
      units = cells.map((cell) => unitWord(cell));
    else if (isRepeated(cells, headings)) pass(row, "the headings again");
    else if (SUMS.test(filled[0] ?? "") && !filled.slice(1).some(isWord))
      pass(row, "worked out of other rows");
    else if (filled.length === 1 && headings.filter((heading) => heading !== "").length > 2)
      pass(row, "one cell alone, a title or a remark");
    else rows.push(row);
  }
  return { sheet, head, headings, units, rows, passedOver };
}

const isRepeated = (cells: readonly string[], headings: readonly string[]): boolean => {
  const same = cells.filter(
    (cell, column) => cell !== "" && comparable(cell) === comparable(headings[column] ?? ""),
  );
  return same.length > 1 && same.length * 2 > cells.filter((cell) => cell !== "").length;
};

/** A word such as a level or a sex stands beside people, Max among them, and in no row of sums. */
const isWord = (cell: string): boolean => /^\p{L}[\p{L} ]*$/u.test(cell) && !/^(?:kgs?|lbs?)$/i.test(cell);

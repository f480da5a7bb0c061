import { parse } from "csv-parse/sync";
import type { Sheet } from "./sheet.ts";

const SEPARATORS = ["\t", ";", ",", "|"] as const;
/** Lines looked at to find what parts the cells. */
const LOOKED_AT = 20;

/**
 * Opens a table written as text: comma, semicolon or tab between cells, or pasted with bars. The separator is the one that
 * cuts most lines into the same number of cells, more than one. A byte order mark is removed, quotes may be left open, and
 * nothing is refused: what a cell holds is judged later, cell by cell.
 */
export function openTextTable(name: string, text: string): Sheet {
  const plain = text.replace(/^\uFEFF/, "").replace(/\r\n?/g, "\n");
  const candidates = SEPARATORS.map((separator) => {
    const rows = separator === "|" ? cut(plain, separator).map(withoutBars) : cut(plain, separator);
    return { rows, evenness: evenness(rows.slice(0, LOOKED_AT)) };
  });
  const best = candidates.reduce((one, other) => (other.evenness > one.evenness ? other : one));
  const rows = best.evenness > 0 ? best.rows : cutAtGaps(plain);
  return { name, rows: rows.map((row) => row.map((cell) => cell.trim())) };
}

function cut(text: string, delimiter: string): readonly (readonly string[])[] {
  try {
    return parse(text, {
      delimiter,
      relax_column_count: true,
      relax_quotes: true,
      skip_empty_lines: false,
    });
  } catch {
    return text.split("\n").map((line) => line.split(delimiter));
  }
}

/** How many lines have the number of cells that most have; nothing for one cell a line. */
function evenness(rows: readonly (readonly string[])[]): number {
  const counts = new Map<number, number>();
  for (const { length } of rows) if (length > 1) counts.set(length, (counts.get(length) ?? 0) + 1);
  return Math.max(0, ...[...counts].map(([length, lines]) => lines + length / 1000));
}

/** Text copied from a page: cells stand apart by two spaces or more. */
const cutAtGaps = (text: string): readonly (readonly string[])[] =>
  text.split("\n").map((line) => line.trim().split(/ {2,}/));

/** A row drawn with bars has them at both ends; a line of dashes below the head is no row. */
function withoutBars(row: readonly string[]): readonly string[] {
  if (row.length > 2 && row.every((cell) => /^\s*:?-*:?\s*$/.test(cell))) return [];
  const isFramed = row.length > 2 && row[0]?.trim() === "" && row.at(-1)?.trim() === "";
  return isFramed ? row.slice(1, -1) : row;
}

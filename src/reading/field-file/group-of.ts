import type { Columns } from "./columns.ts";
import type { CsvRow } from "./open-csv.ts";

const SCALED_WORD = /^(?:scaled|sc|foundations?)$/i;
const PRESCRIBED_WORD = /^(?:rx'?d?|prescribed|as)$/i;

/**
 * The division or lift of a row: what its columns of groups say together, words for "as prescribed" left out. A word for
 * scaled anywhere in it makes the row a scaled one.
 */
export function groupOf(
  row: CsvRow,
  columns: Pick<Columns, "groups" | "version">,
): { readonly group?: string; readonly scaled: boolean } {
  const cells = columns.groups.map((index) => row.cells[index] ?? "");
  const version = row.cells[columns.version ?? -1] ?? "";
  const words = cells.flatMap((cell) => cell.split(/[\s,/()-]+/)).filter((word) => word !== "");
  const scaled =
    [...words, ...version.split(/\s+/)].some((word) => SCALED_WORD.test(word)) ||
    [...cells, version].some((cell) => /^s$/i.test(cell));
  const isPlain = words.every((word) => !PRESCRIBED_WORD.test(word) && !SCALED_WORD.test(word));
  const group = isPlain
    ? cells.filter((cell) => cell !== "").join(" ")
    : words.filter((word) => !PRESCRIBED_WORD.test(word) && !SCALED_WORD.test(word)).join(" ");
  return group === "" ? { scaled } : { group: group.toLowerCase(), scaled };
}

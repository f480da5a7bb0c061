import { comparable } from "../../models/nearest.ts";
import { layOut } from "./lay-out.ts";
import { type HeadingContext, readHeading } from "./read-heading.ts";
import type { Sheet } from "./sheet.ts";

/**
 * A sheet with several athletes in a row, `Name | Level | Squat | Name | Level | Squat`, as one sheet for each block of columns; every
 * cell keeps its place. A block begins at a column of names that stands there again, with what stands before it each time, and at
 * least one other heading returns with it.
 */
export function splitBlocks(sheet: Sheet, context: HeadingContext): readonly Sheet[] {
  const layout = layOut(sheet, context);
  if (!layout || layout.sheet.isTurned) return [sheet];
  const headings = (sheet.rows[layout.head] ?? []).map(comparable);
  const starts = startsOf(headings, context);
  if (starts.length < 2) return [sheet];
  return starts.map((start, block) => {
    const from = block === 0 ? 0 : start;
    const to = starts[block + 1] ?? Infinity;
    const rows = sheet.rows.map((cells, row) =>
      cells.map((cell, column) => {
        const isTitle = row < layout.head && block === 0;
        return isTitle || (column >= from && column < to) ? cell : "";
      }),
    );
    return { ...sheet, rows };
  });
}

/** The first column of each block; one or none where nothing returns. */
function startsOf(headings: readonly string[], context: HeadingContext): readonly number[] {
  const first = headings.findIndex((heading) => heading !== "" && isName(heading, context));
  const again = headings.flatMap((heading, column) => (heading === headings[first] ? [column] : []));
  if (first === -1 || again.length < 2) return [];
  // Numbers of rows and the like may stand before the names, each time.
  const isLed = (by: number): boolean =>
    again.every((column) => headings[column - by] === headings[first - by]);
  let lead = 0;
  while (lead < first && isLed(lead + 1)) lead += 1;
  const starts = again.map((column) => column - lead);
  const other = headings.slice(first + 1, again[1]).filter((heading) => heading !== "");
  const returns = starts.slice(1).every((start, at) => {
    const block = headings.slice(start, starts[at + 2]);
    return other.some((heading) => block.includes(heading));
  });
  return returns ? starts : [];
}

const isName = (heading: string, context: HeadingContext): boolean =>
  ["name", "first name"].includes(readHeading(heading, context).kind);

import { type HeadingContext, readHeading } from "./read-heading.ts";
import type { Sheet } from "./sheet.ts";

/** `R1`, `Round 2`, `Kiln Road split 3`: what stands before, and the number. */
const ROUND = /^(.*?)[\s\-–:,]*\b(?:r|rd|rnd|round|split|lap)s?\.?\s*#?(\d{1,2})$/i;

type Round = { readonly title: string; readonly number: number };

/**
 * Splits that stand in a column for each round become one column of splits, in the place of the first. The workout is named
 * in the headings, else by the nearest column of a workout before them, else it is the only one there is; where none of that
 * is so, the columns stay as they are and are asked about.
 *
 * @param head the row of the headings
 */
export function joinRounds(sheet: Sheet, head: number, context: HeadingContext): Sheet {
  const headings = sheet.rows[head] ?? [];
  const rounds = headings.map(roundOf);
  const runs = rounds.flatMap((round, first) => {
    if (round?.number !== 1) return [];
    const length = lengthOf(rounds.slice(first));
    const title = length < 2 ? undefined : titleOf(round.title, headings.slice(0, first), context);
    return title === undefined ? [] : [{ first, last: first + length - 1, title }];
  });
  if (runs.length === 0) return sheet;
  const rows = sheet.rows.map((cells, row) =>
    cells.map((cell, column) => {
      const run = runs.find(({ first, last }) => column >= first && column <= last);
      if (!run || row < head) return cell;
      if (column > run.first) return "";
      return row === head ? `${run.title} splits` : together(cells.slice(run.first, run.last + 1));
    }),
  );
  return { ...sheet, rows };
}

function roundOf(heading: string): Round | undefined {
  const [, title, number] = ROUND.exec(heading.trim()) ?? [];
  return title === undefined ? undefined : { title, number: Number(number) };
}

/** How many columns from the first on count on under one title. */
function lengthOf(rounds: readonly (Round | undefined)[]): number {
  const end = rounds.findIndex((round, at) => round?.number !== at + 1 || round.title !== rounds[0]?.title);
  return end === -1 ? rounds.length : end;
}

/** The workout as a heading names it. */
function titleOf(title: string, before: readonly string[], context: HeadingContext): string | undefined {
  const isWorkout = (heading: string): boolean => readHeading(heading, context).kind === "result";
  if (title !== "") return isWorkout(title) ? title : undefined;
  const [only, ...others] = context.workouts.values();
  return before.findLast(isWorkout) ?? (others.length === 0 ? only?.title : undefined);
}

/** Cells of one row as splits are written; one that is missing in between is said to be. */
function together(cells: readonly string[]): string {
  const written = cells.map((cell) => cell.trim());
  const last = written.findLastIndex((cell) => cell !== "");
  return written
    .slice(0, last + 1)
    .map((cell) => (cell === "" ? "?" : cell))
    .join(", ");
}

import type { Piece } from "../../models/plan/debrief.ts";
import type { PlannedPacing, PlannedRow } from "../../models/plan/plan.ts";

/** A clock of the plan that a logged one can be set beside. */
type Mark = {
  readonly kind: Piece["kind"];
  readonly row: number;
  readonly round: number;
  readonly end: number;
};

/**
 * Sets logged clocks beside the plan: one piece of work from each to the next. What the clocks stand for (every line or every
 * round) is told by their number and by which of the two they fit better. Clocks past the end of the plan are left out, as are
 * those that do not go up.
 *
 * @param clocks running clock of the part at the end of each line or round, seconds, in order
 * @param end clock at which all was done, where that is known and not the last of the clocks
 */
export function piecesOf(
  { rows, rounds }: Pick<PlannedPacing, "rows" | "rounds">,
  clocks: readonly number[],
  end?: number,
): readonly Piece[] {
  const byRow = rows.filter(({ kind }) => kind === "work").map(markOfRow);
  const byRound = rounds.map(({ round, lastRow, end: ends }): Mark => ({
    kind: "round",
    row: lastRow,
    round,
    end: ends,
  }));
  const marks = nearest([byRow, byRound], clocks);
  const last = marks.at(-1);
  const done = clocks.slice(0, marks.length);
  // The result is the clock of the last mark, where all before it were logged.
  if (end !== undefined && last && done.length === marks.length - 1 && end > (done.at(-1) ?? 0))
    done.push(end);
  const pieces: Piece[] = [];
  let before = { planned: 0, done: 0 };
  done.forEach((clock, at) => {
    const mark = marks[at];
    if (!mark || clock <= before.done || mark.end <= before.planned) return;
    pieces.push({
      kind: mark.kind,
      row: mark.row,
      round: mark.round,
      plannedEnd: mark.end,
      doneEnd: clock,
      planned: mark.end - before.planned,
      done: clock - before.done,
    });
    before = { planned: mark.end, done: clock };
  });
  return pieces;
}

const markOfRow = ({ index, round, end }: PlannedRow): Mark => ({ kind: "row", row: index, round, end });

/** The marks that the clocks fit best, by the mean difference of their logarithms; none where none are long enough. */
function nearest(candidates: readonly (readonly Mark[])[], clocks: readonly number[]): readonly Mark[] {
  let best: { readonly marks: readonly Mark[]; readonly off: number } | undefined;
  for (const marks of candidates) {
    const both = Math.min(marks.length, clocks.length);
    if (both === 0) continue;
    // Clocks of lines outnumber rounds: what finds no mark cannot be meant.
    const left = clocks.length > marks.length ? clocks.length - marks.length : 0;
    let off = left;
    for (let at = 0; at < both; at += 1) {
      off += Math.abs(Math.log(Math.max(clocks[at] ?? 1, 1) / Math.max(marks[at]?.end ?? 1, 1))) / both;
    }
    if (best === undefined || off < best.off - 1e-9) best = { marks, off };
  }
  return best?.marks ?? [];
}

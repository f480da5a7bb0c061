import type { Piece } from "../../models/plan/debrief.ts";
import type { PlannedPacing } from "../../models/plan/plan.ts";

/** A clock of the plan that a logged one can be set beside. */
type Mark = {
  readonly kind: Piece["kind"];
  readonly row: number;
  readonly round: number;
  readonly end: number;
  /** False where the clock ends it before its work is done: it has a clock, but tells nothing of a pace. */
  readonly whole: boolean;
};

/** How a plan is set beside clocks. */
type Laid = Pick<PlannedPacing, "rows" | "rounds" | "ending"> & {
  /** Whether the clock says when each round begins, whatever was done before. */
  readonly startsByClock: boolean;
};

/**
 * Sets logged clocks beside the plan: one piece of work from each to the next, rests before it left out. What the clocks stand for (every line
 * or every round) is told by their number and by which of the two they fit better. Clocks past the end of the plan are left out, as are
 * those that do not go up, and a line or round the plan itself does not get through; between others it keeps its place.
 *
 * @param clocks running clock of the part at the end of each line or round, seconds, in order; undefined where nobody looked: the
 * piece then reaches to the next one that is known
 * @param end clock at which all was done, where that is known and not the last of the clocks
 * @param kind what the clocks stand for, where that is known
 */
export function piecesOf(
  plan: Laid,
  clocks: readonly (number | undefined)[],
  end?: number,
  kind?: Piece["kind"],
): readonly Piece[] {
  const { rows } = plan;
  const [lines, counted] = [marksOfRows(plan), marksOfRounds(plan)];
  // Who writes clocks by hand may leave out the lines that were not finished.
  const ways = { row: [lines, lines.filter(({ whole }) => whole)], round: [counted] };
  const marks = nearest(kind === undefined ? [...ways.row, ...ways.round] : ways[kind], clocks);
  const last = marks.at(-1);
  const done = clocks.slice(0, marks.length);
  // The result is the clock of the last mark, where all before it were logged.
  if (end !== undefined && last && done.length === marks.length - 1 && end > (done.at(-1) ?? 0))
    done.push(end);
  const pieces: Piece[] = [];
  let before: { readonly row: number; readonly planned: number; readonly done: number } | undefined;
  done.forEach((clock, at) => {
    const mark = marks[at];
    if (!mark || clock === undefined) return;
    const from = begins(rows, before, plan.startsByClock);
    if (clock <= from.done || mark.end <= from.planned) return;
    before = { row: mark.row, planned: mark.end, done: clock };
    if (!mark.whole) return;
    pieces.push({
      kind: mark.kind,
      row: mark.row,
      round: mark.round,
      plannedEnd: mark.end,
      doneEnd: clock,
      planned: mark.end - from.planned,
      done: clock - from.done,
    });
  });
  return pieces;
}

/** Where a piece begins: after the rests that follow the mark before, of their planned length or until their planned clock. */
function begins(
  rows: PlannedPacing["rows"],
  before: { readonly row: number; readonly planned: number; readonly done: number } | undefined,
  byClock: boolean,
): { readonly planned: number; readonly done: number } {
  if (before === undefined) return { planned: 0, done: 0 };
  const next = rows.slice(before.row + 1).find(({ kind }) => kind === "work");
  const planned = next === undefined ? before.planned : Math.max(before.planned, next.start);
  const rested = planned - before.planned;
  if (rested < 1e-6) return before;
  return { planned, done: byClock ? Math.max(planned, before.done) : before.done + rested };
}

/** Every line of work, without those at the end that the plan does not get through. */
const marksOfRows = ({ rows }: Laid): readonly Mark[] =>
  upToWhole(
    rows
      .filter(({ kind }) => kind === "work")
      .map(({ index, round, end, prescribed }) => ({
        kind: "row",
        row: index,
        round,
        end,
        whole: prescribed === undefined,
      })),
  );

/** Every round, at the end of its last line of work; without those at the end that the plan does not get through. */
function marksOfRounds({ rows, rounds, ending }: Laid): readonly Mark[] {
  const ofRound = (number: number) => rows.filter(({ kind, round }) => kind === "work" && round === number);
  const [first] = rounds;
  const lineCount = first === undefined ? 0 : ofRound(first.round).length;
  const marks = rounds.flatMap(({ round }, at): readonly Mark[] => {
    const lines = ofRound(round);
    const last = lines.at(-1);
    if (last === undefined) return [];
    const broken = lines.some(({ prescribed }) => prescribed !== undefined);
    const cutShort = at === rounds.length - 1 && ending !== "finishes" && lines.length < lineCount;
    return [{ kind: "round", row: last.index, round, end: last.end, whole: !broken && !cutShort }];
  });
  return upToWhole(marks);
}

const upToWhole = (marks: readonly Mark[]): readonly Mark[] =>
  marks.slice(0, marks.findLastIndex(({ whole }) => whole) + 1);

/** The marks that the clocks fit best, by the mean difference of their logarithms; none where none are long enough. */
function nearest(
  candidates: readonly (readonly Mark[])[],
  clocks: readonly (number | undefined)[],
): readonly Mark[] {
  let best: { readonly marks: readonly Mark[]; readonly off: number } | undefined;
  for (const marks of candidates) {
    const both = Math.min(marks.length, clocks.length);
    if (both === 0) continue;
    // Clocks of lines outnumber rounds: what finds no mark is hardly meant, though somebody may do more than planned.
    let off = Math.max(0, clocks.length - marks.length) / clocks.length;
    for (let at = 0; at < both; at += 1) {
      const clock = clocks[at];
      if (clock === undefined) continue;
      off += Math.abs(Math.log(Math.max(clock, 1) / Math.max(marks[at]?.end ?? 1, 1))) / both;
    }
    if (best === undefined || off < best.off - 1e-9) best = { marks, off };
  }
  return best?.marks ?? [];
}

import type { CourseRest } from "../../models/course.ts";
import type { PacingRow } from "../../models/plan/pacing.ts";
import type { Solved } from "../search/solve-part.ts";
import type { PartInput } from "./paced-part.ts";
import { finalScore, plannedAmounts, wholeScore } from "./planned-amounts.ts";
import { PACING_FIXED } from "./fixed-constants.ts";
import { restPiece, type RowPiece, visitRows } from "./visit-rows.ts";

/** A rest shorter than this is none, seconds. */
const SHORTEST_REST = PACING_FIXED.shortestRest.value;

/**
 * The rows of a plan in order, as far as the plan goes: one for each visit, each prescribed rest, each planned wait and each change
 * of plates; what is waited or loaded before work out of reach is left out. A visit is parted where the clock pauses everybody. Every second up to the last row is in one of them.
 */
export function rowsOf(solved: Solved, input: PartInput): readonly PacingRow[] {
  const { log, state } = solved;
  const { track } = solved.bench;
  const rows: PacingRow[] = [];
  const planned = plannedAmounts(solved);
  const allScore = wholeScore(finalScore(solved));
  const allWork = Math.max(state.worked, 1e-9);
  let score = 0;
  for (let i = 0; i <= state.at && i < track.length; i += 1) {
    const item = track.items[i];
    if (!item) continue;
    const pieces =
      item.kind === "rest"
        ? restPieces(solved, input, item, i, rows.at(-1)?.end ?? 0)
        : visitRows(solved, input, item, i, planned[i] ?? 0);
    for (const piece of pieces) {
      if (piece.kind === "work") score += piece.amount * (track.score[i] as number);
      const scoreDone = wholeScore(score);
      const withoutScore = piece.kind === "rest" ? 0 : 1;
      // A wait before a set stands before the work of its visit.
      const isWait = piece.kind === "rest" && item.kind !== "rest";
      const workDone = isWait ? (rows.at(-1)?.shareOfWork ?? 0) : (log.worked[i] as number) / allWork;
      const left = isWait ? (log.before[i] as number) : (log.left[i] as number);
      rows.push({
        ...piece,
        index: rows.length,
        round: item.pass.round,
        ...(item.pass.of === undefined ? {} : { rounds: item.pass.of }),
        ...(item.pass.ladder === undefined ? {} : { ladder: item.pass.ladder }),
        scoreDone,
        shareOfReps: allScore > 0 ? Math.min(1, scoreDone / allScore) : withoutScore,
        shareOfTime: state.clock > 0 ? piece.end / state.clock : 1,
        shareOfWork: workDone,
        reserve: Math.min(1, Math.max(0, left)),
      });
    }
  }
  return track.wall[state.at] === 1
    ? rows.slice(0, rows.findLastIndex(({ kind }) => kind === "work") + 1)
    : rows;
}

/**
 * A prescribed rest, or the time to change plates; nothing where it is over before it begins. What was begun and not finished when
 * the clock ended the work before (`from` is the end of its last row) is waited out too.
 */
function restPieces(
  { log }: Solved,
  { loadBar }: PartInput,
  { change }: CourseRest,
  i: number,
  from: number,
): readonly RowPiece[] {
  const start = Math.min(log.started[i] as number, from);
  const end = log.ended[i] as number;
  if (end - start < SHORTEST_REST) return [];
  if (change === undefined) return [restPiece(start, end, "prescribed")];
  const { to, movement, off, on } = change;
  return [
    {
      ...restPiece(start, end, "plates"),
      load: loadBar(to, movement),
      change: { off: [...off], on: [...on], seconds: end - start },
    },
  ];
}

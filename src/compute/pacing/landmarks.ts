import type { Pacing, PacingRow } from "../../models/plan/pacing.ts";
import type { PacingConstants } from "../motion/constants.ts";
import { PACING_FIXED } from "./fixed-constants.ts";

/** More checkpoints than this nobody looks at. */
const MOST_CHECKPOINTS = PACING_FIXED.checkpointsTold.value;

/**
 * Rows at whose end the clock is worth a look: the ends of rounds, evenly thinned out where there are many; the ends of rows in work
 * of one round. The end of the work is always one.
 */
export function checkpointsOf(rows: readonly PacingRow[], rounds: Pacing["rounds"]): readonly number[] {
  const work = rows.filter((row) => row.kind === "work").map((row) => row.index);
  const all = rounds.length > 1 ? rounds.map((round) => round.lastRow) : work;
  if (all.length <= MOST_CHECKPOINTS) return all;
  const every = Math.ceil(all.length / MOST_CHECKPOINTS);
  return all.filter((_, i) => (all.length - 1 - i) % every === 0);
}

/** Where half of the work (in sustainable seconds) is done: the row, and clock and shares at that point, linear inside the row. */
export function halfOf(rows: readonly PacingRow[]): Pacing["half"] {
  let before: PacingRow | undefined;
  for (const row of rows) {
    if (row.shareOfWork >= 0.5 && row.kind === "work") {
      const from = before?.shareOfWork ?? 0;
      const through = row.shareOfWork > from ? (0.5 - from) / (row.shareOfWork - from) : 1;
      const begin = row.start + row.transition;
      const clock = begin + through * (row.end - begin);
      const reps = before?.shareOfReps ?? 0;
      const duration = row.shareOfTime > 0 ? row.end / row.shareOfTime : row.end;
      return {
        row: row.index,
        clock,
        shareOfReps: reps + through * (row.shareOfReps - reps),
        shareOfTime: duration > 0 ? clock / duration : 1,
      };
    }
    before = row;
  }
  return undefined;
}

/**
 * The round where it gets hard: the first that ends with little of the reserve, else the one with the least. Undefined where no round
 * takes a good part of it.
 */
export function hardOf(
  rows: readonly PacingRow[],
  rounds: Pacing["rounds"],
  { hardReserve, easyReserve }: Pick<PacingConstants, "hardReserve" | "easyReserve">,
): Pacing["hard"] {
  if (rounds.length < 2) return undefined;
  let lowest: { round: number; reserve: number } | undefined;
  for (const row of rows) {
    if (row.kind === "rest" || row.reserve === undefined) continue;
    if (row.reserve <= hardReserve) return { round: row.round, reserve: row.reserve };
    if (!lowest || row.reserve < lowest.reserve) lowest = { round: row.round, reserve: row.reserve };
  }
  return lowest && lowest.reserve <= easyReserve ? lowest : undefined;
}

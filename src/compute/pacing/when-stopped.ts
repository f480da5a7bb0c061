import type { Pacing, PacingRow } from "../../models/plan/pacing.ts";
import type { Solved } from "./solve-part.ts";

/** How a plan ends. */
export function endingOf({ state, bench }: Solved, capped: boolean): Pacing["ending"] {
  if (state.stopped === "deadline") return "eliminated";
  if (capped) return "stopped-by-cap";
  if (state.stopped === "wall") return "stopped-by-cap";
  return Number.isFinite(bench.horizon) && state.stopped === "horizon" ? "fills-the-time" : "finishes";
}

/**
 * Where a plan that does not finish stops, and what to go for. Reps are worth more than a tie-break wherever more reps are possible;
 * the tie-break is all that is left to win where the athlete stands before something they cannot do.
 */
export function whenStoppedOf(
  { state }: Solved,
  rows: readonly PacingRow[],
  ending: Pacing["ending"],
): Pacing["whenStopped"] {
  const last = rows.at(-1);
  if (!last || (ending !== "stopped-by-cap" && ending !== "eliminated")) return undefined;
  const standsAtWall = state.stopped === "wall";
  return {
    at: state.clock,
    scoreDone: last.scoreDone,
    row: last.index,
    advice: standsAtWall && rows.some((row) => row.tieBreak) ? "tie-break" : "most-reps",
  };
}

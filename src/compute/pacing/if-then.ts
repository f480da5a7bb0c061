import type { Pacing, PacingRow } from "../../models/plan/pacing.ts";
import { runDay } from "./day.ts";
import type { RunState } from "./run.ts";
import type { Solved } from "./solve-part.ts";

/** From this share of the time on being ahead is no longer a warning. */
const LATE_ENOUGH = 0.6;
/** Sets are cut to this share when behind. */
const SMALLER = 0.7;

/** The last row of the round before the one where it gets hard; where there is none, of the first round. */
function rowToLookAt(rounds: Pacing["rounds"], hard: Pacing["hard"]): number | undefined {
  if (rounds.length < 2) return undefined;
  const at = rounds.findIndex((round) => round.round === hard?.round);
  const look = Math.min(rounds.length - 2, Math.max(0, at - 1));
  return rounds[look]?.lastRow;
}

/**
 * Two thresholds on the clock before it gets hard, and what to do beyond them.
 *
 * Behind: the day is worse than expected by that share, so the sets of the movement that limits are cut, or every round is
 * slowed by as much. Ahead: early it is a warning and the plan is held; later the difference may be kept up. The score
 * expected then is that of a day on which the form explains the difference.
 */
export function ifThenOf(
  solved: Solved,
  rows: readonly PacingRow[],
  rounds: Pacing["rounds"],
  hard: Pacing["hard"],
  limiter: string | undefined,
  resultOf: (state: RunState) => number,
): Pacing["ifThen"] {
  const index = rowToLookAt(rounds, hard);
  const row = index === undefined ? undefined : rows[index];
  if (!row) return [];
  const { bench, choice } = solved;
  const { ahead } = bench.rules;
  const difference = Math.min(ahead, row.end * 0.1);
  const left = rounds.filter((round) => round.start >= row.end - 1e-6);
  const roundTime = left.length > 0 ? left.reduce((sum, round) => sum + round.seconds, 0) / left.length : 0;
  const perRound = (roundTime * difference) / row.end;
  const projected = (behind: number): number =>
    resultOf(runDay(bench, choice.plan, row.end / (row.end + behind), 1, bench.coarse));
  const common = { row: row.index, round: row.round, planned: row.end };
  const broken = rows.find(
    (other) =>
      other.kind === "work" && other.index > row.index && other.name === limiter && other.sets.length > 1,
  );
  return [
    {
      ...common,
      when: "later-than",
      clock: row.end + difference,
      action: broken
        ? {
            kind: "smaller-sets",
            movement: broken.movement ?? "",
            name: broken.name,
            amount: Math.max(1, Math.floor((broken.sets[0]?.amount ?? 1) * SMALLER)),
          }
        : { kind: "slow-down", secondsPerRound: perRound },
      projected: projected(difference),
    },
    {
      ...common,
      when: "earlier-than",
      clock: row.end - difference,
      action: row.shareOfTime >= LATE_ENOUGH ? { kind: "push", secondsPerRound: perRound } : { kind: "hold" },
      projected: projected(-difference),
    },
  ];
}

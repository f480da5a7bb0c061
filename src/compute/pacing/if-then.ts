import type { Pacing, PacingRow } from "../../models/plan/pacing.ts";
import { runDay } from "./day.ts";
import type { ResultReading } from "./result-reading.ts";
import { isByInterval } from "./interval-rows.ts";
import { endsByClock } from "./rounds.ts";
import type { RunState } from "./run.ts";
import type { Solved } from "./solve-part.ts";

/** From this share of the time on being ahead is no longer a warning. */
const LATE_ENOUGH = 0.6;
/** Sets are cut to this share when behind. */
const SMALLER = 0.7;

/** Where nothing gets hard, the clock is looked at after this share of the time. */
const WITHOUT_HARD = 0.6;
/** Results nearer than this are one, in seconds or score units. */
const SAME_RESULT = 0.5;
/** What is done differs from the plan when it differs by this share. */
const NOTICED = 0.04;
/** The round before the one where it gets hard; where none does, one past the middle. */
function roundToLookAt(rounds: Pacing["rounds"], hard: Pacing["hard"]): Pacing["rounds"][number] | undefined {
  if (rounds.length < 2) return undefined;
  const at = rounds.findIndex((round) => round.round === hard?.round);
  const end = rounds.at(-1)?.end ?? 0;
  const look = at >= 0 ? at - 1 : rounds.findLastIndex((round) => round.end <= WITHOUT_HARD * end);
  return rounds[Math.min(rounds.length - 2, Math.max(0, look))];
}

type IfThen = Pacing["ifThen"][number];

/**
 * Two thresholds before it gets hard, and what to do beyond them: on the clock, or where the clock ends every round, on what is done.
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
  { score, of: resultOf }: Pick<ResultReading, "score" | "of">,
): Pacing["ifThen"] {
  const round = roundToLookAt(rounds, hard);
  const row = round === undefined ? undefined : rows[round.lastRow];
  if (!round || !row) return [];
  const { bench, choice } = solved;
  const dayOf = (form: number): RunState => runDay(bench, choice.plan, form, 1, bench.coarse);
  const common = { row: row.index, round: row.round, planned: row.end };
  const broken = rows.find(
    (other) =>
      other.kind === "work" &&
      other.index > row.index &&
      other.name === limiter &&
      other.sets.length > 1 &&
      (other.sets[0]?.amount ?? 0) > 1,
  );
  const smallerSets: IfThen["action"] | undefined = broken && {
    kind: "smaller-sets",
    movement: broken.movement ?? "",
    name: broken.name,
    amount: Math.max(1, Math.floor((broken.sets[0]?.amount ?? 1) * SMALLER)),
  };
  const late = row.shareOfTime >= LATE_ENOUGH;
  const left = rounds.filter((other) => other.start >= row.end - 1e-6);
  const meanOf = (total: number): number => (left.length > 0 ? total / left.length : 0);
  if (endsByClock(bench, round.round)) {
    if (isByInterval(score) || !(round.scoreDone > 0)) return [];
    const difference = Math.max(1, Math.round(NOTICED * round.scoreDone));
    const perRound = meanOf((rounds.at(-1)?.scoreDone ?? 0) - round.scoreDone);
    const beyond = (by: number): Omit<IfThen, "when" | "action"> & { readonly aim: IfThen["action"] } => ({
      ...common,
      clock: row.end,
      score: round.scoreDone + by,
      plannedScore: round.scoreDone,
      projected: resultOf(dayOf((round.scoreDone + by) / round.scoreDone)),
      aim: {
        kind: "aim-at",
        scorePerRound: Math.round((perRound * (round.scoreDone + by)) / round.scoreDone),
      },
    });
    const { aim: fewer, ...behind } = beyond(-difference);
    const { aim: more, ...ahead } = beyond(difference);
    return [
      { ...behind, when: "fewer-than", action: smallerSets ?? fewer },
      { ...ahead, when: "more-than", action: late ? more : { kind: "hold" } },
    ];
  }
  const difference = Math.min(bench.rules.ahead, row.end * 0.1);
  const secondsPerRound =
    (meanOf(left.reduce((sum, { seconds }) => sum + seconds, 0)) * difference) / row.end;
  const projected = (behind: number): number => resultOf(dayOf(row.end / (row.end + behind)));
  // Where the result is the same either way, as where a deadline or a minute decides it, there is nothing to do about the clock.
  if (Math.abs(projected(difference) - projected(-difference)) < SAME_RESULT) return [];
  return [
    {
      ...common,
      when: "later-than",
      clock: row.end + difference,
      action: smallerSets ?? { kind: "slow-down", secondsPerRound },
      projected: projected(difference),
    },
    {
      ...common,
      when: "earlier-than",
      clock: row.end - difference,
      action: late ? { kind: "push", secondsPerRound } : { kind: "hold" },
      projected: projected(-difference),
    },
  ];
}

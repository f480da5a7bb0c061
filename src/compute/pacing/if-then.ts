import type { Pacing, PacingRow } from "../../models/plan/pacing.ts";
import type { Rules } from "../motion/rules.ts";
import { runDay } from "../search/day.ts";
import { isByInterval } from "./interval-rows.ts";
import type { ResultReading } from "./result-reading.ts";
import { endsByClock } from "./rounds.ts";
import { countingOf } from "./adding-up.ts";
import type { Solved } from "../search/solve-part.ts";
import { lookStation } from "./stations.ts";
import { type IfThen, type Lookout, roundToLookAt, smallerSetsAfter } from "./lookout.ts";
import { byStation } from "./if-then-by-station.ts";
import { byScore } from "./if-then-by-score.ts";
import { byClock } from "./if-then-by-clock.ts";

/** The table of a part, where in it it gets hard, and the movement that limits. */
type PacedTable = Pick<Pacing, "rounds" | "hard"> & {
  readonly rows: readonly PacingRow[];
  readonly limiter: string | undefined;
};

/**
 * Two thresholds before it gets hard, and what to do beyond them: on the clock, or where the clock ends every round, on what is done.
 *
 * Behind: the day is worse than expected by that share, so the sets of the movement that limits are cut, or every round is
 * slowed by as much. Ahead: early it is a warning and the plan is held; later the difference may be kept up. The score
 * expected then is that of a day on which the form explains the difference. None where the result is the same either way.
 */
export function ifThenOf(
  { bench, choice, log, state }: Solved,
  { rows, rounds, hard, limiter }: PacedTable,
  reading: Pick<ResultReading, "score" | "of" | "target">,
): Pacing["ifThen"] {
  const { rules } = bench;
  const isOneRound = rounds.length < 2;
  const worked = new Set(rows.flatMap((row) => (row.kind === "work" ? [row.round] : [])));
  const round = isOneRound
    ? rounds[0]
    : roundToLookAt(
        rounds.filter((one) => worked.has(one.round)),
        hard,
        rules,
      );
  const row = isOneRound ? lookStation(rows) : round && rows[round.lastRow];
  if (!round || !row) return [];
  const lookout: Lookout = {
    row,
    round,
    left: rounds.filter((other) => other.start >= row.end - 1e-6),
    target: reading.target,
    isTime: reading.score === "time",
    late: row.shareOfTime >= rules.warningUntil,
    counting: countingOf(bench.track, rows),
    smallerSets: smallerSetsAfter(row, rows, isOneRound ? undefined : limiter, rules),
    resultAt: resultOfForm(
      (form) => reading.of(runDay(bench, choice.plan, { form, reserveForm: 1 }, bench.coarse)),
      reading,
    ),
  };
  // Before a door that shuts, and in short work, nothing is won by holding back.
  const isShort = (rounds.at(-1)?.end ?? 0) < rules.leadKeptBelow;
  const held =
    state.stopped === "deadline" || isShort ? (one: IfThen) => one.action.kind !== "hold" : () => true;
  if (isOneRound) return byStation(lookout, rows, { bench, log }, rules).filter(held);
  // Where the slowest interval counts, what was lost in one is not won back in another.
  if (reading.score === "slowest-interval") return [];
  if (!endsByClock({ bench, log }, round.round)) {
    return byClock(lookout, rules.ahead)
      .filter(held)
      .filter((one) => changesSomething(one, rules));
  }
  return isByInterval(reading.score) ? [] : byScore(lookout, rules.aheadInScore).filter(held);
}

/** The result of a day of a form: the plan's own, moved by as much as the form moves a day that is run in the same steps. */
function resultOfForm(
  run: (form: number) => number,
  { target }: Pick<ResultReading, "target">,
): (form: number) => number {
  const usual = run(1);
  return (form) => target + run(form) - usual;
}

const changesSomething = ({ action }: IfThen, { leastChange }: Rules): boolean =>
  !(action.kind === "slow-down" || action.kind === "push") || action.secondsPerRound >= leastChange;

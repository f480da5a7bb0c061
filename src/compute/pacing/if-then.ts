import type { Pacing, PacingRow } from "../../models/plan/pacing.ts";
import type { Rules } from "../motion/rules.ts";
import { runDay } from "../search/day.ts";
import { isByInterval } from "./interval-rows.ts";
import type { ResultReading } from "./result-reading.ts";
import { endsByClock } from "./rounds.ts";
import type { Solved } from "../search/solve-part.ts";

/** Results nearer than this are one, in seconds or score units: both are told in whole ones. */
const SAME_RESULT = 0.5;

type Round = Pacing["rounds"][number];
type IfThen = Pacing["ifThen"][number];

/** Where to look, what to do there when behind, and what a day would bring whose form explains a difference. */
type Lookout = {
  readonly row: PacingRow;
  readonly round: Round;
  /** Rounds after it. */
  readonly left: readonly Round[];
  /** Whether what is gained there may be kept up. */
  readonly late: boolean;
  readonly smallerSets: IfThen["action"] | undefined;
  /** Result of a day of a form, relative to the expected one. */
  readonly resultAt: (form: number) => number;
};

/** The round before the one where it gets hard; where none does, the last that ends before it is late. A few rounds are left after it. */
function roundToLookAt(
  rounds: Pacing["rounds"],
  hard: Pacing["hard"],
  { warningUntil, roundsLeft }: Rules,
): Round | undefined {
  if (rounds.length < 2) return undefined;
  const at = rounds.findIndex((round) => round.round === hard?.round);
  const end = rounds.at(-1)?.end ?? 0;
  const look = at >= 0 ? at - 1 : rounds.findLastIndex((round) => round.end <= warningUntil * end);
  const last = Math.max(0, rounds.length - 1 - Math.floor(roundsLeft));
  return rounds[Math.min(last, Math.max(0, look))];
}

/**
 * Two thresholds before it gets hard, and what to do beyond them: on the clock, or where the clock ends every round, on what is done.
 *
 * Behind: the day is worse than expected by that share, so the sets of the movement that limits are cut, or every round is
 * slowed by as much. Ahead: early it is a warning and the plan is held; later the difference may be kept up. The score
 * expected then is that of a day on which the form explains the difference. None where the result is the same either way.
 */
export function ifThenOf(
  { bench, choice, log, state }: Solved,
  rows: readonly PacingRow[],
  rounds: Pacing["rounds"],
  hard: Pacing["hard"],
  limiter: string | undefined,
  reading: Pick<ResultReading, "score" | "of" | "target">,
): Pacing["ifThen"] {
  const { rules } = bench;
  const round = roundToLookAt(rounds, hard, rules);
  const row = round === undefined ? undefined : rows[round.lastRow];
  if (!round || !row) return [];
  const lookout: Lookout = {
    row,
    round,
    left: rounds.filter((other) => other.start >= row.end - 1e-6),
    late: row.shareOfTime >= rules.warningUntil,
    smallerSets: smallerSetsAfter(row, rows, limiter, rules),
    resultAt: resultOfForm((form) => reading.of(runDay(bench, choice.plan, form, 1, bench.coarse)), reading),
  };
  // Before a door that shuts, and in short work, nothing is won by holding back.
  const isShort = (rounds.at(-1)?.end ?? 0) < rules.leadKeptBelow;
  const held =
    state.stopped === "deadline" || isShort ? (one: IfThen) => one.action.kind !== "hold" : () => true;
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

/** Cutting the sets of the movement that limits, where it is still to come in sets of more than one. */
function smallerSetsAfter(
  row: PacingRow,
  rows: readonly PacingRow[],
  limiter: string | undefined,
  { smallerSets }: Rules,
): IfThen["action"] | undefined {
  const isBroken = ({ kind, index, name, sets: [first, ...more] }: PacingRow): boolean =>
    kind === "work" && index > row.index && name === limiter && more.length > 0 && (first?.amount ?? 0) > 1;
  const broken = rows.find(isBroken);
  return (
    broken && {
      kind: "smaller-sets",
      movement: broken.movement ?? "",
      name: broken.name,
      amount: Math.max(1, Math.floor((broken.sets[0]?.amount ?? 1) * smallerSets)),
    }
  );
}

/** Mean of what the rounds after are planned with; 0 without any. */
const meanOf = (left: readonly Round[], value: (round: Round) => number): number =>
  left.reduce((sum, round) => sum + value(round), 0) / Math.max(1, left.length);

/** Thresholds on the clock. `most`: seconds off the plan at which to act. */
function byClock({ row, left, late, smallerSets, resultAt }: Lookout, most: number): IfThen[] {
  const difference = Math.min(most, row.end * 0.1);
  const secondsPerRound = (meanOf(left, ({ seconds }) => seconds) * difference) / row.end;
  const at = (by: number) => ({
    row: row.index,
    round: row.round,
    planned: row.end,
    clock: row.end + by,
    projected: resultAt(row.end / (row.end + by)),
  });
  const [behind, ahead] = [at(difference), at(-difference)];
  if (Math.abs(behind.projected - ahead.projected) < SAME_RESULT) return [];
  return [
    { ...behind, when: "later-than", action: smallerSets ?? { kind: "slow-down", secondsPerRound } },
    { ...ahead, when: "earlier-than", action: late ? { kind: "push", secondsPerRound } : { kind: "hold" } },
  ];
}

/** Thresholds on what is done. `share`: of what is planned, at which to act. */
function byScore({ row, round, left, late, smallerSets, resultAt }: Lookout, share: number): IfThen[] {
  const planned = round.scoreDone;
  if (!(planned > 0)) return [];
  const difference = Math.max(1, Math.round(share * planned));
  const at = (by: number) => ({
    row: row.index,
    round: row.round,
    planned: row.end,
    clock: row.end,
    score: planned + by,
    plannedScore: planned,
    projected: resultAt((planned + by) / planned),
  });
  const perRound = ((left.at(-1)?.scoreDone ?? planned) - planned) / Math.max(1, left.length);
  const aimAt = (by: number): IfThen["action"] => ({
    kind: "aim-at",
    scorePerRound: Math.round((perRound * (planned + by)) / planned),
  });
  const [behind, ahead] = [at(-difference), at(difference)];
  if (Math.abs(behind.projected - ahead.projected) < SAME_RESULT) return [];
  return [
    { ...behind, when: "fewer-than", action: smallerSets ?? aimAt(-difference) },
    { ...ahead, when: "more-than", action: late ? aimAt(difference) : { kind: "hold" } },
  ];
}

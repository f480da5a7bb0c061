import type { Pacing, PacingRow } from "../../models/plan/pacing.ts";
import type { Rules } from "../motion/rules.ts";
import { runDay } from "../search/day.ts";
import { displayedPace } from "./displayed-pace.ts";
import { isByInterval } from "./interval-rows.ts";
import type { ResultReading } from "./result-reading.ts";
import { endsByClock } from "./rounds.ts";
import { type Counting, countingOf } from "./adding-up.ts";
import type { Solved } from "../search/solve-part.ts";
import { lookStation } from "./stations.ts";
import { PACING_FIXED } from "./fixed-constants.ts";

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
  /** Result as planned. */
  readonly target: number;
  /** Whether the result is a time. */
  readonly isTime: boolean;
  /** Whether what is gained there may be kept up. */
  readonly late: boolean;
  readonly smallerSets: IfThen["action"] | undefined;
  readonly counting: Counting;
  /** Result of a day of a form, relative to the expected one. */
  readonly resultAt: (form: number) => number;
};

/** The table of a part, where in it it gets hard, and the movement that limits. */
type PacedTable = Pick<Pacing, "rounds" | "hard"> & {
  readonly rows: readonly PacingRow[];
  readonly limiter: string | undefined;
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

/** Cutting the sets of the movement that limits (of any, without one), where it is still to come in sets of more than one. */
function smallerSetsAfter(
  row: PacingRow,
  rows: readonly PacingRow[],
  limiter: string | undefined,
  { smallerSets }: Rules,
): IfThen["action"] | undefined {
  const isBroken = ({ kind, index, name, sets: [first, ...more] }: PacingRow): boolean =>
    kind === "work" &&
    index > row.index &&
    (limiter === undefined || name === limiter) &&
    more.length > 0 &&
    usualOf([first, ...more]) > smallerOf(first);
  const smallerOf = (first: Set | undefined): number =>
    Math.max(1, Math.floor((first?.amount ?? 1) * smallerSets));
  const broken = rows.find(isBroken);
  return (
    broken && {
      kind: "smaller-sets",
      movement: broken.movement ?? "",
      name: broken.name,
      amount: smallerOf(broken.sets[0]),
    }
  );
}

type Set = PacingRow["sets"][number];

/** The set in the middle of all by size: what is mostly done. */
const usualOf = (sets: readonly (Set | undefined)[]): number =>
  sets.flatMap((set) => set?.amount ?? []).toSorted((one, other) => one - other)[
    Math.floor(sets.length / 2)
  ] ?? 0;

/** Mean of what the rounds after are planned with; 0 without any. */
const meanOf = (left: readonly Round[], value: (round: Round) => number): number =>
  left.reduce((sum, round) => sum + value(round), 0) / Math.max(1, left.length);

/** What comes so much later or sooner than planned, as a share of its clock, is a day of another form; never more than the other. Judgement. */
const ANOTHER_FORM = PACING_FIXED.anotherForm.value;

/** Seconds off the plan at which to act: at least so many, more where it is late. */
const differenceAt = (row: PacingRow, least: number): number =>
  Math.min(row.end * ANOTHER_FORM.most, Math.max(least, Math.round(row.end * ANOTHER_FORM.least)));

/**
 * Thresholds on the clock. `least`: seconds off the plan at which to act. What to expect adds up: what one is off by, and what is
 * changed in every round left; where sets are cut, what the form of such a day brings.
 */
function byClock(lookout: Lookout, least: number): IfThen[] {
  const { row, left, late, smallerSets, resultAt, target, isTime } = lookout;
  const difference = differenceAt(row, least);
  const secondsPerRound = (meanOf(left, ({ seconds }) => seconds) * difference) / row.end;
  const at = (by: number, action: IfThen["action"]) => {
    const ofForm = resultAt(row.end / (row.end + by));
    const kept = target + by + (action.kind === "hold" ? 0 : Math.sign(by) * secondsPerRound * left.length);
    return {
      row: row.index,
      round: row.round,
      planned: row.end,
      clock: row.end + by,
      projected: isTime && action.kind !== "smaller-sets" ? kept : ofForm,
      action,
    };
  };
  const behind = at(difference, smallerSets ?? { kind: "slow-down", secondsPerRound });
  const ahead = at(-difference, late ? { kind: "push", secondsPerRound } : { kind: "hold" });
  if (Math.abs(behind.projected - ahead.projected) < SAME_RESULT) return [];
  return [
    { ...behind, when: "later-than" },
    { ...ahead, when: "earlier-than" },
  ];
}

/** Least change of a pace that is told: a tenth of a second a rep, or this share where a display shows it. Judgement. */
const LEAST_PACE = PACING_FIXED.leastPaceTold.value;

/**
 * Thresholds at a station, in work of one round. Behind, what is still to come in sets is cut into smaller ones, else the longest
 * station left goes at the pace of such a day; ahead, it goes that much quicker, or, early, at the pace planned.
 */
function byStation(
  { row, late, smallerSets, resultAt, target, isTime }: Lookout,
  rows: readonly PacingRow[],
  { bench: { track } }: Pick<Solved, "bench" | "log">,
  { ahead }: Rules,
): IfThen[] {
  const difference = differenceAt(row, ahead);
  const next = longestAfter(row, rows);
  const movement = track.tasks.find(({ movement: { id } }) => id === next?.movement)?.movement;
  const paceAt = (by: number): IfThen["action"] | undefined => {
    if (next?.secondsPerUnit === undefined || movement === undefined) return undefined;
    const change = by / row.end;
    const secondsPerUnit = next.secondsPerUnit * (1 + change);
    const isTold =
      next.displayed === undefined
        ? Math.abs(secondsPerUnit - next.secondsPerUnit) >= LEAST_PACE.seconds
        : Math.abs(change) >= LEAST_PACE.share;
    if (!isTold) return undefined;
    const displayed = next.displayed && displayedPace(movement, next.unit, secondsPerUnit);
    return { kind: "pace-at", row: next.index, secondsPerUnit, ...(displayed && { displayed }) };
  };
  const at = (by: number, when: IfThen["when"], action: IfThen["action"] | undefined): IfThen[] =>
    action === undefined
      ? []
      : [
          {
            row: row.index,
            round: row.round,
            planned: row.end,
            clock: row.end + by,
            projected: isTime && action.kind === "hold" ? target + by : resultAt(row.end / (row.end + by)),
            action,
            when,
          },
        ];
  const told = [
    ...at(difference, "later-than", smallerSets ?? paceAt(difference)),
    ...at(-difference, "earlier-than", late ? paceAt(-difference) : { kind: "hold" }),
  ];
  // Where a wall or a cap ends the work the same either way, nothing is left to change.
  return told.filter(({ projected = target }) => Math.abs(projected - target) >= SAME_RESULT);
}

/** Of what is left, the station that takes longest and is told with a pace. */
const longestAfter = (row: PacingRow, rows: readonly PacingRow[]): PacingRow | undefined =>
  rows
    .filter(
      ({ kind, index, secondsPerUnit, amount }) =>
        kind === "work" && index > row.index && secondsPerUnit !== undefined && amount > 1,
    )
    .toSorted((one, other) => other.end - other.start - (one.end - one.start))[0];

/** Thresholds on what is done. `share`: of what is planned, at which to act. */
function byScore(lookout: Lookout, share: number): IfThen[] {
  const { row, round, left, late, smallerSets, resultAt, target, counting } = lookout;
  const { doneAt, counted } = counting;
  const planned = doneAt(round.lastRow);
  if (!(planned > 0)) return [];
  const difference = Math.max(1, Math.round(share * planned));
  const at = (by: number) => ({
    row: row.index,
    round: row.round,
    planned: row.end,
    clock: row.end,
    score: planned + by,
    plannedScore: planned,
    ...(counted ? { counted } : {}),
    projected: resultAt((planned + by) / planned),
  });
  const perRound = usualDone([planned, ...left.map(({ lastRow }) => doneAt(lastRow))]);
  const aimAt = (by: number): IfThen["action"] | undefined =>
    perRound === undefined
      ? undefined
      : { kind: "aim-at", scorePerRound: Math.round((perRound * (planned + by)) / planned) };
  const [behind, ahead] = [at(-difference), at(difference)];
  if (Math.abs(behind.projected - ahead.projected) < SAME_RESULT) return [];
  const [less, more] = [smallerSets ?? aimAt(-difference), late ? aimAt(difference) : HOLD];
  return [
    ...(less ? [{ ...behind, when: "fewer-than" as const, action: less }] : []),
    ...(more
      ? [
          {
            ...ahead,
            when: "more-than" as const,
            action: more,
            ...(late ? {} : { projected: target + difference }),
          },
        ]
      : []),
  ];
}

const HOLD = { kind: "hold" } as const;
/** Rounds whose amounts differ by more than this share are not to be aimed at with one number. Judgement. */
const ALIKE = PACING_FIXED.alikeRounds.value;

/**
 * What is usually done in a round, from what is done by the end of each: without rounds of rest, and without a last one that ends the
 * work early. Nothing where rounds are unlike each other, and where none is left.
 */
function usualDone(ends: readonly number[]): number | undefined {
  const each = ends.slice(1).flatMap((end, at) => (end > (ends[at] ?? 0) ? [end - (ends[at] ?? 0)] : []));
  const whole = each.length > 1 ? each.slice(0, -1) : each;
  if (whole.length === 0 || Math.max(...whole) > (1 + ALIKE) * Math.min(...whole)) return undefined;
  const last = each.at(-1) ?? 0;
  const counted = last >= Math.min(...whole) ? each : whole;
  return counted.reduce((sum, done) => sum + done, 0) / counted.length;
}

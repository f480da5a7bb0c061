import type { PartPlan } from "../models/plan/plan.ts";
import { sayNumber } from "../wording/number.ts";
import { namesOfIntervals, workOfIntervals } from "../wording/interval-work.ts";
import { clockShift, sayClockHead } from "../wording/part-clock.ts";
import { isTime } from "../wording/score.ts";
import { sayStation } from "../wording/stations.ts";
import { saySets, setsAsWritten } from "../wording/sets.ts";
import { sayClock, sayDuration } from "../wording/time.ts";
import { isUnfinished } from "../wording/unfinished.ts";

type Pacing = NonNullable<PartPlan["pacing"]>;
type Row = Pacing["rows"][number];

/** How much a panel of rounds shows. */
export type RoundDetail = {
  /** Sets beside the clock of each round, or not. */
  readonly sets: boolean;
  /** Every round or movement, only those where the clock is worth a look, or a few of these spread evenly, or the end alone. */
  readonly every: "row" | "checkpoint" | "few" | "last";
};

/** One line of a panel: the label in its box, a name where rounds have none, the key figure, sets by movement, a note. */
export type RoundLine = {
  readonly label: string;
  readonly name?: string;
  /** Own load, height and pace, where the line is one visit. */
  readonly details?: string;
  readonly figure: string;
  readonly sets: readonly string[];
  readonly note?: string;
  /** Whether a tie-break time is taken in it. */
  readonly tieBreak: boolean;
};

/** The lines of a panel and the words over its columns. */
export type RoundLines = {
  readonly figureHeading: string;
  readonly setHeadings: readonly string[];
  readonly lines: readonly RoundLine[];
};

/** Short names of the movements that are broken into sets somewhere, in order. */
export function brokenMovements(pacing: Pacing): readonly string[] {
  const broken = pacing.rows.filter((row) => row.kind === "work" && row.sets.length > 1);
  return [...new Set(broken.map((row) => row.short))];
}

/**
 * What a panel says: of counted intervals the score of each and the rest left; of rounds and timed intervals the clock at the end of each; of work
 * in a single pass the clock at the end of each movement.
 */
export function roundLines(part: PartPlan, pacing: Pacing, detail: RoundDetail): RoundLines {
  const broken = detail.sets ? brokenMovements(pacing) : [];
  const clockHeading = sayClockHead(part);
  if (pacing.intervals && !isTime(pacing.score)) {
    return { figureHeading: "score", setHeadings: broken, lines: intervalLines(pacing, broken) };
  }
  if (pacing.rounds.length > 1) {
    const lines = passLines(pacing, broken, clockShift(part), detail);
    return { figureHeading: clockHeading, setHeadings: broken, lines };
  }
  const lines = movementLines(pacing, broken.length > 0, clockShift(part), detail);
  return { figureHeading: clockHeading, setHeadings: broken.length > 0 ? ["sets"] : [], lines };
}

function intervalLines(pacing: Pacing, broken: readonly string[]): readonly RoundLine[] {
  const work = workOfIntervals(pacing);
  const names = namesOfIntervals(pacing);
  return (pacing.intervals ?? []).map(({ interval, score, restLeft }, index) => {
    const rows = work[index] ?? [];
    const name = names[index];
    return {
      label: sayNumber(interval, 0),
      ...(name !== undefined && { name }),
      figure: sayNumber(score, 0),
      sets: setsOf(rows, broken),
      ...restNote(restLeft),
      tieBreak: hasTieBreak(rows),
    };
  });
}

/** As many lines as stay when only a few do. */
const FEW = 3;

function isShown(pacing: Pacing, row: number, { every }: RoundDetail): boolean {
  if (every === "row") return true;
  const last = pacing.rows.at(-1)?.index;
  if (every === "last") return row === last;
  const watched = [...new Set([...pacing.checkpoints, ...(last === undefined ? [] : [last])])];
  if (every === "checkpoint" || watched.length <= FEW) return watched.includes(row);
  const few = Array.from({ length: FEW }, (_, index) => Math.round(((index + 1) * watched.length) / FEW) - 1);
  return few.some((at) => watched[at] === row);
}

const passLines = (
  pacing: Pacing,
  broken: readonly string[],
  shift: number,
  detail: RoundDetail,
): readonly RoundLine[] =>
  pacing.rounds
    .filter((round) => isShown(pacing, round.lastRow, detail))
    .map((round) => {
      const rows = pacing.rows.filter((row) => row.round === round.round);
      const work = rows.filter((row) => row.kind === "work").at(-1);
      const figure = sayClock((pacing.intervals && work ? work.end : round.end) + shift);
      const line = { label: round.label, figure, sets: setsOf(rows, broken), tieBreak: hasTieBreak(rows) };
      if (isUnfinished(pacing, round.round)) return { ...line, note: "unfinished" };
      return {
        ...line,
        ...restNote(pacing.intervals?.find(({ interval }) => interval === round.round)?.restLeft ?? 0),
      };
    });

const movementLines = (
  pacing: Pacing,
  withSets: boolean,
  shift: number,
  detail: RoundDetail,
): readonly RoundLine[] =>
  pacing.rows
    .filter((row) => row.kind === "work" && isShown(pacing, row.index, detail))
    .map((row, index) => ({
      label: sayNumber(index + 1, 0),
      name: sayStation(row, pacing.rows, detail.sets).work,
      details: sayStation(row, pacing.rows, detail.sets).details.join("  "),
      figure: sayClock(row.end + shift),
      sets: withSets ? [row.sets.length > 1 ? saySets(setsAsWritten(row)) : ""] : [],
      tieBreak: row.tieBreak,
    }));

/** The rest left of an interval; of none nothing is said. */
const restNote = (restLeft: number): { readonly note?: string } =>
  Math.round(restLeft) > 0 ? { note: `rest ${sayDuration(restLeft)}` } : {};

const hasTieBreak = (rows: readonly Row[]): boolean => rows.some((row) => row.tieBreak);

/** The sets of each broken movement in one round; a movement that comes twice has both visits, with a plus: a slash parts divisions. */
const setsOf = (rows: readonly Row[], broken: readonly string[]): readonly string[] =>
  broken.map((short) =>
    rows
      .filter((row) => row.short === short)
      .map((row) => saySets(setsAsWritten(row)))
      .join(" + "),
  );

import type { Movement } from "../../models/movement.ts";
import type { CourseEffort, CourseRest } from "../../models/course.ts";
import type { PacingRow } from "../../models/plan/pacing.ts";
import type { Solved } from "../search/solve-part.ts";
import { displayedPace } from "./displayed-pace.ts";
import type { PartInput } from "./paced-part.ts";
import { finalScore, plannedAmounts, wholeScore } from "./planned-amounts.ts";
import { visitPieces } from "./visit-pieces.ts";
import { PACING_FIXED } from "./fixed-constants.ts";

/**
 * A wait shorter than the first is a few breaths on the way to the bar and told with the row; shorter than the second it is part of
 * getting ready; a rest shorter than the third is none. Seconds.
 */
const SHORTEST_WAIT = PACING_FIXED.shortestWait.value;
const SHORTEST_BREATH = PACING_FIXED.shortestBreath.value;
const SHORTEST_REST = PACING_FIXED.shortestRest.value;

type RowPiece = Omit<
  PacingRow,
  | "index"
  | "round"
  | "rounds"
  | "ladder"
  | "scoreDone"
  | "shareOfReps"
  | "shareOfTime"
  | "shareOfWork"
  | "reserve"
>;

/**
 * The rows of a plan in order, as far as the plan goes: one for each visit, each prescribed rest, each planned wait and each change
 * of plates. A visit is parted where the clock pauses everybody. Every second up to the last row is in one of them.
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
  return rows;
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

function restPiece(start: number, end: number, why: NonNullable<PacingRow["why"]>): RowPiece {
  return {
    kind: "rest",
    why,
    name: "rest",
    short: "rest",
    amount: end - start,
    unit: "seconds",
    complexWithNext: false,
    sets: [],
    transition: 0,
    start,
    end,
    tieBreak: false,
  };
}

/**
 * The time of a visit in which no whole unit is done: the clock ends before one, or, where the work goes on after it, it is out of reach
 * and leaves its time for rest.
 */
function rowsOfNothing(
  { log, state, track }: Pick<Solved, "log" | "state"> & Pick<Solved["bench"], "track">,
  i: number,
): readonly RowPiece[] {
  const [from, to] = [log.started[i] as number, log.ended[i] as number];
  if (to - from < SHORTEST_REST) return [];
  const isWall = track.wall[i] === 1;
  if (isWall && i < state.at) return [restPiece(from, to, "prescribed")];
  return i === state.at && !isWall ? [restPiece(from, to, "begun")] : [];
}

/** What is done in a visit, the same for each of its pieces. */
const workOf = (item: CourseEffort, movement: Movement, loadBar: PartInput["loadBar"]) => ({
  movement: movement.id,
  name: movement.name,
  plural: movement.plural,
  short: movement.short,
  unit: item.unit,
  ...(item.written && item.written.unit !== "m" ? { writtenIn: item.written.unit } : {}),
  ...(item.sides ? { sides: item.sides } : {}),
  ...(item.load && !item.load.athletesChoice ? { load: loadBar(item.load, movement) } : {}),
  ...(item.height === undefined ? {} : { heightMetres: item.height }),
  complexWithNext: item.joinedToNext,
});

/** The rows of a visit: the wait before it, where one is planned, and its work. */
function visitRows(
  { log, state, bench: { track }, sets }: Solved,
  { loadBar }: PartInput,
  item: CourseEffort,
  i: number,
  amount: number,
): readonly RowPiece[] {
  if (amount <= 0) return rowsOfNothing({ log, state, track }, i);
  const { restFirst = 0, rest = 0, cycle = 0, sizes = [amount], total = 0 } = sets[i] ?? {};
  const start = log.started[i] as number;
  const asked = track.amount[i] as number;
  const closes = log.ended[i] as number;
  // What the clock leaves of a unit after the last whole one is told apart.
  const spent = (log.worksFrom[i] as number) + total;
  const ended = total > 0 && asked > amount + 1e-6 && closes - spent >= SHORTEST_WAIT ? spent : closes;
  // Nobody stands at the start signal: what would be waited there goes into slower units.
  // Where an interval ends the work, less than the wait that would suit the set may be left of it.
  const spare = ended - (log.worksFrom[i] as number) - amount * cycle;
  const breath = start > 0 ? Math.max(0, Math.min(restFirst, spare)) : 0;
  const wait = breath >= SHORTEST_WAIT ? breath : 0;
  const pieces = visitPieces(
    {
      amount,
      sizes,
      rest,
      cycle,
      started: start + wait,
      worksFrom: (log.worksFrom[i] as number) + breath,
      ended,
    },
    track.pauses,
  );
  const movement = track.tasks[track.task[i] as number]?.movement ?? item.movement;
  const last = pieces.findLast(({ kind }) => kind === "work");
  const work = pieces.map((piece): RowPiece => {
    if (piece.kind === "pause") return restPiece(piece.start, piece.end, "prescribed");
    const displayed = displayedPace(movement, item.unit, piece.secondsPerUnit);
    return {
      ...piece,
      ...workOf(item, movement, loadBar),
      ...(piece === last && Number.isFinite(asked) && asked > amount + 1e-6 ? { prescribed: asked } : {}),
      ...(piece === pieces[0] && wait === 0 && breath >= SHORTEST_BREATH ? { breath } : {}),
      ...(displayed ? { displayed } : {}),
      tieBreak: item.tieBreak && piece === last,
      ...(item.deadline ? { deadline: item.deadline.clock } : {}),
    };
  });
  return [
    ...(wait > 0 ? [restPiece(start, start + wait, "stand")] : []),
    ...work,
    ...(ended < closes ? [restPiece(ended, closes, "begun")] : []),
  ];
}

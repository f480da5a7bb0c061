import type { CourseEffort } from "../../models/course.ts";
import type { Movement } from "../../models/movement.ts";
import type { PacingRow } from "../../models/plan/pacing.ts";
import type { Solved } from "../search/solve-part.ts";
import { displayedPace } from "./displayed-pace.ts";
import { PACING_FIXED } from "./fixed-constants.ts";
import type { PartInput } from "./paced-part.ts";
import { pausesIn, type Visit, visitPieces } from "./visit-pieces.ts";

/**
 * A wait shorter than the first is a few breaths on the way to the bar and told with the row; shorter than the second it is part of
 * getting ready; a rest shorter than the third is none. Seconds.
 */
const SHORTEST_WAIT = PACING_FIXED.shortestWait.value;
const SHORTEST_BREATH = PACING_FIXED.shortestBreath.value;
const SHORTEST_REST = PACING_FIXED.shortestRest.value;

/** A row of a plan without what counts it among the others. */
export type RowPiece = Omit<
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

/** A row in which nobody works, from one clock of the part to another, seconds, and why. */
export function restPiece(start: number, end: number, why: NonNullable<PacingRow["why"]>): RowPiece {
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
  if (isWall && i < state.at) return [restPiece(from, to, "skipped")];
  // A rest behind it takes its time in.
  const goesOn = i < state.at && track.items[i + 1]?.kind !== "rest";
  return (i === state.at || goesOn) && !isWall ? [restPiece(from, to, "begun")] : [];
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

/** The rows of a visit: the wait before it, where one is planned, its work, and what the clock leaves of it. */
export function visitRows(
  { log, state, bench: { track }, sets }: Solved,
  { loadBar }: PartInput,
  item: CourseEffort,
  i: number,
  amount: number,
): readonly RowPiece[] {
  if (amount <= 0) return rowsOfNothing({ log, state, track }, i);
  const asked = track.amount[i] as number;
  const isCut = asked > amount + 1e-6;
  const closes = log.ended[i] as number;
  const { visit, wait, breath } = visitOf({ log, track, sets }, i, amount, isCut);
  const pieces = visitPieces(visit, pausesIn(visit, track.pauses, log.atPause));
  const movement = track.tasks[track.task[i] as number]?.movement ?? item.movement;
  const last = pieces.findLast(({ kind }) => kind === "work");
  const rows = pieces.map((piece): RowPiece => {
    if (piece.kind !== "work") return restPiece(piece.start, piece.end, WHY[piece.kind]);
    const displayed = displayedPace(movement, item.unit, piece.secondsPerUnit);
    return {
      ...piece,
      ...workOf(item, movement, loadBar),
      ...(piece === last && Number.isFinite(asked) && isCut ? { prescribed: asked } : {}),
      ...(piece === pieces[0] && wait === 0 && breath >= SHORTEST_BREATH ? { breath } : {}),
      ...(displayed ? { displayed } : {}),
      tieBreak: item.tieBreak && piece === last,
      ...(item.deadline ? { deadline: item.deadline.clock } : {}),
    };
  });
  return [
    ...(wait > 0 ? [restPiece(visit.started - wait, visit.started, "stand")] : []),
    ...rows,
    ...(visit.ended < closes ? [restPiece(visit.ended, closes, "begun")] : []),
  ];
}

const WHY = { pause: "prescribed", wait: "stand", begun: "begun" } as const;

/** A visit as it was simulated and broken into sets, with the wait before it and the breath taken in that or on the way. Seconds. */
function visitOf(
  { log, track, sets }: Pick<Solved, "log" | "sets"> & Pick<Solved["bench"], "track">,
  i: number,
  amount: number,
  isCut: boolean,
): { readonly visit: Visit; readonly wait: number; readonly breath: number } {
  const { restFirst = 0, rest = 0, cycle = 0, sizes = [amount], total = 0 } = sets[i] ?? {};
  const started = log.started[i] as number;
  const worksFrom = log.worksFrom[i] as number;
  const closes = log.ended[i] as number;
  const all = { amount, sizes, rest, cycle, started, worksFrom, ended: closes, shortestWait: SHORTEST_WAIT };
  const pause = pausesIn(all, track.pauses, log.atPause).at(-1);
  // What the clock leaves of a unit after the last whole one is told apart. A unit begun in the visit before is finished in this one, and
  // told whole: it takes its whole time.
  const whole = Math.max(total, restFirst + amount * cycle + (sizes.length - 1) * rest);
  const left = pause ? ((total - restFirst) * (amount - pause.done)) / amount : whole;
  const spent = Math.max(worksFrom, pause?.to ?? 0) + left;
  // Where another unit would fit, nobody stops: what the sets leave goes into the rests between them.
  const idle = total > 0 && isCut ? closes - spent : 0;
  const fits = sizes.length > 1 && idle >= cycle + rest && pause === undefined;
  const ended = !fits && idle >= SHORTEST_WAIT ? spent : closes;
  // Nobody stands at the start signal: what would be waited there goes into slower units. A pause of the clock is breath enough.
  // Where an interval ends the work, less than the wait that would suit the set may be left of it.
  const spare = ended - worksFrom - amount * cycle;
  const breath = started > 0 && !pause ? Math.max(0, Math.min(restFirst, spare)) : 0;
  const wait = breath >= SHORTEST_WAIT ? breath : 0;
  return {
    visit: {
      ...all,
      rest: fits ? rest + idle / (sizes.length - 1) : rest,
      started: started + wait,
      worksFrom: worksFrom + breath,
      ended,
    },
    wait,
    breath,
  };
}

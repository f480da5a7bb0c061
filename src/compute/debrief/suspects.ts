import type { Piece } from "../../models/plan/debrief.ts";
import type { PlannedRow } from "../../models/plan/plan.ts";
import type { DebriefConstants } from "./constants.ts";
import type { PieceWork } from "./piece-work.ts";
import { DEBRIEF_FIXED } from "./fixed-constants.ts";

/** Something that makes pieces of work longer than planned, and by how much in each. */
export type Suspect = {
  readonly kind: "form" | "movement" | "breaks" | "transitions" | "haste";
  /** Movement id, for a movement. */
  readonly movement?: string;
  /** Seconds each piece grows by one unit of it: a share of the work, a second a break or way, a share of haste. */
  readonly column: readonly number[];
  /** Standard deviation of that unit on a usual day, and where it is the fault. */
  readonly usual: number;
  readonly fault: number;
  /** How often it happens, for breaks and ways. */
  readonly count: number;
};

/** What the suspects are drawn from. */
type SuspectsInput = {
  readonly pieces: readonly Piece[];
  readonly work: readonly PieceWork[];
  readonly rows: readonly PlannedRow[];
  /** Clock at the end of each row on a day whose beginning, a share of the planned time, is faster by a share. */
  readonly hasty: (faster: number, lasting: number) => readonly number[];
  /** Relative standard deviation of the whole result, as planned. */
  readonly form: number;
};

/**
 * Shares by which the beginning of a hasty day is faster. What it costs grows faster than they do (an emptied reserve), so each is a
 * suspect of its own, taken as proportional around itself.
 */
const HASTES = DEBRIEF_FIXED.hastes.value;

/** Everything a difference is explained by: the form of the day first, which is no fault. */
export function suspectsOf(input: SuspectsInput, constants: DebriefConstants): readonly Suspect[] {
  const { pieces, work, hasty, rows } = input;
  const sum = (numbers: ReadonlyMap<string, number>): number =>
    [...numbers.values()].reduce((total, value) => total + value, 0);
  const form: Suspect = {
    kind: "form",
    column: work.map((piece) => sum(piece.work)),
    usual: input.form,
    fault: input.form,
    count: 0,
  };
  const ids = [...new Set(work.flatMap((piece) => [...piece.work.keys()]))];
  const movements = ids.map((movement): Suspect => ({
    kind: "movement",
    movement,
    column: work.map((piece) => piece.work.get(movement) ?? 0),
    usual: constants.movementUsual,
    fault: constants.movementFault,
    count: 0,
  }));
  const counted = (kind: "breaks" | "transitions", column: readonly number[]): Suspect => ({
    kind,
    column,
    usual: kind === "breaks" ? constants.breakUsual : constants.transitionUsual,
    fault: kind === "breaks" ? constants.breakFault : constants.transitionFault,
    count: column.reduce((total, value) => total + value, 0),
  });
  const hastes = [constants.hasteShort, constants.hasteLong].flatMap((lasting) =>
    [
      ...HASTES.map((faster) => hastyColumn(pieces, rows, hasty(faster, lasting), faster)),
      fadedColumn(pieces, lasting, constants.fadePrice),
    ].map((column): Suspect => ({
      kind: "haste",
      column,
      usual: constants.hasteUsual,
      fault: constants.hasteFault,
      count: 0,
    })),
  );
  return [
    form,
    ...movements,
    counted(
      "breaks",
      work.map((piece) => sum(piece.breaks)),
    ),
    counted(
      "transitions",
      work.map((piece) => piece.transitions),
    ),
    ...hastes,
  ].filter(({ column }) => column.some((seconds) => Math.abs(seconds) > 1e-6));
}

/**
 * The same for somebody who slows down afterwards by more than an emptied reserve forces: every second won in the beginning is paid
 * with `price` seconds, spread over the rest by its length.
 */
function fadedColumn(pieces: readonly Piece[], lasting: number, price: number): readonly number[] {
  const until = lasting * (pieces.at(-1)?.plannedEnd ?? 0);
  const early = pieces.map(({ planned, plannedEnd }) =>
    Math.min(planned, Math.max(0, until - (plannedEnd - planned))),
  );
  const begun = early.reduce((sum, seconds) => sum + seconds, 0);
  const rest = pieces.reduce((sum, { planned }) => sum + planned, 0) - begun;
  if (rest <= 0) return pieces.map(() => 0);
  return pieces.map(({ planned }, p) => {
    const quick = early[p] ?? 0;
    return -quick + ((planned - quick) * price * begun) / rest;
  });
}

/** Seconds each piece grows by one unit of haste (a beginning twice as fast, were it proportional). */
function hastyColumn(
  pieces: readonly Piece[],
  rows: readonly PlannedRow[],
  hasty: readonly number[],
  faster: number,
): readonly number[] {
  let before = 0;
  return pieces.map(({ row }) => {
    const late = ((hasty[row] ?? 0) - (rows[row]?.end ?? 0)) / faster;
    const grown = late - before;
    before = late;
    return grown;
  });
}

import type { PartPlan, PlannedPacing } from "../../models/plan/plan.ts";
import type { Piece } from "../../models/plan/debrief.ts";
import { type Seconds, seconds } from "../../models/quantity.ts";
import { laidOf } from "../debrief/laid-of.ts";
import { piecesOf } from "../debrief/pieces.ts";
import { resultDone } from "../debrief/result-done.ts";
import type { DifficultyConstants } from "../early-splits/difficulty-constants.ts";
import type { SeenMovement, SeenPerformance } from "../early-splits/seen-performance.ts";
import type { PacedPart } from "../pacing/paced-part.ts";

/** What was seen of a performance. */
export type Noted = {
  /** Clock of the part at the end of each line or round, seconds; undefined where nobody looked. */
  readonly clocks: readonly (number | undefined)[];
  /** What they stand for; found by their number where it is not said. */
  readonly after?: Piece["kind"];
  readonly time?: Seconds;
  readonly reps?: number;
  /** Noise of the performance, times the usual. */
  readonly wider?: number;
};

/** A part as planned for somebody. */
export type PlannedOnce = { readonly plan: PartPlan; readonly pacing: PlannedPacing };

/** A part as planned for who did it, as if nobody had been seen; and the same, were all work harder or easier by `STEP`. */
export type Expected = PlannedOnce & {
  readonly basis: Extract<PacedPart, { kind: "paced" }>["basis"];
  readonly harder?: PlannedOnce;
  readonly easier?: PlannedOnce;
};

/** Natural logarithm by which the plans beside that expected are harder and easier. */
export const STEP = 0.1;

type Held = Pick<SeenPerformance, "slower" | "movements" | "shares">;

/**
 * Holds what was seen against what was to be expected of who did it. The result counts for all of the work; without one the last
 * clock, as far as the work was seen. How far a result answers to harder work is found from the plans beside: before a wall that
 * nobody passes it hardly does, and so tells hardly anything. Undefined where the two have nothing in common.
 *
 * @param sharedDoubt part of what is not known of an athlete that all movements share
 */
export function heldAgainst(
  expected: Expected,
  noted: Noted,
  sharedDoubt: number,
  constants: DifficultyConstants,
): Held | undefined {
  const { pacing, basis } = expected;
  const compared = compare(expected, noted);
  if (compared === undefined) return undefined;
  const { slower, seen, pieces } = compared;
  const answers = answersTo(expected, noted, constants);
  const shares = sharesOf(pacing);
  const errorOf = new Map(basis.map(({ movement, error }) => [movement, error]));
  const noise = ((noted.wider ?? 1) * constants.performanceNoise) / Math.sqrt(seen) / answers;
  const byLine = pieces.length > 1 && pieces.every(({ kind }) => kind === "row");
  return {
    slower: {
      value: slower / answers,
      error: Math.hypot(personDoubt(shares, errorOf, sharedDoubt), noise),
    },
    movements: byLine ? byMovement(pieces, pacing, errorOf, sharedDoubt, constants) : [],
    shares,
  };
}

type Compared = { readonly slower: number; readonly seen: number; readonly pieces: readonly Piece[] };

/** Natural logarithm of done over planned, the share of the work it was seen of, and its pieces. */
function compare({ plan, pacing }: PlannedOnce, noted: Noted): Compared | undefined {
  const end = pacing.score === "time" ? noted.time : undefined;
  const laid = laidOf(plan, pacing);
  const pieces = piecesOf(laid, noted.clocks, end, noted.after);
  const planned = pieces.reduce((sum, piece) => sum + piece.planned, 0);
  const done = pieces.reduce((sum, piece) => sum + piece.done, 0);
  const result = resultDone(laid, noted, []);
  if (result !== undefined) {
    const ratio = result.done / result.planned;
    return { slower: result.unit === "seconds" ? Math.log(ratio) : -Math.log(ratio), seen: 1, pieces };
  }
  if (!(planned > 0)) return undefined;
  return { slower: Math.log(done / planned), seen: Math.min(1, planned / pacing.duration), pieces };
}

/** By how much more a result of the kind noted changes than the work it is of: about 1, next to nothing before a wall. */
function answersTo(
  expected: Expected,
  noted: Noted,
  { leastAnswer, mostAnswer }: DifficultyConstants,
): number {
  const slowerIn = (other: PlannedOnce | undefined): number | undefined =>
    other && compare(expected, asNoted(other, noted))?.slower;
  const [harder, easier] = [slowerIn(expected.harder), slowerIn(expected.easier)];
  if (harder === undefined || easier === undefined) return 1;
  return Math.min(mostAnswer, Math.max(leastAnswer, (harder - easier) / (2 * STEP)));
}

/** What would be noted of somebody who does a plan, in the same form as something noted. */
function asNoted({ pacing }: PlannedOnce, { clocks, after, time, reps }: Noted): Noted {
  const isTime = pacing.score === "time" || pacing.score === "slowest-interval";
  const { target } = pacing.result;
  if (time !== undefined || reps !== undefined) {
    return { clocks: [], ...(isTime ? { time: seconds(target) } : { reps: target }) };
  }
  const rows = pacing.rows.filter(({ kind, prescribed }) => kind === "work" && prescribed === undefined);
  const ends = rows.filter(({ round }, at) => after !== "round" || rows[at + 1]?.round !== round);
  return { clocks: ends.slice(0, clocks.length).map(({ end }) => end), ...(after && { after }) };
}

/** Share of the planned time that each movement takes, ways and breaks counted with it. */
function sharesOf({ rows }: PlannedPacing): Held["shares"] {
  const seconds = new Map<string, number>();
  for (const { kind, movement, start, end } of rows) {
    if (kind !== "work" || movement === undefined) continue;
    seconds.set(movement, (seconds.get(movement) ?? 0) + end - start);
  }
  const all = [...seconds.values()].reduce((sum, one) => sum + one, 0);
  return [...seconds].map(([movement, own]) => ({ movement, share: all > 0 ? own / all : 0 }));
}

/** Relative standard deviation of what is not known of an athlete over all of the work: part shared, part each movement's own. */
function personDoubt(
  shares: Held["shares"],
  errorOf: ReadonlyMap<string, number>,
  sharedDoubt: number,
): number {
  const errors = shares.map(({ movement, share }) => share * (errorOf.get(movement) ?? 0));
  const together = errors.reduce((sum, error) => sum + error, 0);
  const apart = errors.reduce((sum, error) => sum + error ** 2, 0);
  return Math.sqrt(sharedDoubt * together ** 2 + (1 - sharedDoubt) * apart);
}

/** What each movement took beside all of the lines seen; nothing where only one movement was. */
function byMovement(
  pieces: readonly Piece[],
  { rows }: PlannedPacing,
  errorOf: ReadonlyMap<string, number>,
  sharedDoubt: number,
  constants: DifficultyConstants,
): readonly SeenMovement[] {
  const nameOf = new Map(rows.map(({ index, movement }) => [index, movement]));
  const lines = Map.groupBy(pieces, ({ row }) => nameOf.get(row));
  const total = (all: readonly Piece[], of: "planned" | "done"): number =>
    all.reduce((sum, piece) => sum + piece[of], 0);
  const pace = Math.log(total(pieces, "done") / total(pieces, "planned"));
  return [...lines].flatMap(([movement, own]): readonly SeenMovement[] => {
    if (movement === undefined || lines.size < 2) return [];
    const person = (errorOf.get(movement) ?? 0) * Math.sqrt(1 - sharedDoubt);
    const line = constants.lineNoise / Math.sqrt(own.length);
    return [
      {
        movement,
        value: Math.log(total(own, "done") / total(own, "planned")) - pace,
        error: Math.hypot(person, line),
      },
    ];
  });
}

import type { Field, ScoreCounts } from "../../models/field.ts";

/** On which side of a cap a result lies; every result of an uncapped field is `finished`. */
export type Side = "finished" | "capped";

/** A field ready to be asked for places: each side's scores ascending, with how many of the whole field are better. */
export type RankedField = {
  readonly size: number;
  /** Whether a lower score is the better one, on the side of those who finished. */
  readonly lowerIsBetter: boolean;
  readonly sides: Readonly<Record<Side, RankedSide>>;
};

type RankedSide = {
  readonly scores: readonly number[];
  readonly counts: readonly number[];
  /** Of the whole field, how many have a better result than each score. */
  readonly better: readonly number[];
  /** How many of the whole field are better than everyone on this side. */
  readonly ahead: number;
  readonly size: number;
};

/**
 * Ranks a field. In a field for time those who finished come before everyone stopped by the cap, and the seconds of
 * the first are never mixed with the reps of the others. In every other field more is better.
 */
export function rankField(field: Field): RankedField {
  const timed = field.kind === "time";
  const finished = timed ? field.finished : merged(field.finished, field.capped);
  const capped = timed ? field.capped : [];
  const finishers = sizeOf(finished);
  return {
    size: finishers + sizeOf(capped),
    lowerIsBetter: timed,
    sides: {
      finished: rankSide(finished, timed, 0),
      capped: rankSide(capped, false, finishers),
    },
  };
}

const sizeOf = (scores: ScoreCounts): number => scores.reduce((sum, { count }) => sum + count, 0);

function merged(a: ScoreCounts, b: ScoreCounts): ScoreCounts {
  const counts = new Map<number, number>();
  for (const { value, count } of [...a, ...b]) counts.set(value, (counts.get(value) ?? 0) + count);
  return [...counts].map(([value, count]) => ({ value, count })).sort((x, y) => x.value - y.value);
}

function rankSide(side: ScoreCounts, lowerIsBetter: boolean, ahead: number): RankedSide {
  const size = sizeOf(side);
  let lighter = 0;
  const better = side.map(({ count }) => {
    const before = lighter;
    lighter += count;
    return ahead + (lowerIsBetter ? before : size - lighter);
  });
  return {
    scores: side.map(({ value }) => value),
    counts: side.map(({ count }) => count),
    better,
    ahead,
    size,
  };
}

/** Scores nearer than this are the same: 225 lb read back from kilograms is 225 lb. */
const SAME = 0.005;

/**
 * The place a result would take among the field: one more than those better, and of those equal the share `tied` comes
 * before it (half, where nothing is known of the tie-break).
 *
 * @example placeOf(rankField(fieldOf({ 100: 2, 110: 1 })), "finished", 100) // => 3: one is better, one of two equals ahead
 */
export function placeOf(field: RankedField, side: Side, score: number, tied = 0.5): number {
  const { scores, counts, better, ahead, size } = field.sides[side];
  const lowerIsBetter = side === "finished" && field.lowerIsBetter;
  const at = firstNotBelow(scores, score - SAME);
  if (Math.abs((scores[at] ?? Infinity) - score) <= SAME)
    return 1 + (better[at] ?? 0) + tied * (counts[at] ?? 0);
  if (lowerIsBetter) return 1 + (at === 0 ? ahead : (better[at] ?? ahead + size));
  // More is better: everyone from `at` on.
  return 1 + (at === 0 ? ahead + size : (better[at - 1] ?? ahead));
}

/** Index of the first score at or over a value; the number of scores where all are below. */
function firstNotBelow(scores: readonly number[], value: number): number {
  let low = 0;
  let high = scores.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((scores[middle] ?? Infinity) < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

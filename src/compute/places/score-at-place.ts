import type { Field } from "../../models/field.ts";
import { type Seconds, seconds } from "../../models/quantity.ts";

/** A score of a field: seconds of those who finished work for time, else what was done. */
type PlacedScore = { readonly time: Seconds } | { readonly reps: number };

type Counted = { readonly score: PlacedScore; readonly count: number };

/**
 * The score of somebody who leaves a share of a field behind. In a field for time those stopped by the cap come before
 * (that is: behind) all who finished. Undefined for a field without scores.
 *
 * @example scoreAtPlace({ kind: "reps", finished: [{ value: 90, count: 1 }, { value: 100, count: 1 }], capped: [] }, 0.75) // => { reps: 100 }
 */
export function scoreAtPlace(
  { kind, finished, capped }: Pick<Field, "kind" | "finished" | "capped">,
  share: number,
): PlacedScore | undefined {
  const done = [...capped, ...(kind === "time" ? [] : finished)].toSorted((a, b) => a.value - b.value);
  const fromWorst: readonly Counted[] = [
    ...done.map(({ value, count }) => ({ score: { reps: value }, count })),
    ...(kind === "time" ? finished.toSorted((a, b) => b.value - a.value) : []).map(({ value, count }) => ({
      score: { time: seconds(value) },
      count,
    })),
  ];
  const size = fromWorst.reduce((sum, { count }) => sum + count, 0);
  let behind = 0;
  for (const { score, count } of fromWorst) {
    behind += count;
    if (behind >= share * size - 1e-9) return score;
  }
  return undefined;
}

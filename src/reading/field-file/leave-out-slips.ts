import type { Score } from "./sort-scores.ts";

/**
 * How many times the best usual score, and how much over it, a score may be before it must be a slip: where usual scores
 * are a few reps, six times as many are one good athlete. Results a group needs to tell. Judgement.
 */
const SLIP = 5;
const LEAST_OVER = 500;
const ENOUGH = 10;
/** Share of a group that the usual scores reach up to, and from. Judgement. */
const USUAL = 0.99;

type Kept = Extract<Score, { readonly side: "finished" | "capped" }>;

/**
 * Leaves out scores that cannot be results: more than five times what ninety-nine in a hundred of their group stay under
 * (12,753 reps among 180) and more than 500 over it, and times of less than a fifth of what ninety-nine in a hundred take. Few scores of any other kind are
 * slips in a way that can be told. Groups of fewer than ten are left as they are.
 */
export function leaveOutSlips<T extends Score & { readonly kind?: string }>(
  scores: readonly T[],
): readonly (T | Score)[] {
  const sides = Map.groupBy(scores, ({ group, side }) => `${side}/${group ?? ""}`);
  const slips = new Set<T>();
  for (const side of sides.values()) {
    const kept = side.filter((score): score is T & Kept => score.side !== "left-out");
    const size = kept.reduce((sum, { count }) => sum + count, 0);
    if (size < ENOUGH) continue;
    const ascending = kept.toSorted((one, other) => one.value - other.value);
    const high = valueAt(ascending, Math.floor(USUAL * (size - 1)));
    const low = valueAt(ascending, Math.ceil((1 - USUAL) * (size - 1)));
    for (const score of kept) {
      const isTooShort = score.kind === "time" && score.value < low / SLIP;
      if (isTooShort || score.value > Math.max(high * SLIP, high + LEAST_OVER)) slips.add(score);
    }
  }
  return scores.map((score) => (slips.has(score) ? asSlip(score) : score));
}

const asSlip = ({ count, group }: Score): Score => ({
  side: "left-out",
  reason: "far from all others",
  count,
  ...(group === undefined ? {} : { group }),
});

/** The value of the athlete at a rank, from 0, counted from the lowest. */
function valueAt(ascending: readonly Kept[], rank: number): number {
  let passed = 0;
  for (const { value, count } of ascending) {
    passed += count;
    if (passed > rank) return value;
  }
  return ascending.at(-1)?.value ?? 0;
}

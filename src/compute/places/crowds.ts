import type { Range } from "../../models/plan/basics.ts";
import type { RankedField, Side } from "./rank-field.ts";

export type Crowd = { readonly score: number; readonly count: number; readonly passWith: number };

/** How many times the usual count of its neighbours a score must hold to be a crowd. */
const CROWDED = 2;
/** Scores to each side that count as neighbours. */
const NEIGHBOURS = 6;
/** Least share of the side a crowd must be. */
const LEAST_SHARE = 0.01;
/** Most crowds told. */
const MOST = 4;

/**
 * Crowds at round scores within reach: scores that hold at least twice the mean count of their six neighbours to each
 * side and at least one in a hundred of the side, between a little below the cautious and a little above the hopeful end of the
 * range. Largest first, four at most. `next` gives the score just better than one: a second less, a rep more, the lightest load above that
 * can be made.
 */
export function crowdsNear(
  field: RankedField,
  side: Side,
  range: Pick<Range, "cautious" | "hopeful">,
  next: (score: number) => number | undefined,
): readonly Crowd[] {
  const { scores, counts, size } = field.sides[side];
  const low = Math.min(range.cautious, range.hopeful);
  const high = Math.max(range.cautious, range.hopeful);
  const margin = (high - low) / 2;
  return scores
    .flatMap((score, at) => {
      if (score < low - margin || score > high + margin) return [];
      const count = counts[at] ?? 0;
      const around = [
        ...counts.slice(Math.max(0, at - NEIGHBOURS), at),
        ...counts.slice(at + 1, at + 1 + NEIGHBOURS),
      ];
      const usual = around.reduce((sum, each) => sum + each, 0) / Math.max(1, around.length);
      const passWith = next(score);
      if (count < CROWDED * usual || count < LEAST_SHARE * size || passWith === undefined) return [];
      return [{ score, count, passWith }];
    })
    .sort((a, b) => b.count - a.count)
    .slice(0, MOST);
}

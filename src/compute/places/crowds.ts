import type { Range } from "../../models/plan/basics.ts";
import type { PlacesConstants } from "./constants.ts";
import type { RankedField, Side } from "./rank-field.ts";

type Crowd = { readonly score: number; readonly count: number; readonly passWith: number };

/**
 * Crowds at round scores within reach: scores that hold so many times the mean count of their neighbours to each
 * side and a least share of the side, between a little below the cautious and a little above the hopeful end of the
 * range. Largest first, not more than are told. `next` gives the score just better than one: a second less, a rep more, the lightest load above that
 * can be made.
 */
export function crowdsNear(
  field: RankedField,
  side: Side,
  range: Pick<Range, "cautious" | "hopeful">,
  next: (score: number) => number | undefined,
  constants: PlacesConstants,
): readonly Crowd[] {
  const { crowded, crowdNeighbours: neighbours, crowdLeastShare, crowdsTold } = constants;
  const { scores, counts, size } = field.sides[side];
  const low = Math.min(range.cautious, range.hopeful);
  const high = Math.max(range.cautious, range.hopeful);
  const margin = (high - low) / 2;
  return scores
    .flatMap((score, at) => {
      if (score < low - margin || score > high + margin) return [];
      const count = counts[at] ?? 0;
      const around = [
        ...counts.slice(Math.max(0, at - neighbours), at),
        ...counts.slice(at + 1, at + 1 + neighbours),
      ];
      const usual = around.reduce((sum, each) => sum + each, 0) / Math.max(1, around.length);
      const passWith = next(score);
      if (count < crowded * usual || count < crowdLeastShare * size || passWith === undefined) return [];
      return [{ score, count, passWith }];
    })
    .sort((a, b) => b.count - a.count)
    .slice(0, crowdsTold);
}

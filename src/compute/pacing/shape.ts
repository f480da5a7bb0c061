import type { PaceShape, PartInput } from "./paced-part.ts";
import type { Track } from "../motion/track.ts";
import { PACING_FIXED } from "./fixed-constants.ts";

/** A round seen slower or faster than this, relative to the mean, is a mishap, not a shape. */
const MOST = PACING_FIXED.mostShape.value;

/** The lift of the rate in each stretch that early performances suggest, in their weight; 1 everywhere without them. */
export function shapeOf(track: Track, shape: PaceShape | undefined): Float64Array {
  const lift = new Float64Array(track.length).fill(1);
  if (!shape) return lift;
  for (let i = 0; i < track.length; i += 1) {
    const relative = shape.relativeByRound[(track.round[i] as number) - 1];
    if (relative === undefined || !(relative > 0)) continue;
    lift[i] = Math.min(MOST, Math.max(1 / MOST, relative)) ** -shape.weight;
  }
  return lift;
}

/** The same with the first round, or the work around paces that are set, drawn out by a factor on its time. */
export function drawnOut(
  lift: Float64Array,
  track: Track,
  { firstSlower = 1, aroundSlower = 1 }: Pick<PartInput, "firstSlower" | "aroundSlower">,
): Float64Array {
  if (firstSlower === 1 && aroundSlower === 1) return lift;
  return lift.map((each, i) => {
    const first = track.round[i] === 1 ? firstSlower : 1;
    return track.fixed[i] === 0 ? each / first / aroundSlower : each;
  });
}

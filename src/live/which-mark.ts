import type { CourseMark } from "./course-marks.ts";
import type { PassedMark } from "./course-now.ts";
import { SECOND_TAP } from "./second-tap.ts";

/**
 * Which mark a tap stands for: the next one, unless the clock is so late that one after it is meant and taps were missed. Expected
 * clocks are those of the plan, longer or shorter as what was done so far; a mark is passed over only where the tap lies
 * much nearer to a later one in its logarithm, so that a slow round is not taken for two. Undefined where the tap comes right after the last,
 * or after "go", and where nothing is left to pass.
 */
export function whichMark(
  marks: readonly CourseMark[],
  passed: readonly PassedMark[],
  clock: number,
): CourseMark | undefined {
  const left = marks.slice(passed.length);
  const last = passed.findLast(({ done }) => done !== undefined);
  if (clock - (last?.done ?? 0) < SECOND_TAP) return undefined;
  const from = { planned: last?.planned ?? 0, done: last?.done ?? 0 };
  const pace = from.planned > 0 && from.done > 0 ? Math.max(1, from.done / from.planned) : 1;
  const gone = Math.max(clock - from.done, 1);
  const off = ({ planned }: CourseMark): number =>
    Math.abs(Math.log(gone / Math.max(1, (planned - from.planned) * pace)));
  const [next, ...later] = left;
  if (!next) return undefined;
  const nearest = later.reduce((best, mark) => (off(mark) < off(best) ? mark : best), next);
  return off(nearest) < off(next) - NEARER ? nearest : next;
}

/** A later mark must fit by this much better, in logarithms: of two equal rounds 1.8 times the planned one is still one. */
const NEARER = 0.5;

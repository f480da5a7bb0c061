import type { Plan } from "../models/plan/plan.ts";
import { sayList } from "./number.ts";

type Moved = NonNullable<Plan["warmUp"]>["moved"];

/**
 * What to do when the start is called early.
 *
 * @example sayCalledEarly({ buildSets: 1, hasRehearsal: false, isHot: false }) // => "Called early: keep the last set of your build, and stop three minutes before you start."
 */
export function sayCalledEarly({ buildSets, hasRehearsal }: Moved): string {
  const kept = [
    ...(buildSets > 0 ? [`the last ${buildSets > 1 ? "two sets" : "set"} of your build`] : []),
    ...(hasRehearsal ? ["the rehearsal"] : []),
  ];
  return kept.length === 0
    ? "Called early: walk over calmly and start easier than you think."
    : `Called early: keep ${sayList(kept)}, and stop three minutes before you start.`;
}

/** How to wait for a start: in the heat nobody keeps warm. */
export const sayWait = ({ isHot }: Pick<Moved, "isHot">): string =>
  isHot ? "stay cool in the shade" : "keep warm and keep walking";

/** What to do when the start slips. */
export function sayStartSlips(moved: Moved): string {
  const { buildSets, hasRehearsal } = moved;
  const again =
    buildSets > 1
      ? "one single with the second heaviest load of your build"
      : hasRehearsal
        ? "the rehearsal"
        : "two easy minutes";
  return `Start slips: ${sayWait(moved)}; by more than ten minutes, repeat ${again} five minutes before it.`;
}

import type { Cut } from "./cut.ts";
import type { Ladder } from "./follow-ladder.ts";
import { heaviestNext, isSameLoad, type LadderProblem, SAME } from "./ladder-problem.ts";

/**
 * The cut that may stand in place of one rung of a ladder (from 0): its load lies just over the round one there, within the bounds and
 * with time for its plates, and the next load stays a step away. Undefined where there is none; the opener is never cut.
 */
export function cutAt({ loads }: Ladder, rung: number, problem: LadderProblem): Cut | undefined {
  const { slots, limits, change } = problem;
  const [before, round, next] = [loads[rung - 1], loads[rung], loads[rung + 1]];
  const [slot, after] = [slots[rung], slots[rung + 1]];
  if (before === undefined || round === undefined || slot === undefined) return undefined;
  const cut = problem.cuts.find(({ over }) => isSameLoad(over, round));
  if (!cut || cut.load > heaviestNext(before, rung === 1, slot, limits) + SAME) return undefined;
  if (change(before, cut.load) > slot.rest) return undefined;
  const goesOn =
    next === undefined || (next >= cut.load + CLOSEST - SAME && change(cut.load, next) <= (after?.rest ?? 0));
  return goesOn ? cut : undefined;
}

/** Kilograms that the load after a cut lies above it at least. */
const CLOSEST = 2;

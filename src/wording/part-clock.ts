import type { PartPlan } from "../models/plan/plan.ts";
import { sayPart } from "./part-name.ts";
import { sayRestLeftOut } from "./rests-left-out.ts";

/**
 * Seconds to add to a clock of the part so that it reads as the clock on the wall shows it. Parts of a workout run on
 * one clock; only the work of a part that starts a rest after another has a clock of its own, because nobody knows
 * beforehand when that is. Lifts after a part are planned on the running clock.
 */
export function clockShift(part: PartPlan): number {
  return part.start.kind === "after" && part.pacing !== undefined ? 0 : part.start.clock;
}

/** The same over a column of clocks, in as few words as can be: `clock`, or `clock of C` where it is one of its own. */
export const sayClockHead = (part: PartPlan): string =>
  part.start.kind === "after" && part.pacing !== undefined ? `clock of ${sayPart(part.name)}` : "clock";

/** Tells which clock is meant where that could be in doubt, and what of it a score leaves out. */
export function sayWhichClock(part: PartPlan): string | undefined {
  const { start, pacing } = part;
  const apart = pacing && sayRestLeftOut(pacing);
  const running = start.clock > 0 || apart !== undefined ? "running clock" : undefined;
  const which =
    start.kind === "after" && pacing !== undefined
      ? `clock from the start of ${sayPart(part.name)}`
      : running;
  return apart === undefined ? which : `${which}; ${apart}`;
}

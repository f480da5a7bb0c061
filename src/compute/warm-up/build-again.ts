import type { WarmUpNumbers } from "./constants.ts";
import { easyLoad } from "./easy-load.ts";
import type { WarmUp, WarmUpInput } from "./plan-warm-up.ts";

type Again = WarmUp["again"][number];

/** The second build: three quick sets, reps falling. Shares of the best. Judgement. */
const RUNGS = [
  { share: 0.5, reps: 3 },
  { share: 0.65, reps: 2 },
  { share: 0.75, reps: 1 },
] as const;
/** Seconds before the lift at which the second build begins. */
const BEGINS_BEFORE = 480;

/** Lifts for load on a bar that come long after the work before them, each with the short build that wakes it up again. */
export function buildAgain({ parts, gym, bar, withholding }: WarmUpInput, numbers: WarmUpNumbers): Again[] {
  if (withholding.noMaxLift) return [];
  return parts.flatMap((part, at): readonly Again[] => {
    const before = parts[at - 1];
    const ended = before === undefined ? 0 : before.start.clock + (before.pacing?.duration ?? 0);
    if (part.lifting === undefined || part.start.clock - ended < numbers.longGap) return [];
    return part.lifting.lifts.map((lift) => ({
      movement: lift.movement,
      name: lift.name,
      clock: part.start.clock - BEGINS_BEFORE,
      sets: RUNGS.map(({ share, reps }) => ({
        load: easyLoad(gym, bar, share * lift.best.kilograms, lift.best.kilograms),
        reps,
      })),
    }));
  });
}

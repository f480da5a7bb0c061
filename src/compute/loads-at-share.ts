import type { Athlete, IsoDate } from "../models/athlete.ts";
import type { Data } from "../models/data.ts";
import type { BarLoad } from "../models/plan/basics.ts";
import type { Workout } from "../models/workout.ts";
import { nearestLoad } from "./lifting/plates.ts";
import { settle } from "./plan/settle.ts";

/**
 * Shares of an athlete's best lift today as they can be loaded, never heavier: with the gym, the bar, the best lifts and the
 * settings of the plan itself, so that a coach's word and the plan never differ. Undefined where no lift is known.
 */
export function loadsAtShare(
  athlete: Athlete,
  workout: Workout,
  data: Data,
  date: IsoDate,
): (movement: string, share: number) => BarLoad | undefined {
  const { context } = settle(athlete, workout, data, date);
  const { gym, bar, bestLift, overrides } = context;
  return (movement, share) => {
    const best = bestLift(movement);
    return best && nearestLoad(gym, bar, best.kilograms * share, "down", overrides);
  };
}

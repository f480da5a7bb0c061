import type { Bar, Gym } from "../../models/gym.ts";
import { inKilograms } from "../../models/quantity.ts";
import type { BarLoad } from "../../models/plan/basics.ts";
import { makableLoads } from "../lifting/makable-loads.ts";
import { nearestOf } from "../lifting/plates.ts";
import { WARM_UP_FIXED } from "./fixed-constants.ts";

/** Plates a person takes for a warm-up set, coarsest first: from so many kilograms on (10, 5 and 2.5 kg, or 25, 10 and 5 lb). */
const COARSE_FROM = WARM_UP_FIXED.coarsePlates.value;
/** A set may miss what is meant by this share of the best for the sake of few and large plates; judgement. */
const NEAR_ENOUGH = WARM_UP_FIXED.easyLoadOff.value;

/** The plates a person takes to warm up, without the smallest; those there are where all are small. */
export function withoutSmall(gym: Gym): Gym {
  const plates = gym.plates.filter(({ plate }) => inKilograms(plate) >= COARSE_FROM[2]);
  return plates.length === 0 ? gym : { ...gym, plates };
}

/**
 * The load of a warm-up set: near what is meant, with the largest plates that come near enough, so that nobody puts half a
 * kilo on a bar to warm up. Masses in kilograms.
 */
export function easyLoad(gym: Gym, bar: Bar, meant: number, best: number): BarLoad {
  for (const [at, from] of COARSE_FROM.entries()) {
    const plates = gym.plates.filter(({ plate }) => inKilograms(plate) >= from);
    if (plates.length === 0) continue;
    const load = nearestOf(makableLoads({ ...gym, plates }, bar), meant, "nearest");
    const isLast = at === COARSE_FROM.length - 1;
    if (isLast || Math.abs(load.kilograms - meant) <= (NEAR_ENOUGH[at] ?? 0) * best) {
      return { ...load, shareOfBest: load.kilograms / best };
    }
  }
  const load = nearestOf(makableLoads(gym, bar), meant, "nearest");
  return { ...load, shareOfBest: load.kilograms / best };
}

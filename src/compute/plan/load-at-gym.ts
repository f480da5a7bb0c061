import type { CourseLoad } from "../../models/course.ts";
import type { Bar, Gym } from "../../models/gym.ts";
import type { Movement } from "../../models/movement.ts";
import type { BarLoad } from "../../models/plan/basics.ts";
import type { BestLift } from "../capacity/best-lift.ts";
import { heldLoad, loadBar } from "../lifting/plates.ts";

/**
 * How loads stand on the bar or in the hands at one gym: a barbell with its plates, anything else as it is written.
 * Carries the share of the athlete's best lift where the movement is a lift; not where that best is only taken from the level or
 * another lift and the load is over it: then nobody knows.
 */
export function loadAtGym(
  gym: Gym,
  bar: Bar,
  bestLift: (movement: string) => BestLift | undefined,
): (load: CourseLoad, movement: Movement) => BarLoad {
  return (load, movement) => {
    const standing =
      movement.loading?.held === "bar"
        ? loadBar(gym, bar, load.written, load.alternative)
        : heldLoad(load.written, load.pieces);
    const best = bestLift(movement.id);
    if (best === undefined) return standing;
    const shareOfBest = load.total / best.kilograms;
    const guessed = best.basis === "level" || best.basis === "related";
    return guessed && shareOfBest > 1 ? standing : { ...standing, shareOfBest };
  };
}

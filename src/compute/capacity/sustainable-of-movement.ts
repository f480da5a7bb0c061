import { spreadToPlanFor } from "../search/uncertainty.ts";
import type { EffortPoint } from "./fit-effort.ts";
import { type Doing, type MuscleFit, timeOfPoint } from "./fit-muscles.ts";
import { type Endurance, sustainableWorkIn, usualWorkIn } from "./sustainable-work.ts";
import { CAPACITY_FIXED } from "./fixed-constants.ts";
import type { Fitting } from "./fitting.ts";
import type { MovementFit } from "./movement-fit.ts";

/** An effort whose fastest way with breaks takes this share of its time is one the muscles explain. */
const MUSCLES_EXPLAIN = CAPACITY_FIXED.musclesExplain.value;

/**
 * The sustainable time that gives the points back, and by length what one number leaves over. Where the muscles explain a point, heart
 * and lungs account for their share of it only.
 */
export function sustainableOf(
  { subject, own, known, points }: Fitting,
  endurance: Omit<Endurance, "quickest">,
  doing: Doing,
  muscles: MuscleFit,
  central: number,
): Pick<MovementFit, "sustainable" | "byDuration"> {
  const { rules, constants, usualPlan } = subject;
  const spread = spreadToPlanFor(rules, known.error);
  const read = points.map((point) => {
    const { amount, time, factor, byLaw } = point;
    const muscleTime = timeOfPoint(point, muscles, doing, rules, constants);
    const quickest = Math.max(amount * doing.fastest * factor.cycle, muscleTime) / time;
    const work =
      own.length > 0 && !byLaw
        ? sustainableWorkIn(time, { ...endurance, quickest: Math.min(0.99, quickest) }, rules, spread)
        : usualWorkIn(time, endurance, rules, spread, usualPlan);
    return {
      full: work / (amount * factor.rate),
      isExplained: central < 1 && muscleTime >= MUSCLES_EXPLAIN * time,
    };
  });
  const fulls = read.map(({ full }) => full);
  const level = Math.exp(weightedMean(fulls.map(Math.log), points));
  const sustainable = read.some(({ isExplained }) => isExplained) ? central * level : level;
  const factors = read.map(({ full, isExplained }) => (isExplained ? central * level : full) / sustainable);
  const flat = factors.every((factor) => Math.abs(factor - 1) < 1e-3);
  return {
    sustainable,
    byDuration: flat ? { seconds: [], factors: [] } : { seconds: points.map(({ time }) => time), factors },
  };
}

function weightedMean(values: readonly number[], points: readonly EffortPoint[]): number {
  let sum = 0;
  let weights = 0;
  values.forEach((value, i) => {
    const weight = (points[i]?.error ?? 1) ** -2;
    sum += weight * value;
    weights += weight;
  });
  return sum / weights;
}

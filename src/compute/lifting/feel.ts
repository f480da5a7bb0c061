import type { Lift } from "../../models/plan/lifting.ts";
import { strengthOfDay } from "../capacity/strength-of-day.ts";
import { BEST_LIFT_CONSTANTS } from "../capacity/best-lift-constants.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import type { LiftToday } from "./lift-today.ts";
import type { PlannedLadder } from "./plan-ladder.ts";

/** Spreads from the mean between which eight in ten lie. */
const EIGHT_IN_TEN = 1.28;

/**
 * How to go on from the opener by feel where only a level is known of the athlete: how many lifts there is time for, how far
 * one may jump, between which loads the right opener lies eight times in ten, and how much surer one tested lift would make it.
 */
export function feelOf(
  { belief, kind, best }: LiftToday,
  { problem, chosen }: PlannedLadder,
  overrides: Readonly<Record<string, number>> | undefined,
): NonNullable<Lift["feel"]> {
  const strength = problem.slots[0]?.strength ?? 1;
  const tested = strengthOfDay(
    best.kilograms,
    "many-results",
    kind.overheadCatch,
    withOverrides(BEST_LIFT_CONSTANTS, overrides),
  );
  const spreadTested = tested.spread * belief.mean;
  // What a tested athlete leaves between the opener and the strength of the day: the same number of spreads.
  const margin = EIGHT_IN_TEN * Math.hypot(strength * spreadTested, belief.noise);
  const openerAt = (spreads: number): number => strength * (belief.mean + spreads * belief.spread) - margin;
  return {
    lifts: chosen.loads.length,
    jumpFirst: problem.limits.firstJump,
    jumpLater: problem.limits.laterJump,
    openerLow: openerAt(-EIGHT_IN_TEN),
    openerHigh: openerAt(EIGHT_IN_TEN),
    spreadNow: belief.spread,
    spreadTested,
  };
}

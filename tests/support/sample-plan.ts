import type { Plan } from "../../src/models/plan/plan.ts";
import { almostNothingKnown } from "./sample/almost-nothing-known.ts";
import { forTimeThenLift } from "./sample/for-time-then-lift.ts";
import { twentyRounds } from "./sample/twenty-rounds.ts";

/** Hand-made plans for the tests of whatever draws a plan. People, places and workouts exist nowhere else. */
export const samplePlans: Readonly<Record<"forTimeThenLift" | "twentyRounds" | "almostNothingKnown", Plan>> =
  {
    forTimeThenLift,
    twentyRounds,
    almostNothingKnown,
  };

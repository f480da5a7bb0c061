import type { Sourced } from "../../models/movement.ts";

/** Constants of what is said about standards. */
export const SET_UP_CONSTANTS = {
  costlyStandards: {
    value: 2,
    source:
      "standards marked as costing this athlete reps; judges name one or two habits an athlete (judging practice)",
    confidence: "judgement",
  },
  standardsOfMovement: {
    value: 2,
    source: "standards told of one movement, the most often lost first",
    confidence: "judgement",
  },
  limiterWeight: {
    value: 1.5,
    source: "how much more reps of the movement that limits the athlete weigh: no-reps come with fatigue",
    confidence: "judgement",
  },
  leastStrain: {
    value: 0.3,
    source: "share of strain every rep has, however light or short the set",
    confidence: "judgement",
  },
  repsOfALift: {
    value: 20,
    source: "reps that the few attempts of a lift for load weigh like, as one lost attempt costs most",
    confidence: "judgement",
  },
} as const satisfies Readonly<Record<string, Sourced<number>>>;

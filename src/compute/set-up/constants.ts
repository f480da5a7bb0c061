import type { ModelConstants } from "../../models/model-constant.ts";

/** Constants of what is said about standards. */
export const SET_UP_CONSTANTS = {
  costlyStandards: {
    value: 2,
    unit: "count",
    range: [0, 20],
    does: "standards marked as costing this athlete reps",
    source: "judges name one or two habits an athlete",
    confidence: "judgement",
  },
  standardsOfMovement: {
    value: 2,
    unit: "count",
    range: [0, 20],
    does: "standards told of one movement, the most often lost first",
    source: "what is remembered",
    confidence: "judgement",
  },
  limiterWeight: {
    value: 1.5,
    unit: "factor",
    does: "how much more reps of the movement that limits the athlete weigh",
    source: "no-reps come with fatigue",
    confidence: "judgement",
  },
  leastStrain: {
    value: 0.3,
    unit: "share",
    does: "share of strain every rep has, however light or short the set",
    source: "no measurement found",
    confidence: "judgement",
  },
  repsOfALift: {
    value: 20,
    unit: "reps",
    range: [0, 1000],
    does: "reps that the few attempts of a lift for load weigh like",
    source: "one lost attempt costs most",
    confidence: "judgement",
  },
} as const satisfies ModelConstants;

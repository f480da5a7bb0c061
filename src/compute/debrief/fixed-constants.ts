import type { FixedConstants } from "../../models/model-constant.ts";

/** Numbers of what a result tells that a coach cannot set: they say how the model is used, not what somebody can do. */
export const DEBRIEF_FIXED = {
  hastes: {
    value: [0.08, 0.15, 0.25],
    unit: "share",
    does: "shares by which the beginning of a hasty day is faster",
    source: "no measurement found",
    confidence: "judgement",
  },
  leastSlower: {
    value: 0.2,
    unit: "factor",
    does: "ratio of a result to the plan below which nothing more is learned",
    source: "no measurement found",
    confidence: "judgement",
  },
} as const satisfies FixedConstants;

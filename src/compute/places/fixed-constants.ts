import type { FixedConstants } from "../../models/model-constant.ts";

/** Numbers of what a result is worth that a coach cannot set: they say how the model is used, not what somebody can do. */
export const PLACES_FIXED = {
  heldBackTried: {
    value: [0.025, 0.05, 0.1],
    unit: "share",
    does: "shares of the effort that could be held back before another part",
    source: "no measurement found",
    confidence: "judgement",
  },
  rangeWeights: {
    value: { middle: 0.4, ends: 0.3 },
    unit: "share",
    does: "weights of the middle and of each end of a range that is one day in ten",
    source:
      "30-40-30 rule for the mean of a distribution from its tenths (Swanson; Hurst, Brown and Swanson 2000)",
    confidence: "published",
  },
} as const satisfies FixedConstants;

import type { FixedConstants } from "../../models/model-constant.ts";

/** Numbers of early performances that a coach cannot set: they say how the model is used, not what somebody can do. */
export const EARLY_SPLITS_FIXED = {
  wildTimes: {
    value: [0.25, 10],
    unit: "share",
    does: "shares of a regular athlete's steady time that no performance lies beyond",
    source: "no measurement found",
    confidence: "judgement",
  },
} as const satisfies FixedConstants;

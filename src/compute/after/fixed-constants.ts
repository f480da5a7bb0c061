import type { FixedConstants } from "../../models/model-constant.ts";

/** Numbers of the hours after that a coach cannot set: they say how the model is used, not what somebody can do. */
export const AFTER_FIXED = {
  foundByFeel: {
    value: 0.5,
    unit: "share",
    does: "share of a best up to which a load can be found by feel",
    source: "no measurement found",
    confidence: "judgement",
  },
} as const satisfies FixedConstants;

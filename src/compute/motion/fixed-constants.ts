import type { FixedConstants } from "../../models/model-constant.ts";

/** Numbers of the athlete in motion that a coach cannot set: they say how the model is used, not what somebody can do. */
export const MOTION_FIXED = {
  musclesLimitFrom: {
    value: 0.3,
    unit: "share",
    does: "tax below which a muscle never limits a set",
    source: "no measurement found",
    confidence: "judgement",
  },
} as const satisfies FixedConstants;

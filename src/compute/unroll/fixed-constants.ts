import type { FixedConstants } from "../../models/model-constant.ts";

/** Numbers of writing a part out that a coach cannot set: they say how the model is used, not what somebody can do. */
export const UNROLL_FIXED = {
  fastestCalories: {
    value: 3,
    unit: "calories a second",
    does: "rate that calories are never faster than on any machine",
    source: "beyond a sprint of 2000 W",
    confidence: "judgement",
  },
  fastestMetre: {
    value: 0.05,
    unit: "seconds",
    does: "time nobody covers a metre in",
    source: "twice a sprinter's pace",
    confidence: "judgement",
  },
  fastestRep: {
    value: 0.1,
    unit: "seconds",
    does: "time nobody does a rep in",
    source: "ten reps a second",
    confidence: "judgement",
  },
} as const satisfies FixedConstants;

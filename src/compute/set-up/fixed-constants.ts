import type { FixedConstants } from "../../models/model-constant.ts";

/** Numbers of setting up that a coach cannot set: they say how the model is used, not what somebody can do. */
export const SET_UP_FIXED = {
  shortestWord: {
    value: 3,
    unit: "letters",
    does: "length of a word from which it tells something of a standard",
    source: "no measurement found",
    confidence: "judgement",
  },
  sameStandard: {
    value: 0.6,
    unit: "share",
    does: "share of its words from which a standard is said by another",
    source: "no measurement found",
    confidence: "judgement",
  },
} as const satisfies FixedConstants;

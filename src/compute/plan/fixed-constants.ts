import type { FixedConstants } from "../../models/model-constant.ts";

/** Numbers of putting a plan together that a coach cannot set: they say how the model is used, not what somebody can do. */
export const PLAN_FIXED = {
  heldBackTold: {
    value: 0.025,
    unit: "share",
    does: "share of the effort whose holding back is told",
    source: "no measurement found",
    confidence: "judgement",
  },
  heavierBy: {
    value: 0.05,
    unit: "kilograms",
    does: "mass by which a load must be above another to be a heavier one",
    source: "no measurement found",
    confidence: "judgement",
  },
  usualPlates: {
    value: {
      kg: { long: 20, short: 15, plates: [25, 20, 15, 10, 5, 2.5, 1.25] },
      lb: { long: 45, short: 35, plates: [45, 35, 25, 15, 10, 5, 2.5] },
    },
    unit: "of each unit",
    does: "bars and plates of a usual gym, two pairs of each plate",
    source: "what such gyms have",
    confidence: "judgement",
  },
  usualBetween: {
    value: 4,
    unit: "metres",
    does: "way between stations of a usual gym",
    source: "no measurement found",
    confidence: "judgement",
  },
} as const satisfies FixedConstants;

import type { ModelConstants } from "../../models/model-constant.ts";

/** Constants of reading a situation off an athlete and a workout. */
export const SITUATION_CONSTANTS = {
  taxedFrom: {
    value: 0.5,
    unit: "share",
    does: "share of a muscle's load from which a movement counts as taxing it",
    source: "no measurement found",
    confidence: "judgement",
  },
  usualWithinDays: {
    value: 60,
    unit: "days",
    range: [0, 3650],
    does: "days for which logged work counts as what somebody is used to",
    source: "no measurement found",
    confidence: "judgement",
  },
} as const satisfies ModelConstants;

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
  usualHoursNew: {
    value: 3,
    unit: "hours",
    range: [0, 45],
    does: "training a week of somebody new who does not say",
    source: "no measurement found",
    confidence: "judgement",
  },
  usualHoursRegular: {
    value: 5,
    unit: "hours",
    range: [0, 45],
    does: "training a week of a regular who does not say",
    source: "no measurement found",
    confidence: "judgement",
  },
  usualHoursCompetitor: {
    value: 9,
    unit: "hours",
    range: [0, 45],
    does: "training a week of a competitor who does not say",
    source: "no measurement found",
    confidence: "judgement",
  },
  usualHoursElite: {
    value: 14,
    unit: "hours",
    range: [0, 45],
    does: "training a week of one of the best who does not say",
    source: "no measurement found",
    confidence: "judgement",
  },
} as const satisfies ModelConstants;

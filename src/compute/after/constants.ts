import type { ModelConstants } from "../../models/model-constant.ts";

/** Constants of what comes after a workout. */
export const AFTER_CONSTANTS = {
  mostOptions: {
    value: 5,
    unit: "count",
    range: [0, 20],
    does: "same-day options told beside rest",
    source: "more than a choice can be weighed by",
    confidence: "judgement",
  },
  heavierThanMeant: {
    value: 1.1,
    unit: "factor",
    range: [1, 3],
    does: "share over the load meant, above which the empty bar is too heavy for an easy option",
    source: "no measurement found",
    confidence: "judgement",
  },
} as const satisfies ModelConstants;

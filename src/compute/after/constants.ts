import type { Sourced } from "../../models/movement.ts";

/** Constants of what comes after a workout. */
export const AFTER_CONSTANTS = {
  mostOptions: {
    value: 5,
    source: "same-day options beside rest that are worth a choice",
    confidence: "judgement",
  },
  heavierThanMeant: {
    value: 1.1,
    source: "share over the load meant, above which the empty bar is too heavy for an easy option",
    confidence: "judgement",
  },
} as const satisfies Readonly<Record<string, Sourced<number>>>;

import type { Sourced } from "../../models/movement.ts";

/** Constants of reading a situation off an athlete and a workout. */
export const SITUATION_CONSTANTS = {
  taxedFrom: {
    value: 0.5,
    source: "share of a muscle's load from which a movement counts as taxing it",
    confidence: "judgement",
  },
  usualWithinDays: {
    value: 60,
    source: "days for which logged work still counts as what somebody is used to; no measurement found",
    confidence: "judgement",
  },
} as const satisfies Readonly<Record<string, Sourced<number>>>;

import type { ModelConstants } from "../../models/model-constant.ts";

/** Constants of loading a bar. Seconds and kilograms. */
export const LOADING_CONSTANTS = {
  plateChangeAlone: {
    value: 15,
    unit: "seconds",
    range: [0, 300],
    does: "one pair off or on with both collars, where the gym states no time",
    source: "no measurement found",
    confidence: "judgement",
  },
  furtherPairShare: {
    value: 0.5,
    unit: "share",
    does: "share of the first pair's time for each further pair",
    source: "the collars are off already",
    confidence: "judgement",
  },
  helpShare: {
    value: 0.5,
    unit: "share",
    does: "share of the time alone when a helper changes the other end of the bar",
    source: "two ends at once",
    confidence: "judgement",
  },
  worthMixing: {
    value: 1,
    unit: "kilograms",
    range: [0, 50],
    does: "how much nearer a load must come before kilogram and pound plates are mixed on one bar",
    source: "no measurement found",
    confidence: "judgement",
  },
} as const satisfies ModelConstants;

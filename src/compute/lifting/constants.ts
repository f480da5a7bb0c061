import type { Sourced } from "../../models/movement.ts";

/** Constants of loading a bar. Seconds and kilograms. */
export const LOADING_CONSTANTS = {
  plateChangeAlone: {
    value: 15,
    source: "one pair off or on with both collars, where the gym states no time; no measurement found",
    confidence: "judgement",
  },
  furtherPairShare: {
    value: 0.5,
    source: "share of the first pair's time for each further pair, the collars being off already",
    confidence: "judgement",
  },
  helpShare: {
    value: 0.5,
    source: "share of the time alone when a helper changes the other end of the bar",
    confidence: "judgement",
  },
  worthMixing: {
    value: 1,
    source: "kilograms nearer a load must come before kilogram and pound plates are mixed on one bar",
    confidence: "judgement",
  },
} as const satisfies Readonly<Record<string, Sourced<number>>>;

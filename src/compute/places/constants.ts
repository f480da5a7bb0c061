import type { ModelConstants } from "../../models/model-constant.ts";

/** Constants of what a result is worth among a field. */
export const PLACES_CONSTANTS = {
  crowded: {
    value: 2,
    unit: "factor",
    does: "how many times the usual count of its neighbours a score must hold to be a crowd",
    source: "no measurement found",
    confidence: "judgement",
  },
  crowdNeighbours: {
    value: 6,
    unit: "count",
    range: [1, 100],
    does: "scores to each side that count as neighbours of a score",
    source: "no measurement found",
    confidence: "judgement",
  },
  crowdLeastShare: {
    value: 0.01,
    unit: "share",
    does: "least share of its side of the cap a crowd is",
    source: "no measurement found",
    confidence: "judgement",
  },
  crowdsTold: {
    value: 4,
    unit: "count",
    range: [0, 20],
    does: "most crowds that are told",
    source: "no measurement found",
    confidence: "judgement",
  },
  lossPerEffort: {
    value: 2,
    unit: "factor",
    range: [0, 10],
    does: "how fast strength lost to a part falls with effort held back there, relative to it",
    source: "work above what can be sustained tires most; no measurement found",
    confidence: "judgement",
  },
  lossDoubted: {
    value: 0.5,
    unit: "share",
    does: "share of that with which a trade must still pay to be told as sure",
    source: "no measurement found",
    confidence: "judgement",
  },
} as const satisfies ModelConstants;

export type PlacesConstants = Readonly<Record<keyof typeof PLACES_CONSTANTS, number>>;

import type { ModelConstants } from "../../models/model-constant.ts";

/** Constants of the unrolling. They only decide how far work without end is listed, never what is planned. */
export const unrollConstants = {
  fasterThanFastest: {
    value: 0.7,
    unit: "share",
    range: [0.1, 1],
    does: "share of the fastest time of a movement nobody is faster than",
    source: "a third faster than the quickest clean cycle of an elite athlete, without a pause",
    confidence: "judgement",
  },
  longestOpenPart: {
    value: 7200,
    unit: "seconds",
    range: [600, 86400],
    does: "length after which a part that only a missed interval ends is cut",
    source: "two hours; intervals that grow are missed long before",
    confidence: "judgement",
  },
  mostItems: {
    value: 3000,
    unit: "count",
    range: [100, 20000],
    does: "entries after which a list of work is cut whatever the clock says",
    source: "a rep a second for most of an hour; a guard, not a model",
    confidence: "judgement",
  },
} as const satisfies ModelConstants;

import type { Sourced } from "../../models/movement.ts";

/** Constants of the unrolling. They only decide how far work without end is listed, never what is planned. */
export const unrollConstants = {
  /** Nobody is faster than this share of the fastest time of a movement. */
  fasterThanFastest: {
    value: 0.7,
    source:
      "a third faster than the quickest clean cycle of an elite athlete, without a pause: beyond anybody, by our judgement",
    confidence: "judgement",
  },
  /** Seconds after which a part that only a missed interval ends is cut. */
  longestOpenPart: {
    value: 7200,
    source: "two hours; intervals that grow are missed long before, by our judgement",
    confidence: "judgement",
  },
  /** Items after which a list is cut whatever the clock says. */
  mostItems: {
    value: 3000,
    source: "a rep a second for most of an hour; a guard, not a model, by our judgement",
    confidence: "judgement",
  },
} as const satisfies Readonly<Record<string, Sourced<number>>>;

import type { ModelConstants } from "../../models/model-constant.ts";

/** Constants of reading early splits. Shares from 0 to 1, seconds. What is believed before is weak on purpose: splits overrule it. */
export const EARLY_SPLITS_CONSTANTS = {
  roundNoise: {
    value: 0.03,
    unit: "share",
    range: [0.001, 0.5],
    does: "spread of a round about its own law",
    source:
      "three minutes of burpees repeat with a CV below 3.0 % (Tai et al. 2022, doi 10.3390/ijerph19105928, abstract)",
    confidence: "published",
  },
  roundNoiseWorth: {
    value: 4,
    unit: "rounds",
    range: [0, 100],
    does: "rounds that the spread believed before is worth when the spread seen is added",
    source: "no measurement found",
    confidence: "judgement",
  },
  clockError: {
    value: 0.41,
    unit: "seconds",
    range: [0.01, 10],
    does: "standard error of a stretch between two clocks read to the whole second",
    source: "each is off by 1/sqrt(12), calculated",
    confidence: "published",
  },
  fixedShareBefore: {
    value: 0.08,
    unit: "share",
    range: [0, 0.9],
    does: "share of a round that is there whatever is in it",
    source: "transitions took 7.3 to 8.2 % of the time in open race results",
    confidence: "measured",
  },
  fixedShareSpread: {
    value: 0.15,
    unit: "share",
    range: [0.001, 1],
    does: "how far that share may be off in other work, on other floors",
    source: "wide on purpose, so that splits overrule it",
    confidence: "judgement",
  },
  driftBefore: {
    value: 0.03,
    unit: "share",
    range: [-0.5, 0.5],
    does: "each round over the one before",
    source:
      "first to eighth split of open race results, +18 % (best twentieth) to +28 % (middle) over seven steps",
    confidence: "measured",
  },
  driftSpread: {
    value: 0.06,
    unit: "share",
    range: [0.001, 1],
    does: "how far that drift may be off",
    source: "from a fifth faster to a third slower over four rounds; wide on purpose",
    confidence: "judgement",
  },
  finishBefore: {
    value: 0,
    unit: "share",
    range: [-0.5, 0.5],
    does: "last round over what its place would make it",
    source:
      "end spurts are usual but their size was not found (Tucker et al. 2006), and last splits of open race results were slower",
    confidence: "judgement",
  },
  finishSpread: {
    value: 0.08,
    unit: "share",
    range: [0.001, 1],
    does: "how far that finish may be off",
    source: "a last round a twelfth faster or slower is nothing unusual; wide on purpose",
    confidence: "judgement",
  },
  toldFrom: {
    value: 0.5,
    unit: "share",
    does: "most that splits alone may leave of the doubt before them for a number to be told",
    source: "no measurement found",
    confidence: "judgement",
  },
  weightMost: {
    value: 0.8,
    unit: "share",
    does: "share of the shape of a plan that any number of other people's performances may decide",
    source: "no measurement found",
    confidence: "judgement",
  },
  weightHalfAt: {
    value: 4,
    unit: "performances",
    range: [0.1, 1000],
    does: "performances at which half of that share is reached",
    source: "people pace differently; no measurement found",
    confidence: "judgement",
  },
  shapeSpread: {
    value: 0.05,
    unit: "share",
    range: [0.001, 1],
    does: "how far rounds of sensible pacing lie from even; doubt of this size halves the weight of the shape",
    source: "no measurement found",
    confidence: "judgement",
  },
} as const satisfies ModelConstants;

export type EarlySplitsConstants = Readonly<Record<keyof typeof EARLY_SPLITS_CONSTANTS, number>>;

import type { Sourced } from "../../models/movement.ts";

/** Constants of reading early splits. Shares from 0 to 1, seconds. What is believed before is weak on purpose: splits overrule it. */
export const EARLY_SPLITS_CONSTANTS = {
  roundNoise: {
    value: 0.03,
    source:
      "spread of a round about its own law, as a share: three minutes of burpees repeat with a CV below 3.0 % (Tai et al. 2022, doi 10.3390/ijerph19105928, abstract)",
    confidence: "published",
  },
  roundNoiseWorth: {
    value: 4,
    source: "rounds that the spread believed before is worth when the spread seen is added to it",
    confidence: "judgement",
  },
  clockError: {
    value: 0.41,
    source:
      "standard error, in seconds, of a stretch between two clocks read to the whole second: each is off by 1/sqrt(12), calculated",
    confidence: "published",
  },
  fixedShareBefore: {
    value: 0.08,
    source:
      "share of a round that is there whatever is in it: transitions took 7.3 to 8.2 % of the time in race results",
    confidence: "measured",
  },
  fixedShareSpread: {
    value: 0.15,
    source: "how far that share may be off in other work, on other floors; wide on purpose",
    confidence: "judgement",
  },
  driftBefore: {
    value: 0.03,
    source:
      "each round over the one before: first to eighth split of race results, +18 % (best twentieth) to +28 % (middle) over seven steps",
    confidence: "measured",
  },
  driftSpread: {
    value: 0.06,
    source: "from a fifth faster to a third slower over four rounds; wide on purpose",
    confidence: "judgement",
  },
  finishBefore: {
    value: 0,
    source:
      "last round over what its place would make it: end spurts are usual but their size was not found (Tucker et al. 2006), and last race splits were slower",
    confidence: "judgement",
  },
  finishSpread: {
    value: 0.08,
    source: "a last round a twelfth faster or slower is nothing unusual; wide on purpose",
    confidence: "judgement",
  },
  toldFrom: {
    value: 0.5,
    source:
      "a number is told only where splits alone leave at most this share of the doubt there was before them",
    confidence: "judgement",
  },
  weightMost: {
    value: 0.8,
    source: "share of the shape of a plan that any number of other people's performances may decide",
    confidence: "judgement",
  },
  weightHalfAt: {
    value: 4,
    source: "performances at which half of that share is reached; people pace differently",
    confidence: "judgement",
  },
  shapeSpread: {
    value: 0.05,
    source:
      "how far rounds of sensible pacing lie from even, as a share; doubt about the shape of this size halves its weight",
    confidence: "judgement",
  },
} as const satisfies Readonly<Record<string, Sourced<number>>>;

export type EarlySplitsConstants = Readonly<Record<keyof typeof EARLY_SPLITS_CONSTANTS, number>>;

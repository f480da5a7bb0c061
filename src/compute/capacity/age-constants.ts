import type { ModelConstants } from "../../models/model-constant.ts";

/** What age does to paces and lifts of which only a level is known. */
export const AGE_CONSTANTS = {
  ageFrom: {
    value: 35,
    unit: "years",
    range: [18, 70],
    does: "age up to which a level's usual paces and lifts hold; beyond it they fall by the year",
    source: "records of masters are held against those of the thirties (Baker and Tang 2010)",
    confidence: "published",
  },
  ageUntil: {
    value: 75,
    unit: "years",
    range: [40, 100],
    does: "age beyond which the fall is carried no further",
    source: "records fall at an even rate from 35 to between 70 and 75, then faster (Fair 2007)",
    confidence: "published",
  },
  ageOnPace: {
    value: 0.0065,
    unit: "share a year",
    range: [0, 0.05],
    does: "by how much a unit takes longer and a set is smaller for each year",
    source:
      "men's records from 100 to 400 m at 70 are slower than at 35 by the factor 1.23 (Fair 2007), 0.6 % a year; longer runs and jumps lose a little more, rowing less (Baker and Tang 2010)",
    confidence: "published",
  },
  ageOnLifts: {
    value: 0.012,
    unit: "share a year",
    range: [0, 0.05],
    does: "by how much a usual best lift is lower for each year",
    source:
      "the age coefficients by which masters' lifts are compared: about 1.13 at 50 and 1.34 at 60 as we remember them, not looked up again; weightlifting falls fastest of all sports (Baker and Tang 2010)",
    confidence: "judgement",
  },
} as const satisfies ModelConstants;

export type AgeConstants = Readonly<Record<keyof typeof AGE_CONSTANTS, number>>;

import type { ModelConstants } from "../../models/model-constant.ts";

/** Constants of what comes after a workout. */
export const AFTER_CONSTANTS = {
  nextStartWithin: {
    value: 8,
    unit: "hours",
    does: "time to the next start within which the day is for eating and resting only",
    source:
      "Burke et al. 2011, 10.1080/02640414.2011.585473 draws the line for refuelling there; that nothing is trained follows from it by judgement",
    confidence: "judgement",
  },
  lightWithin: {
    value: 26,
    unit: "hours",
    does: "time to the next start within which nothing but light work follows",
    source:
      "Helland et al. 2020, PeerJ, 10.7717/peerj.10044 (abstract: a heavy session was not recovered from for a day or two); the hours are judgement",
    confidence: "judgement",
  },
  sessionFrom: {
    value: 8,
    unit: "hours",
    range: [0, 45],
    does: "training a week from which a second session on one day is nothing unusual",
    source: "no measurement found",
    confidence: "judgement",
  },
  sessionShare: {
    value: 0.5,
    unit: "share",
    does: "length of the session as a share of a usual day of training",
    source: "no measurement found",
    confidence: "judgement",
  },
  daysOfTraining: {
    value: 5,
    unit: "count",
    range: [1, 7],
    does: "days of training a week that the hours are spread over",
    source: "no measurement found",
    confidence: "judgement",
  },
  longestSession: {
    value: 75,
    unit: "minutes",
    does: "length of the longest session of the same day",
    source: "no measurement found",
    confidence: "judgement",
  },
  lightMinutes: {
    value: 40,
    unit: "minutes",
    does: "length of all pieces of a light day together",
    source: "no measurement found",
    confidence: "judgement",
  },
  eveningFrom: {
    value: 17,
    unit: "hours",
    does: "hour of the start from which no session follows on the same day",
    source: "come-down, food and two hours between would put it into the night",
    confidence: "judgement",
  },
  longFrom: {
    value: 25,
    unit: "minutes",
    does: "length of the work from which nothing but light work follows on the day",
    source: "no measurement found",
    confidence: "judgement",
  },
  hotFrom: {
    value: 25.6,
    unit: "count",
    range: [10, 40],
    does: "wet bulb globe temperature in degrees Celsius from which nothing but light work follows",
    source:
      "Armstrong et al. 2007, Med Sci Sports Exerc 39(3):556-572, first step of the table for those not used to heat",
    confidence: "published",
  },
  youngUnder: {
    value: 18,
    unit: "years",
    does: "age under which rest comes first",
    source: "no measurement found",
    confidence: "judgement",
  },
  oldFrom: {
    value: 60,
    unit: "years",
    does: "age from which nothing but light work follows on the day",
    source: "no measurement found",
    confidence: "judgement",
  },
  mostRepsOfASet: {
    value: 8,
    unit: "reps",
    does: "most reps of a set planned from a best set",
    source: "no measurement found",
    confidence: "judgement",
  },
  heavierThanMeant: {
    value: 1.1,
    unit: "factor",
    range: [1, 3],
    does: "share over the load meant, above which the empty bar is too heavy for an easy piece",
    source: "no measurement found",
    confidence: "judgement",
  },
} as const satisfies ModelConstants;

/** The plain numbers of what comes after, as a coach may have set them. */
export type AfterNumbers = Readonly<Record<keyof typeof AFTER_CONSTANTS, number>>;

import type { FixedConstants } from "../../models/model-constant.ts";

/** Numbers of the best plan that a coach cannot set: they say how the model is used, not what somebody can do. */
export const SEARCH_FIXED = {
  singlesDrawnOut: {
    value: 0.25,
    unit: "share",
    does: "share by which singles that the clock breaks off are drawn out at most",
    source: "no measurement found",
    confidence: "judgement",
  },
  setFalls: {
    value: [1, 0.93, 0.86, 0.78, 0.7],
    unit: "factor",
    does: "how sets may fall: factor on each after the first",
    source: "no measurement found",
    confidence: "judgement",
  },
  firstOfTail: {
    value: [1.4, 1.8, 2.1],
    unit: "factor",
    does: "how many times as large as those after it a first set may be where all others are equal",
    source: "no measurement found; athletes open with what they have and then keep to one number",
    confidence: "judgement",
  },
  setDislikes: {
    value: {
      break: 4.5,
      longRest: 0.2,
      fromRest: 10,
      fall: 4,
      fallFrom: 0.6,
      nearFailure: 8,
      oddTwos: 1,
      even: 0.35,
    },
    unit: "points",
    does: "what a coach dislikes about sets: breaks, rests longer than ten seconds, falls, sets near failure, odd twos, sets not even",
    source: "tried on thirty situations written down beforehand",
    confidence: "judgement",
  },
  fivesFrom: {
    value: 30,
    unit: "reps",
    does: "amount from which whole fives are tried",
    source: "they are easier to count",
    confidence: "judgement",
  },
  drawnTooFar: {
    value: 1.5,
    unit: "factor",
    does: "times the slowest rhythm of something held from which it is put down instead",
    source: "no measurement found",
    confidence: "judgement",
  },
  spreadPlannedFor: {
    value: 0.06,
    unit: "share",
    does: "spread of the athlete's numbers that a plan's margin is chosen for at most",
    source: "an athlete feels on the day when a guess was far off",
    confidence: "judgement",
  },
  notFelt: {
    value: 0.5,
    unit: "share",
    does: "share of what is not known of the athlete that they do not feel before it is too late",
    source: "no measurement found",
    confidence: "judgement",
  },
  planLikeAverage: {
    value: { least: 0.4, most: 1.6 },
    unit: "factor",
    does: "opening pace of a kept plan over its average, at least and at most",
    source: "no measurement found",
    confidence: "judgement",
  },
  timeBeforeAStop: {
    value: 0.1,
    unit: "seconds of work a second",
    does: "worth of a second to who gets stopped",
    source: "how far one gets comes first",
    confidence: "judgement",
  },
} as const satisfies FixedConstants;

import type { FixedConstants } from "../../models/model-constant.ts";

/** Numbers of warming up that a coach cannot set: they say how the model is used, not what somebody can do. */
export const WARM_UP_FIXED = {
  youngUnder: {
    value: 18,
    unit: "years",
    does: "age under which a lifter is young",
    source: "no measurement found",
    confidence: "judgement",
  },
  oldFrom: {
    value: 60,
    unit: "years",
    does: "age from which a lifter is old",
    source: "no measurement found",
    confidence: "judgement",
  },
  coarsePlates: {
    value: [9.9, 4.5, 2.2],
    unit: "kilograms",
    does: "plates a person takes for a warm-up set, coarsest first",
    source: "10, 5 and 2.5 kg, or 25, 10 and 5 lb",
    confidence: "judgement",
  },
  easyLoadOff: {
    value: [0.03, 0.04, 0.06],
    unit: "share",
    does: "share of the best a set may miss for the sake of few and large plates",
    source: "no measurement found",
    confidence: "judgement",
  },
  fewestToSplit: {
    value: 4,
    unit: "sets",
    does: "sets below which a build is not split",
    source: "no measurement found",
    confidence: "judgement",
  },
  leastUnder: {
    value: 0.1,
    unit: "kilograms",
    does: "mass by which a load of a build is under another",
    source: "no measurement found",
    confidence: "judgement",
  },
  asPrescribed: {
    value: 0.6,
    unit: "kilograms",
    does: "mass by which a load that stands for a prescribed one in the other unit may be off",
    source: "half a kilogram is what rounding a load to five pounds or to a kilogram comes to",
    confidence: "judgement",
  },
  mayGo: {
    value: 1.2,
    unit: "share",
    does: "share of a guessed best up to which a load may go after all and is worked up to",
    source: "what an athlete known by level alone is off by; no measurement found",
    confidence: "judgement",
  },
  middleFrom: {
    value: 0.6,
    unit: "share",
    does: "share of the best from which a set of the build is a middle one",
    source: "no measurement found",
    confidence: "judgement",
  },
  heavyFrom: {
    value: 0.7,
    unit: "share",
    does: "share of the best from which a set of the build is a heavy one",
    source: "no measurement found",
    confidence: "judgement",
  },
  rhythmReps: {
    value: 3,
    unit: "reps",
    does: "reps it takes to find a rhythm",
    source: "far enough from the best set",
    confidence: "judgement",
  },
  rehearsedMost: {
    value: 3,
    unit: "count",
    does: "movements rehearsed at most",
    source: "more would be a workout of its own, and a pace on a display takes its time to find",
    confidence: "judgement",
  },
  blocksAtMost: {
    value: {
      roomy: { ready: 6, mobility: 5, general: 1, specific: 4, build: 1, primer: 4, rehearsal: 1, rest: 1 },
      short: { ready: 6, mobility: 3, general: 1, specific: 2, build: 1, primer: 3, rehearsal: 1, rest: 1 },
    },
    unit: "blocks",
    does: "blocks of each stage at most, where there is room and where there is not",
    source: "more than this nobody remembers",
    confidence: "judgement",
  },
} as const satisfies FixedConstants;

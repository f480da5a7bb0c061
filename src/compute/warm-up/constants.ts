import type { Sourced } from "../../models/movement.ts";

/** Constants of the warm-up. Times are seconds, shares from 0 to 1. */
export const WARM_UP_CONSTANTS = {
  usualLength: {
    value: 2400,
    source: "length of a warm-up where the athlete states none; coaching practice",
    confidence: "judgement",
  },
  lengthAfterAStart: {
    value: 1500,
    source: "the same when the start before was less than `stillWarm` ago; coaching practice",
    confidence: "judgement",
  },
  stillWarm: {
    value: 3,
    source: "hours after a start for which a short warm-up is enough; coaching practice",
    confidence: "judgement",
  },
  roomyFrom: {
    value: 3600,
    source: "length from which more mobility and specific work is offered",
    confidence: "judgement",
  },
  buildLowest: {
    value: 0.7,
    source:
      "lowest top set of a build as a share of the best lift; Abad et al. 2011, 10.1519/JSC.0b013e3181e8611b ends at 70 % (abstract)",
    confidence: "judgement",
  },
  buildHighest: {
    value: 0.8,
    source:
      "highest top set of a build as a share of the best lift; Ribeiro et al. 2020, PMC7558980 prepares with 80 % of the working load (abstract)",
    confidence: "judgement",
  },
  buildMiddle: { value: 0.75, source: "where the band begins for everybody", confidence: "judgement" },
  strongFrom: {
    value: 1.2,
    source: "best lift over that of a regular of the same body mass, from which somebody counts as strong",
    confidence: "judgement",
  },
  weakUpTo: {
    value: 0.85,
    source:
      "best lift over that of a regular of the same body mass, up to which somebody counts as not yet strong",
    confidence: "judgement",
  },
  strengthStep: {
    value: 0.02,
    source:
      "step in the band for strength; Seitz and Haff 2016, Sports Med (recalled, not verified): the stronger gain more from, and recover sooner after, a heavy set",
    confidence: "judgement",
  },
  fastRecoveryStep: { value: 0.01, source: "step up for those who recover fast", confidence: "judgement" },
  slowRecoveryStep: {
    value: 0.02,
    source: "step down for those who recover slowly",
    confidence: "judgement",
  },
  liftFirstStep: {
    value: 0.02,
    source: "step up where the lift comes first: nothing else wakes the muscles up before it",
    confidence: "judgement",
  },
  liftLateStep: {
    value: 0.02,
    source:
      "step down where minutes of work come before the lift: the work warms, and the build must not tire",
    confidence: "judgement",
  },
  lateFrom: {
    value: 480,
    source: "seconds of work before the lift that count as long",
    confidence: "judgement",
  },
  unknownBestStep: {
    value: 0.03,
    source: "step down where the best lift is not the athlete's own result",
    confidence: "judgement",
  },
  youngOrOldStep: {
    value: 0.02,
    source: "step down under 18 and from 60 on; Fragala et al. 2019 (recalled, not verified)",
    confidence: "judgement",
  },
  kilogramsPerStep: {
    value: 20,
    source: "largest usual jump between two sets of the build, kilograms",
    confidence: "judgement",
  },
  roomBesideBuild: {
    value: 120,
    source: "seconds a build leaves for mobility and primers before it is given more sets",
    confidence: "judgement",
  },
  mostReps: {
    value: 20,
    source: "most reps of a whole build; above it a build begins to tire",
    confidence: "judgement",
  },
  secondsPerRep: { value: 5, source: "one careful rep of a build", confidence: "judgement" },
  secondsPerSet: { value: 10, source: "stepping up to the bar and away from it", confidence: "judgement" },
  restLight: { value: 60, source: "rest after a set under 60 % of the best", confidence: "judgement" },
  restMiddle: { value: 90, source: "rest after a set of 60 to 70 % of the best", confidence: "judgement" },
  restHeavy: {
    value: 120,
    source:
      "rest after a set of 70 % and more; Hardee et al. 2012, 10.1519/JSC.0b013e3182474370 (abstract): power cleans of 80 % keep their power with 40 s between singles",
    confidence: "judgement",
  },
  restShared: {
    value: 120,
    source: "rest after a set where the bar is shared in turns",
    confidence: "judgement",
  },
  lastRestShortest: {
    value: 180,
    source:
      "shortest rest before the start; post-activation studies place the best moment at 3 to 7 minutes (meta-analysis 2025, abstract, likely biased upward)",
    confidence: "judgement",
  },
  lastRestLongest: {
    value: 480,
    source:
      "longest rest before the start; Russell et al. 2015, PMC4365002 (abstract): fifteen still minutes cool and cost power",
    confidence: "judgement",
  },
  longestStillBeforeLift: {
    value: 45,
    source:
      "longest stretch held still before a lift; Kay and Blazevich 2012, 10.1249/MSS.0b013e318225cb27 (abstract): up to 45 s costs nothing measurable, 60 s and more does",
    confidence: "published",
  },
  primerShare: {
    value: 0.15,
    source: "reps of a primer as a share of the best unbroken set",
    confidence: "judgement",
  },
  primerMost: { value: 5, source: "most reps of a primer", confidence: "judgement" },
  rehearsalShare: {
    value: 0.3,
    source: "reps rehearsed as a share of the first planned set of a movement",
    confidence: "judgement",
  },
  rehearsalMost: { value: 5, source: "most reps rehearsed of a movement", confidence: "judgement" },
  rehearsalSeconds: {
    value: 15,
    source: "seconds rehearsed of a movement that is not counted in reps",
    confidence: "judgement",
  },
} as const satisfies Readonly<Record<string, Sourced<number>>>;

/** The plain numbers of the warm-up, as a coach may have set them. */
export type WarmUpNumbers = Readonly<Record<keyof typeof WARM_UP_CONSTANTS, number>>;

/** One set of a ladder: the load as a share of its top set, and its reps. */
export type Rung = { readonly share: number; readonly reps: number };

/**
 * Ladders of a build by their number of sets, lightest first. Share 0 is the empty bar. Judgement: even steps that
 * shorten towards the top, reps that fall with the load; the measured part is only that a light set and one near the
 * working load prepare better than light ones alone (Ribeiro et al. 2020, PMC7558980, abstract).
 */
export const BUILD_LADDERS: readonly (readonly Rung[])[] = [
  [
    { share: 0.7, reps: 2 },
    { share: 1, reps: 1 },
  ],
  [
    { share: 0.5, reps: 3 },
    { share: 0.8, reps: 2 },
    { share: 1, reps: 1 },
  ],
  [
    { share: 0, reps: 5 },
    { share: 0.6, reps: 3 },
    { share: 0.82, reps: 2 },
    { share: 1, reps: 1 },
  ],
  [
    { share: 0, reps: 5 },
    { share: 0.55, reps: 3 },
    { share: 0.75, reps: 2 },
    { share: 0.88, reps: 1 },
    { share: 1, reps: 1 },
  ],
  [
    { share: 0, reps: 5 },
    { share: 0.45, reps: 3 },
    { share: 0.62, reps: 2 },
    { share: 0.77, reps: 2 },
    { share: 0.9, reps: 1 },
    { share: 1, reps: 1 },
  ],
];

import type { ModelConstants } from "../../models/model-constant.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { LADDER_CONSTANTS } from "./ladder-constants.ts";

const FITTED =
  "fitted to the attempts of 54,000 lifters in public weightlifting results, 1998 to 2024; that later attempts are no harder is assumed, so the slope is bracketed rather than known";

/** Constants of the strength of a day and the chance of a lift. Shares of the load unless kilograms or seconds are named. */
export const ATTEMPT_CONSTANTS = {
  // How far the load made half the time and the load made this time lie apart.
  snatchAttemptKilograms: {
    value: 3.0,
    unit: "kilograms",
    range: [0, 50],
    does: "lifts with an overhead catch: spread of one attempt at load 0",
    source: FITTED,
    confidence: "measured",
  },
  snatchAttemptShare: {
    value: 0.052,
    unit: "kilograms a kilogram",
    range: [0, 1],
    does: "the same, added per kilogram of load",
    source: FITTED,
    confidence: "measured",
  },
  snatchAttemptMost: {
    value: 8.7,
    unit: "kilograms",
    range: [0.1, 100],
    does: "the same, beyond which it does not grow",
    source: FITTED,
    confidence: "measured",
  },
  snatchNoiseShare: {
    value: 0.6645,
    unit: "share",
    does: "the same, share of that variance that is the single attempt and not the day",
    source: `(0.076² of 0.054² + 0.076²); ${FITTED}`,
    confidence: "measured",
  },
  slowAttemptKilograms: {
    value: 3.1,
    unit: "kilograms",
    range: [0, 50],
    does: "clean and jerk, and by judgement slow lifts: spread of one attempt at load 0",
    source: FITTED,
    confidence: "measured",
  },
  slowAttemptShare: {
    value: 0.033,
    unit: "kilograms a kilogram",
    range: [0, 1],
    does: "the same, added per kilogram of load",
    source: FITTED,
    confidence: "measured",
  },
  slowNoiseShare: {
    value: 0.5105,
    unit: "share",
    does: "the same, share of that variance that is the single attempt",
    source: `(0.048² of 0.047² + 0.048²); ${FITTED}`,
    confidence: "measured",
  },
  slowMiss: {
    value: 0.03,
    unit: "share",
    range: [0, 0.3],
    does: "clean and jerk: share of attempts after the first that are missed at any load",
    source: `${FITTED}; for slow lifts by judgement`,
    confidence: "measured",
  },
  snatchMiss: {
    value: 0.049,
    unit: "share",
    range: [0, 0.3],
    does: "overhead catch: the same",
    source: FITTED,
    confidence: "measured",
  },
  caution: {
    value: 1.25,
    unit: "factor",
    range: [1, 3],
    does: "how much wider a spread plans reckon with than the one fitted",
    source: "a quarter, inside the bracket of the slope",
    confidence: "judgement",
  },

  // What somebody who knows the athlete tells by the opener they chose.
  snatchOpenerMargin: {
    value: 5.0,
    unit: "kilograms",
    range: [-50, 50],
    does: "overhead catch: how far the load made half the time lies over a chosen opener",
    source: FITTED,
    confidence: "measured",
  },
  slowOpenerMargin: {
    value: 5.6,
    unit: "kilograms",
    range: [-50, 50],
    does: "clean and jerk: the same",
    source: FITTED,
    confidence: "measured",
  },
  snatchMarginPerKilogram: {
    value: 0.29,
    unit: "kilograms a kilogram",
    range: [0, 1],
    does: "overhead catch: added to that per kilogram of the opener under the best known",
    source: FITTED,
    confidence: "measured",
  },
  slowMarginPerKilogram: {
    value: 0.24,
    unit: "kilograms a kilogram",
    range: [0, 1],
    does: "clean and jerk: the same",
    source: FITTED,
    confidence: "measured",
  },
  snatchMarginNoBest: {
    value: 6.5,
    unit: "kilograms",
    range: [-50, 50],
    does: "overhead catch: that margin for somebody without a known best",
    source: FITTED,
    confidence: "measured",
  },
  slowMarginNoBest: {
    value: 7.3,
    unit: "kilograms",
    range: [-50, 50],
    does: "clean and jerk: the same",
    source: FITTED,
    confidence: "measured",
  },
  openerLightest: {
    value: 0.8,
    unit: "share",
    does: "share of the best under which an opener tells nothing of the day",
    source: "no measurement found",
    confidence: "judgement",
  },
  openerHeaviest: {
    value: 1.1,
    unit: "factor",
    range: [0.5, 2],
    does: "share of the best over which an opener tells nothing of the day",
    source: "no measurement found",
    confidence: "judgement",
  },

  // Strength lost to the work before, and regained.
  workLoss: {
    value: 0.19,
    unit: "share",
    range: [0, 0.9],
    does: "strength lost at the end of exhausting work of the same muscles",
    source:
      "maximal force -19 (4) % after 6 minutes of cycling (Felippe et al. 2020, abstract); no lift was measured",
    confidence: "judgement",
  },
  lossWithoutOverlap: {
    value: 0.4,
    unit: "share",
    does: "share of that loss where the lift uses none of the muscles that worked",
    source: "bar speed is back sooner after ergs (Mate-Munoz et al. 2022, abstract)",
    confidence: "judgement",
  },
  fullWorkMinutes: {
    value: 4,
    unit: "minutes",
    range: [0.1, 120],
    does: "minutes of work at its intensity after which the loss is complete to two thirds",
    source: "most force is lost in the first two fifths of a 6-minute bout (Froyd et al. 2013, abstract)",
    confidence: "judgement",
  },
  fastShare: {
    value: 0.65,
    unit: "share",
    does: "share of the loss regained fast",
    source:
      "with the two times below, phosphocreatine of Bogdanis et al. 1995 (abstract) within 3 points at 90 and 360 s",
    confidence: "judgement",
  },
  fastSeconds: {
    value: 60,
    unit: "seconds",
    range: [1, 1800],
    does: "time constant of the fast part of the loss",
    source: "half-time of phosphocreatine 57 (7) s (Bogdanis et al. 1995, abstract)",
    confidence: "judgement",
  },
  slowSeconds: {
    value: 600,
    unit: "seconds",
    range: [10, 14400],
    does: "time constant of the slow part, where other muscles worked",
    source: "jumps are back by 20 min (Garcia-Fernandez et al. 2021, abstract)",
    confidence: "judgement",
  },
  slowSecondsOverlap: {
    value: 900,
    unit: "seconds",
    range: [10, 14400],
    does: "the same where the same muscles worked",
    source: "a press still -7 % at 15 min (Mate-Munoz et al. 2022, abstract)",
    confidence: "judgement",
  },
  lossDoubt: {
    value: 0.4,
    unit: "share",
    does: "spread of the loss as a share of it",
    source: "no lift after such work was measured",
    confidence: "judgement",
  },
  slowRecovery: {
    value: 1.3,
    unit: "factor",
    does: "time constants of an athlete who recovers slowly, times the usual",
    source: "no measurement found",
    confidence: "judgement",
  },
  fastRecovery: {
    value: 0.75,
    unit: "factor",
    does: "time constants of one who recovers fast, times the usual",
    source: "no measurement found",
    confidence: "judgement",
  },

  // What an attempt costs.
  attemptLoss: {
    value: 0.04,
    unit: "share",
    range: [0, 0.5],
    does: "strength lost right after a maximal lift",
    source: "repeats of a maximal squat after 1, 3, 5 min: 13, 16, 15 of 17 (Matuszak et al. 2003, abstract)",
    confidence: "judgement",
  },
  attemptSeconds: {
    value: 60,
    unit: "seconds",
    range: [1, 1800],
    does: "time constant with which that is regained",
    source:
      "power of cleans at 80 % fades -15.7, -5.5, -3.3 % over six reps with 0, 20, 40 s between (Hardee et al. 2012, abstract)",
    confidence: "judgement",
  },
  attemptCost: {
    value: 0.004,
    unit: "share",
    range: [0, 0.1],
    does: "strength lost for the rest of the session with every heavy attempt",
    source:
      "third attempts at a repeated load are made 2 points less often than misses at any load explain, 5 less without those (public results); between",
    confidence: "judgement",
  },

  // Time.
  liftSeconds: {
    value: 10,
    unit: "seconds",
    range: [1, 60],
    does: "one attempt from stepping up to dropping the bar",
    source: "no measurement found",
    confidence: "judgement",
  },
  repSeconds: {
    value: 4,
    unit: "seconds",
    range: [0.5, 60],
    does: "each further rep of it",
    source: "no measurement found",
    confidence: "judgement",
  },
  smallestRest: {
    value: 60,
    unit: "seconds",
    range: [0, 600],
    does: "least rest between heavy attempts",
    source: "1 min costs about 15 points of success against 3 (Matuszak et al. 2003, abstract)",
    confidence: "judgement",
  },
  fullRest: {
    value: 180,
    unit: "seconds",
    range: [0, 1800],
    does: "rest between attempts where no clock runs",
    source: "no measurement found",
    confidence: "judgement",
  },
  longestRest: {
    value: 240,
    unit: "seconds",
    range: [60, 1800],
    does: "longest rest planned inside a window",
    source: "3 min keep technique better than 2 (Ammar et al. 2020, abstract), and who stands longer cools",
    confidence: "judgement",
  },
  restGrowth: {
    value: 0.5,
    unit: "share",
    range: [0, 1],
    does: "how much longer the rest before the last attempt is than the one before the second",
    source: "the heaviest loads come last; no measurement found",
    confidence: "judgement",
  },
  breathHalfTime: {
    value: 57,
    unit: "seconds",
    range: [1, 600],
    does: "time in which half of the fast recovery is back",
    source: "phosphocreatine 57 (7) s (Bogdanis et al. 1995, abstract)",
    confidence: "published",
  },
  breathShare: {
    value: 0.8,
    unit: "share",
    range: [0, 0.99],
    does: "share of the fast recovery that is back before the first attempt after hard work",
    source: "no measurement found",
    confidence: "judgement",
  },
  breathKeeps: {
    value: 4,
    unit: "count",
    range: [1, 12],
    does: "attempts that are not given up for breath",
    source: "a fifth or sixth is worth no more than the breath, the fourth is (simulation)",
    confidence: "judgement",
  },
  firstLiftAfter: {
    value: 20,
    unit: "seconds",
    range: [0, 600],
    does: "earliest start of the first lift after a window opens",
    source: "walk up, chalk, set",
    confidence: "judgement",
  },
  pickUpSeconds: {
    value: 10,
    unit: "seconds",
    range: [0, 60],
    does: "from the last rep of other work inside an interval to the lift: two breaths, hands, set",
    source: "no measurement found",
    confidence: "judgement",
  },
  openingPairs: {
    value: 3,
    unit: "count",
    range: [0, 20],
    does: "pairs of plates on the bar at the first attempt",
    source: "no measurement found",
    confidence: "judgement",
  },
  changeOfLift: {
    value: 60,
    unit: "seconds",
    range: [0, 900],
    does: "from the last attempt of one lift to the first of the next, beyond the plates",
    source: "no measurement found",
    confidence: "judgement",
  },
  lateMargin: {
    value: 2,
    unit: "seconds",
    range: [0, 60],
    does: "time before the last possible start that is not planned with",
    source: "no measurement found",
    confidence: "judgement",
  },

  // What was felt of the work before, on the day.
  lossWhenHarder: {
    value: 1.4,
    unit: "factor",
    range: [1, 5],
    does: "strength lost to work before that was harder than planned, over the planned loss",
    source: "no measurement found; within the doubt of the loss itself",
    confidence: "judgement",
  },
  lossWhenEasier: {
    value: 0.75,
    unit: "factor",
    range: [0, 1],
    does: "the same, where it was easier than planned",
    source: "no measurement found; within the doubt of the loss itself",
    confidence: "judgement",
  },

  // Several reps, and several movements without putting down.
  complexCarry: {
    value: 0.5,
    unit: "share",
    does: "share of the reps before in a complex that count as reps of the movement at hand",
    source: "no measurement found",
    confidence: "judgement",
  },
  repsDoubt: {
    value: 0.02,
    unit: "share a rep",
    range: [0, 0.2],
    does: "added spread of a load for several reps, per further rep up to five",
    source: "no measurement found",
    confidence: "judgement",
  },
} as const satisfies ModelConstants;

type Names = keyof typeof ATTEMPT_CONSTANTS | keyof typeof LADDER_CONSTANTS;
export type AttemptConstants = Readonly<Record<Names, number>>;

/** The numbers attempts are planned with, those set differently by the coach replaced. */
export const attemptConstants = (overrides?: Readonly<Record<string, number>>): AttemptConstants => ({
  ...withOverrides(ATTEMPT_CONSTANTS, overrides),
  ...withOverrides(LADDER_CONSTANTS, overrides),
});

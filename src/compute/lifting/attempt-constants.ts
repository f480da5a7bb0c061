import type { Sourced } from "../../models/movement.ts";

const FITTED =
  "fitted to the attempts of 54,000 lifters in public weightlifting results, 1998 to 2024; that later attempts are no harder is assumed, so the slope is bracketed rather than known";

/** Constants of the strength of a day and the chance of a lift. Shares of the load unless kilograms or seconds are named. */
export const ATTEMPT_CONSTANTS = {
  // How far the load made half the time and the load made this time lie apart.
  snatchAttemptKilograms: {
    value: 3.0,
    source: `overhead catch: spread of one attempt, kilograms at load 0; ${FITTED}`,
    confidence: "measured",
  },
  snatchAttemptShare: {
    value: 0.052,
    source: `overhead catch: the same, added per kilogram of load; ${FITTED}`,
    confidence: "measured",
  },
  snatchAttemptMost: {
    value: 8.7,
    source: "overhead catch: kilograms beyond which it does not grow",
    confidence: "measured",
  },
  snatchNoiseShare: {
    value: 0.6645,
    source: `overhead catch: share of that variance that is the single attempt and not the day (0.076² of 0.054² + 0.076²); ${FITTED}`,
    confidence: "measured",
  },
  slowAttemptKilograms: {
    value: 3.1,
    source: `clean and jerk: spread of one attempt, kilograms at load 0; for slow lifts by judgement; ${FITTED}`,
    confidence: "measured",
  },
  slowAttemptShare: {
    value: 0.033,
    source: `clean and jerk: the same, added per kilogram of load; ${FITTED}`,
    confidence: "measured",
  },
  slowNoiseShare: {
    value: 0.5105,
    source: `clean and jerk: share of that variance that is the single attempt (0.048² of 0.047² + 0.048²); ${FITTED}`,
    confidence: "measured",
  },
  caution: {
    value: 1.25,
    source: "plans reckon with a spread a quarter wider than fitted, inside the bracket of the slope",
    confidence: "judgement",
  },

  // What somebody who knows the athlete tells by the opener they chose.
  snatchOpenerMargin: {
    value: 5.0,
    source: `overhead catch: kilograms the load made half the time lies over a chosen opener; ${FITTED}`,
    confidence: "measured",
  },
  slowOpenerMargin: { value: 5.6, source: `clean and jerk: the same; ${FITTED}`, confidence: "measured" },
  snatchMarginPerKilogram: {
    value: 0.29,
    source: `overhead catch: added per kilogram of the opener under the best known; ${FITTED}`,
    confidence: "measured",
  },
  slowMarginPerKilogram: {
    value: 0.24,
    source: `clean and jerk: the same; ${FITTED}`,
    confidence: "measured",
  },
  snatchMarginNoBest: {
    value: 6.5,
    source: `overhead catch: kilograms over the opener of somebody without a known best; ${FITTED}`,
    confidence: "measured",
  },
  slowMarginNoBest: { value: 7.3, source: `clean and jerk: the same; ${FITTED}`, confidence: "measured" },
  openerLightest: {
    value: 0.8,
    source: "openers lighter than this share of the best tell nothing of the day",
    confidence: "judgement",
  },
  openerHeaviest: { value: 1.1, source: "nor do openers heavier than this", confidence: "judgement" },

  // Strength lost to the work before, and regained.
  workLoss: {
    value: 0.19,
    source:
      "lost at the end of exhausting work of the same muscles: maximal force -19 (4) % after 6 minutes of cycling (Felippe et al. 2020, abstract); no lift was measured, so a judgement",
    confidence: "judgement",
  },
  lossWithoutOverlap: {
    value: 0.4,
    source:
      "share of that loss where the lift uses none of the muscles that worked; bar speed is back sooner after ergs (Mate-Munoz et al. 2022, abstract)",
    confidence: "judgement",
  },
  fullWorkMinutes: {
    value: 4,
    source:
      "minutes of work at its intensity after which the loss is complete to two thirds; most force is lost in the first two fifths of a 6-minute bout (Froyd et al. 2013, abstract)",
    confidence: "judgement",
  },
  fastShare: {
    value: 0.65,
    source:
      "share of the loss regained fast; with the two times below, phosphocreatine of Bogdanis et al. 1995 (abstract) within 3 points at 90 and 360 s",
    confidence: "judgement",
  },
  fastSeconds: {
    value: 60,
    source:
      "time constant of the fast part, seconds; half-time of phosphocreatine 57 (7) s (Bogdanis et al. 1995, abstract)",
    confidence: "judgement",
  },
  slowSeconds: {
    value: 600,
    source:
      "time constant of the slow part, seconds, where other muscles worked; jumps are back by 20 min (Garcia-Fernandez et al. 2021, abstract)",
    confidence: "judgement",
  },
  slowSecondsOverlap: {
    value: 900,
    source:
      "the same where the same muscles worked; a press still -7 % at 15 min (Mate-Munoz et al. 2022, abstract)",
    confidence: "judgement",
  },
  lossDoubt: {
    value: 0.4,
    source: "spread of the loss as a share of it: no lift after such work was measured",
    confidence: "judgement",
  },
  slowRecovery: {
    value: 1.3,
    source: "time constants of an athlete who recovers slowly, times the usual",
    confidence: "judgement",
  },
  fastRecovery: { value: 0.75, source: "and of one who recovers fast", confidence: "judgement" },

  // What an attempt costs.
  attemptLoss: {
    value: 0.04,
    source:
      "strength lost right after a maximal lift, regained with `attemptSeconds`; repeats of a maximal squat after 1, 3, 5 min: 13, 16, 15 of 17 (Matuszak et al. 2003, abstract)",
    confidence: "judgement",
  },
  attemptSeconds: {
    value: 60,
    source:
      "time constant, seconds; power of cleans at 80 % fades -15.7, -5.5, -3.3 % over six reps with 0, 20, 40 s between (Hardee et al. 2012, abstract)",
    confidence: "judgement",
  },
  attemptCost: {
    value: 0.005,
    source:
      "lost for the rest of the session with every heavy attempt; third attempts at a repeated load are made 5 points less often than without it (public results), which is that much",
    confidence: "judgement",
  },

  // Openers.
  openerChance: {
    value: 0.85,
    source:
      "least chance of the first load: openers of lifters are made 81 to 86 in 100 times (public results); in simulation it costs 0.2 % of the result when the belief is right and saves 1 % when the athlete is weaker than believed",
    confidence: "judgement",
  },
  noLiftCost: {
    value: 2,
    source:
      "how many times the lift a day without any lift costs, beyond the lift itself; with it days without a lift are rarer than under fixed percentages in every world simulated, for 0.1 to 0.5 % of the expected result",
    confidence: "judgement",
  },
  lowestAfterMiss: {
    value: 0.85,
    source:
      "share of the opener under which no load is planned, not even after it is missed: three in four lifters repeat a missed opener (public results: 79 % in the snatch, 72 % in the clean and jerk), and where little is known of an athlete the safest load of all would be an empty bar",
    confidence: "judgement",
  },
  openerShare: {
    value: 0,
    source: "share of today's strength a coach wants opened with; 0 leaves it to the plan",
    confidence: "judgement",
  },

  // Time.
  liftSeconds: {
    value: 10,
    source: "one attempt from stepping up to dropping the bar",
    confidence: "judgement",
  },
  repSeconds: { value: 4, source: "each further rep of it", confidence: "judgement" },
  smallestRest: {
    value: 60,
    source:
      "least rest between heavy attempts: 1 min costs about 15 points of success against 3 (Matuszak et al. 2003, abstract)",
    confidence: "judgement",
  },
  fullRest: { value: 180, source: "rest between attempts where no clock runs", confidence: "judgement" },
  firstLiftAfter: {
    value: 20,
    source: "earliest start of the first lift after a window opens: walk up, chalk, set",
    confidence: "judgement",
  },
  openingPairs: {
    value: 3,
    source: "pairs of plates on the bar at the first attempt",
    confidence: "judgement",
  },
  changeOfLift: {
    value: 60,
    source: "from the last attempt of one lift to the first of the next, beyond the plates",
    confidence: "judgement",
  },
  mostAttempts: {
    value: 6,
    source: "heavy attempts planned at one lift where the rules set no number",
    confidence: "judgement",
  },
  lateMargin: {
    value: 2,
    source: "seconds before the last possible start that are not planned with",
    confidence: "judgement",
  },

  // Several reps, and several movements without putting down.
  complexCarry: {
    value: 0.5,
    source: "share of the reps before in a complex that count as reps of the movement at hand",
    confidence: "judgement",
  },
  repsDoubt: {
    value: 0.02,
    source: "added spread of a load for several reps, per further rep up to five",
    confidence: "judgement",
  },

  // Fixed percentages, the rule a plan must beat.
  ruleFirst: {
    value: 0.85,
    source: "share of the best for the first attempt of the fixed rule",
    confidence: "published",
  },
  ruleSecond: { value: 0.92, source: "for the second", confidence: "published" },
  ruleThird: { value: 0.97, source: "for the third and later ones", confidence: "published" },
} as const satisfies Readonly<Record<string, Sourced<number>>>;

export type AttemptConstants = Readonly<Record<keyof typeof ATTEMPT_CONSTANTS, number>>;

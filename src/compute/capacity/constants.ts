import type { Sourced } from "../../models/movement.ts";

const published = (value: number, source: string): Sourced<number> => ({
  value,
  source,
  confidence: "published",
});
const judgement = (value: number, source: string): Sourced<number> => ({
  value,
  source,
  confidence: "judgement",
});

/** Constants of what an athlete can do, except the best lift. Times in seconds, shares from 0 to 1. */
export const CAPACITY_CONSTANTS = {
  // The shared reserve, seconds of critical-rate work.
  reserveUsual: judgement(
    60,
    "W' over critical power of 18 rowers about 49 s (Cheng et al. 2012); a hard 3-minute workout of this kind is 38 % anaerobic (Rios et al. 2024), which is more",
  ),
  reserveShortest: judgement(25, "lowest ratio of reserve to critical rate found in print"),
  reserveLongest: judgement(90, "highest ratio of reserve to critical rate of cyclists, from memory"),
  reserveSpreadUsual: judgement(0.35, "how far athletes differ, as a relative spread"),
  reserveSpreadFitted: published(
    0.25,
    "error of a reserve fitted to two efforts: it repeats with a CV of 13 % (Galbraith et al. 2014), field against treadmill worse",
  ),
  recoverySlow: judgement(
    0.75,
    "half-times of recovery differ by a third between people (Chorley et al. 2022)",
  ),
  recoveryUsual: judgement(1, "the published time constants"),
  recoveryFast: judgement(
    1.3,
    "elite recover faster than the published time constants (Bartram et al. 2018)",
  ),

  // Load.
  bodyShareLifted: judgement(
    0.5,
    "share of the body mass that goes up and down with a load; work per rep grows with both",
  ),
  loadCycleSlope: judgement(
    0.6,
    "bar speed falls nearly straight with load; a cycle slows with one over (1 - this x share of best lift)",
  ),
  loadShareReference: judgement(
    0.35,
    "share of a notional best that the reference load is, where no best lift is meaningful",
  ),
  loadShareMost: judgement(0.97, "no closer to the best lift than this is told apart"),
  trustRelated: judgement(
    0.6,
    "share of the difference to the level's usual best believed of a lift from a ratio",
  ),
  trustLevel: judgement(0.5, "the same of a lift from level and body mass"),
  liftDoubt: judgement(
    0.3,
    "spreads over a best lift that was not tested up to which a load is still planned as possible",
  ),
  repeatedShare: judgement(0.85, "most that a load repeated in an effort can be of the best lift"),
  unbrokenLeast: judgement(
    2,
    "a muscle does not need to be fully fresh for one more single: a true single was repeated after a minute by 13 of 17 (Matuszak et al. 2003)",
  ),
  wornCost: judgement(1.2, "time per rep grows with (1 + worn mass over body mass) to this power"),
  heightCost: judgement(0.5, "time per rep grows with the height over the usual height to this power"),

  // How sure.
  errorSeveral: published(
    0.03,
    "critical speed and power from several efforts are good to 3 to 6 % (Karsten et al. 2015)",
  ),
  errorOne: judgement(0.045, "one effort fixes one point of the curve; others follow the usual shape"),
  errorRelated: judgement(0.09, "from own results in other movements"),
  errorLevel: judgement(0.13, "spread inside a level around its reference pace"),
  errorApproximate: judgement(0.03, "a result called approximate"),
  errorPerYear: judgement(0.04, "a result loses that much certainty a year"),
  errorUndated: judgement(0.02, "a result without a date"),
  relatedWeight: judgement(0.7, "how far an own result in a style of the same movement carries over"),
  engineWeight: judgement(
    0.5,
    "how far own results in other movements carry over; relative paces in one movement go with relative paces in others, r 0.55 to 0.77 (student symposium 2025)",
  ),

  // Muscles before lungs.
  centralLeast: judgement(
    0.6,
    "share of the time per rep of a movement of muscles alone that heart and lungs account for",
  ),
  centralOfSets: judgement(0.9, "the same of a movement in sets that taxes the lungs as much as any muscle"),
  muscleRecoveryLeast: judgement(0.2, "slowest refill of a muscle in breaks, over the two-phase law"),
  muscleRecoveryMost: judgement(4, "fastest refill of a muscle in breaks, over the two-phase law"),

  // Running.
  riegelExponent: published(1.06, "Riegel 1981: time grows with distance to this power"),
  riegelShortest: published(210, "Riegel 1981: valid from about 3.5 minutes"),
  riegelLongest: published(13800, "Riegel 1981: valid up to about 230 minutes"),
} as const satisfies Readonly<Record<string, Sourced<number>>>;

export type CapacityConstants = Readonly<Record<keyof typeof CAPACITY_CONSTANTS, number>>;

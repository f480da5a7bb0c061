import type { Sourced } from "../../models/movement.ts";

const judgement = (value: number, source: string): Sourced<number> => ({
  value,
  source,
  confidence: "judgement",
});

/** Constants of reading a result against its plan. Shares, seconds and hours. */
export const DEBRIEF_CONSTANTS = {
  pieceNoise: judgement(
    0.03,
    "share of the planned seconds by which a piece of work differs for no reason; CV of three minutes of burpees under 3 % (Tai et al. 2022, 10.3390/ijerph19105928)",
  ),
  clockNoise: judgement(1.2, "seconds by which a clock noted by hand is off"),
  movementUsual: judgement(
    0.03,
    "share by which a movement usually goes slower or faster than planned on a day, beside the day's form",
  ),
  movementFault: judgement(
    0.2,
    "share by which a movement goes slower where something about it was not known",
  ),
  movementDoubt: judgement(
    0.08,
    "share by which a movement of an athlete differs from what was known of it, beside what all movements share",
  ),
  workoutNoise: judgement(
    0.04,
    "share by which the model misses a workout for everybody: the middle error on open fields",
  ),
  blownDoubt: judgement(2, "factor on the noise of a result that blew up and has no clocks between"),
  hastyResults: judgement(2, "results begun too fast from which on it is taken for a habit"),
  breakUsual: judgement(1, "seconds by which a break usually differs from the plan"),
  breakFault: judgement(8, "seconds by which breaks grow when they are not watched"),
  transitionUsual: judgement(1.2, "seconds by which a way between stations usually differs from the plan"),
  transitionFault: judgement(8, "seconds by which ways between stations grow when they are not watched"),
  hasteUsual: judgement(0.008, "share by which the beginning usually is faster or slower than planned"),
  hasteFault: judgement(
    0.1,
    "share by which those who start too fast do; first rounds 20 to 35 % over what can be held are told of by coaches",
  ),
  clearOdds: judgement(
    1.5,
    "natural logarithm of how much better a cause must foresee the clocks than the day alone",
  ),
  clearOddsOfHaste: judgement(
    1,
    "the same for too fast a beginning, the mistake coaches tell of most, so that less is needed to believe it",
  ),
  clearLead: judgement(0.2, "the same, of the best cause over the next one"),
  leastShare: judgement(0.025, "share of the time under which a cause is not worth a sentence"),
  leastSeconds: judgement(4, "seconds under which a cause is not worth a sentence"),
  heavierThanPlanned: judgement(
    0.02,
    "share over the planned load from which a missed lift was chosen too high",
  ),
  earlierThanPlanned: judgement(
    20,
    "seconds before the planned clock from which a missed lift was too early",
  ),
  liftSeconds: judgement(75, "seconds a further attempt would have needed at the end of a window"),
  leastSpread: judgement(0.02, "relative standard deviation no plan is taken to be surer than"),
  retestNoise: {
    value: 0.045,
    source:
      "CV of the same work done twice: 3.9 to 7.3 % of a 12-minute mixed piece (Engel et al. 2019, 10.3389/fphys.2019.00460), under 3 % of burpees (Tai et al. 2022)",
    confidence: "published",
  },
  liftRetestNoise: {
    value: 0.042,
    source:
      "median CV of a one-repetition maximum over 32 studies (Grgic et al. 2020, 10.1186/s40798-020-00260-z)",
    confidence: "published",
  },
  recoverablePacing: judgement(0.7, "share of what too fast a beginning cost that a second try wins back"),
  recoverableBreaks: judgement(0.7, "share of what longer breaks cost that a second try wins back"),
  recoverableTransitions: judgement(0.6, "share of what longer ways cost that a second try wins back"),
  recoverableMovement: judgement(0.15, "share of what a slower movement cost that a second try wins back"),
  recoverableError: judgement(0.35, "relative standard error of what a second try wins back"),
  knowingNew: judgement(
    0.02,
    "gain of work once done, of the level new; unfamiliar time trials improve by about 6 % over three (Foster et al. 2009), those who know the distance hardly",
  ),
  knowingRegular: judgement(0.012, "the same of the level regular"),
  knowingCompetitor: judgement(0.006, "the same of the level competitor"),
  knowingElite: judgement(0.003, "the same of the level elite"),
  knowingError: judgement(0.01, "standard error of the gain of work once done"),
  tiredAtOnce: {
    value: 0.07,
    source:
      "share of the result lost right after hard work: jump 7 (6) % lower after a heavy session, back by 24 to 48 h (Helland et al. 2020, 10.7717/peerj.10044); no study of a repeated qualifier was found",
    confidence: "judgement",
  },
  tiredHours: judgement(
    20,
    "hours in which what a first try cost falls to 37 %: 30 % left after a day, 9 % after two",
  ),
  tiredWhenBlown: judgement(1.4, "factor on what a first try cost, where it blew up"),
  tiredWhenHard: judgement(1.15, "the same, where it felt hard"),
  soonest: judgement(20, "hours after a try before which none is advised again: a night"),
  mostHours: judgement(72, "hours after which waiting longer brings nothing"),
  uploadHours: judgement(3, "hours before the deadline a second try has to begin, for film and entry"),
  priceOfTry: judgement(
    0.02,
    "share of a result that a further try costs elsewhere: a day's training and the start of what comes next",
  ),
  clearChance: judgement(0.8, "chance of a better result from which a second try is advised"),
  likelyChance: judgement(0.62, "chance of a better result under which it is not"),
} as const satisfies Readonly<Record<string, Sourced<number>>>;

export type DebriefConstants = Readonly<Record<keyof typeof DEBRIEF_CONSTANTS, number>>;

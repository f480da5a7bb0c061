import type { Sourced } from "../../models/movement.ts";

/** Constants of the best lift today. Shares are of the load, days are days, spreads are one standard deviation. */
export const BEST_LIFT_CONSTANTS = {
  repErrorPerRep: {
    value: 0.0065,
    source:
      "published error of a single from a rep set, per rep beyond the first: 2.6 % at 5 reps (Reynolds, Gordon and Robergs 2006, bench, abstract); that it grows evenly is judgement",
    confidence: "published",
  },
  reserveError: {
    value: 1,
    source: "reps by which reps left in reserve are misjudged",
    confidence: "judgement",
  },
  approximateError: {
    value: 0.025,
    source: "share of the load by which one called approximate may be off",
    confidence: "judgement",
  },
  snatchSpreadOneResult: {
    value: 0.088,
    source: "strength on the day over the best known, one earlier result, fitted to public lift results",
    confidence: "measured",
  },
  snatchSpreadFewResults: { value: 0.067, source: "the same, two or three results", confidence: "measured" },
  snatchSpreadSomeResults: { value: 0.06, source: "the same, four to seven results", confidence: "measured" },
  snatchSpreadManyResults: { value: 0.058, source: "the same, eight or more", confidence: "measured" },
  slowSpreadOneResult: {
    value: 0.079,
    source:
      "as for the snatch, fitted to the clean and jerk; for other lifts without an overhead catch by judgement",
    confidence: "measured",
  },
  slowSpreadFewResults: { value: 0.062, source: "the same, two or three results", confidence: "measured" },
  slowSpreadSomeResults: { value: 0.056, source: "the same, four to seven results", confidence: "measured" },
  slowSpreadManyResults: { value: 0.054, source: "the same, eight or more", confidence: "measured" },
  freshDays: {
    value: 90,
    source: "days for which a result counts in full",
    confidence: "judgement",
  },
  lossPerYear: {
    value: 0.018,
    source:
      "share lost per year of age of the result: lifters of public results stood 1.5 % lower over a best of 181 to 730 days ago than over one within 180",
    confidence: "measured",
  },
  mostLoss: { value: 0.1, source: "most that age alone takes off a result", confidence: "judgement" },
  driftPerYear: {
    value: 0.025,
    source: "spread added per year of age; turns 5.3 % into the 5.8 % seen in the same lifters",
    confidence: "measured",
  },
  undatedDays: { value: 365, source: "age of a result without a date", confidence: "judgement" },
  countedDays: {
    value: 730,
    source: "days within which earlier results are counted as known",
    confidence: "measured",
  },
  ratioErrorMeasured: {
    value: 0.05,
    source: "error of a measured ratio between lifts",
    confidence: "judgement",
  },
  ratioErrorPublished: { value: 0.06, source: "error of a published ratio", confidence: "judgement" },
  ratioErrorJudgement: { value: 0.08, source: "error of a ratio by judgement", confidence: "judgement" },
  ratioErrorOfStyles: {
    value: 0.03,
    source:
      "error of the ratio between two lifts that are nearly one: styles of a lift differ little between people",
    confidence: "judgement",
  },
  ratioErrorGrowth: {
    value: 0.3,
    source: "growth of that error with how far the ratio is from 1, up to the error by its confidence",
    confidence: "judgement",
  },
  levelError: {
    value: 0.2,
    source: "error of a lift guessed from level and body mass",
    confidence: "judgement",
  },
  bodyMassError: { value: 0.15, source: "error of a body mass that is not stated", confidence: "judgement" },
  bodyMassMale: { value: 80, source: "kilograms, where no body mass is stated", confidence: "judgement" },
  bodyMassFemale: { value: 65, source: "kilograms, where no body mass is stated", confidence: "judgement" },
  femaleShareOfTypical: {
    value: 0.8,
    source: "typical lifts per body mass are written for men; women's share of them",
    confidence: "judgement",
  },
} as const satisfies Readonly<Record<string, Sourced<number>>>;

import {
  CONDITIONS,
  EQUIPMENT,
  HABITS,
  JOINTS,
  LEVELS,
  MOVEMENT_KINDS,
  MUSCLES,
  RECOVERIES,
  SEXES,
  STRESSES,
} from "./vocabulary.ts";

/**
 * What a condition can ask about. Numbers come from the athlete, the workout or the plan; a condition over a number
 * that is not known does not hold.
 */
export const METRICS = [
  "age",
  "body-mass",
  "height",
  "load-share", // load of the movement at hand as a share of the athlete's best lift of it
  "ratio-to-parent", // best of this style over best of the general movement
  "unbroken", // best unbroken set of the movement at hand, in its units
  "set-share", // amount of one visit as a share of the best unbroken set
  "amount", // amount of one visit
  "total-amount", // amount of the movement in the whole workout
  "usual-amount", // amount the athlete is used to in one session, where known
  "times-usual", // total amount over usual amount, where known
  "seconds-per-unit", // planned pace of the movement at hand
  "pace-share", // planned seconds a unit of the movement at hand over the steady pace of a regular
  "planned-set", // largest set planned of the movement at hand
  "visits", // times the part at hand comes to the movement at hand
  "part-minutes", // planned length of the part at hand
  "workout-minutes", // expected length of the workout
  "work-rest-ratio",
  "window-minutes", // time for the lift
  "hours-to-next", // hours to the next start of this athlete
  "hours-since-start", // hours since the start of this athlete before, on the same day
  "hours-to-deadline",
  "start-hour", // local hour of the start, 18.5 for half past six in the evening
  "wbgt", // wet bulb globe temperature, degrees Celsius
  "starts-today",
  "warm-up-minutes", // time available for warming up
  "training-hours", // hours of training in a usual week, the level's where the athlete does not say
  "days-unaccustomed", // days since the movement was last logged, where known
] as const;
export type Metric = (typeof METRICS)[number];

/** How the value of a number is written: shares in per cent, masses and lengths with their unit, the rest bare. */
export const METRIC_UNITS: Readonly<Partial<Record<Metric, "share" | "mass" | "length">>> = {
  "body-mass": "mass",
  height: "length",
  "load-share": "share",
  "ratio-to-parent": "share",
  "set-share": "share",
  "pace-share": "share",
};

/** Facts that hold or do not. Each carries the word it speaks about. */
export const FACTS = [
  "movement", // the workout holds this movement
  "movement-kind",
  "taxes", // the workout (or the movement at hand) taxes this muscle by 0.5 or more
  "stress", // the workout holds this stress
  "limit-joint", // the athlete states a limit at this joint
  "limit-condition", // the athlete states this condition
  "limit-stress", // a stated limit forbids this stress
  "cannot", // the athlete cannot do this movement yet
  "habit",
  "stiff", // the athlete says this joint is stiff
  "level",
  "recovery",
  "prefers", // the athlete prefers this option
  "format", // for-time, amrap, on-the-clock, max-load
  "ending", // how the workout is expected to end for this athlete
  "has-lift", // the workout has a part lifted for load: "yes" or "no"
  "planned", // how the movement at hand is planned: one at a time by nature, unbroken, in sets, in singles
  "place", // where the part at hand holds the movement at hand: "first", "last", or both
  "needs", // the workout (or the movement at hand) needs this equipment
  "lifted", // the movement at hand is lifted for load: "yes" or "no"
  "needs-catching", // a missed lift of it lands on the lifter unless caught: "yes" or "no"
  "set-known", // the best unbroken set at hand comes from the athlete: "yes" or "no"
  "best-guessed", // the best lift at hand is only that of the level: "yes" or "no"
  "best-known", // the best lift at hand comes from the athlete's own results: "yes" or "no"
  "retry", // planned, open or no
  "gym-has", // the gym has this equipment
  "sharing", // the equipment is shared with others while warming up: "yes" or "no"
  "competition", // the workout belongs to a competition: "yes" or "no"
  "may-come", // this movement may still come in the competition
  "acclimatised", // to the heat stated: "yes" or "no"
  "sex",
  "sharp-pain", // self-check answers: "yes" or "no"
  "self-check", // "good", "middling" or "bad"
  "limiter", // the movement at hand limits the athlete in this workout: "yes" or "no"
] as const;
export type Fact = (typeof FACTS)[number];

const YES_OR_NO = ["yes", "no"] as const;

/** The words a fact can speak about; a fact that is not here takes a name from elsewhere: a movement, an option, a piece of equipment. */
export const FACT_WORDS: Readonly<Partial<Record<Fact, readonly string[]>>> = {
  "movement-kind": MOVEMENT_KINDS,
  taxes: MUSCLES,
  stress: STRESSES,
  "limit-joint": JOINTS,
  "limit-condition": CONDITIONS,
  "limit-stress": STRESSES,
  habit: HABITS,
  stiff: JOINTS,
  place: ["first", "last"],
  planned: ["one", "unbroken", "sets", "singles"],
  needs: EQUIPMENT,
  level: LEVELS,
  recovery: RECOVERIES,
  format: ["for-time", "amrap", "on-the-clock", "max-load"],
  ending: ["finishes", "stopped-by-cap", "fills-the-time", "eliminated"],
  "has-lift": YES_OR_NO,
  lifted: YES_OR_NO,
  "needs-catching": YES_OR_NO,
  "best-guessed": YES_OR_NO,
  "best-known": YES_OR_NO,
  "set-known": YES_OR_NO,
  retry: ["planned", "open", "no"],
  sharing: YES_OR_NO,
  competition: YES_OR_NO,
  acclimatised: YES_OR_NO,
  sex: SEXES,
  "sharp-pain": YES_OR_NO,
  "self-check": ["good", "middling", "bad"],
  limiter: YES_OR_NO,
};

export const COMPARISONS = ["at-least", "over", "at-most", "under"] as const;
export type Comparison = (typeof COMPARISONS)[number];

export type NumberCondition = {
  readonly kind: "number";
  readonly metric: Metric;
  readonly is: Comparison;
  /** Shares from 0 to 1, masses in kilograms, lengths in metres, the rest as the metric says. */
  readonly value: number;
};

type FactCondition = {
  readonly kind: "fact";
  readonly fact: Fact;
  readonly word: string;
  readonly holds: boolean;
};

export type SingleCondition = NumberCondition | FactCondition;

/** One condition, or several of which one must hold. Conditions in a list must all hold. */
export type Condition = SingleCondition | { readonly kind: "any"; readonly of: readonly SingleCondition[] };

/** The single conditions inside a condition, for checks of the names they use. */
export const singlesOf = (condition: Condition): readonly SingleCondition[] =>
  condition.kind === "any" ? condition.of : [condition];

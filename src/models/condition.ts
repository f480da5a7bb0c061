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
  "seconds-per-unit", // planned pace of the movement at hand
  "workout-minutes", // expected length of the workout
  "work-rest-ratio",
  "window-minutes", // time for the lift
  "hours-to-next", // hours to the next start of this athlete
  "hours-to-deadline",
  "wbgt", // wet bulb globe temperature, degrees Celsius
  "starts-today",
  "warm-up-minutes", // time available for warming up
  "days-unaccustomed", // days since the movement was last logged, where known
] as const;
export type Metric = (typeof METRICS)[number];

/** Facts that hold or do not. Each carries the word it speaks about. */
export const FACTS = [
  "movement", // the workout holds this movement
  "movement-kind",
  "taxes", // the workout (or the movement at hand) taxes this muscle by 0.5 or more
  "stress", // the workout holds this stress
  "limit-joint", // the athlete states a limit at this joint
  "limit-condition", // the athlete states this condition
  "limit-stress", // a stated limit forbids this stress
  "habit",
  "level",
  "recovery",
  "prefers", // the athlete prefers this option
  "format", // for-time, amrap, on-the-clock, max-load
  "has-lift", // the workout has a part lifted for load: "yes" or "no"
  "retry", // planned, open or no
  "gym-has", // the gym has this equipment
  "sex",
  "sharp-pain", // self-check answers: "yes" or "no"
  "self-check", // "good", "middling" or "bad"
  "limiter", // this movement limits the athlete in this workout
] as const;
export type Fact = (typeof FACTS)[number];

export type Condition =
  | {
      readonly kind: "number";
      readonly metric: Metric;
      readonly is: "at-least" | "over" | "at-most" | "under";
      readonly value: number;
    }
  | { readonly kind: "fact"; readonly fact: Fact; readonly word: string; readonly holds: boolean };

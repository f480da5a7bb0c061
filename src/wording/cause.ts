import type { Fact, Metric } from "../models/condition.ts";
import type { Plan } from "../models/plan/plan.ts";
import { CONDITIONS } from "../models/vocabulary.ts";
import { sayCondition } from "./stated-condition.ts";

type Cause = NonNullable<Plan["cautions"][number]["because"]>[number];

const IN_THIS_WORKOUT = " in this workout";

/** Clauses on what brought something up, without numbers: those stand in the plan, rounded once. `#` is the movement. */
const METRIC_CLAUSES: Readonly<Partial<Record<Metric, string>>> = {
  age: "your age",
  wbgt: "the heat expected at your start",
  "total-amount": "the amount of # in this workout",
  "times-usual": "more # than you have lately done",
  "days-unaccustomed": "a long time since you last did #",
  "load-share": "a load near your best for #",
  "workout-minutes": "the length of this workout",
  "starts-today": "your starts on this day",
  "hours-to-next": "your next start soon after",
  "hours-since-start": "your start not long before",
};

const FACT_CLAUSES: Readonly<Partial<Record<Fact, (word: string) => string>>> = {
  "limit-joint": (joint) => `the limit you stated at your ${joint}`,
  "limit-condition": (condition) => sayStated(condition),
  "has-lift": () => "a lift for load",
  lifted: () => "a lift for load",
  "needs-catching": () => "a lift that lands on you",
  ending: () => "a cap that comes before the work is done",
  stress: () => `#${IN_THIS_WORKOUT}`,
  taxes: () => `#${IN_THIS_WORKOUT}`,
};

/** Clauses that tell more come first. */
const ORDER: readonly (Metric | Fact)[] = [
  "limit-condition",
  "limit-joint",
  "wbgt",
  "age",
  "times-usual",
  "days-unaccustomed",
  "total-amount",
  "load-share",
  "lifted",
  "has-lift",
  "needs-catching",
  "ending",
  "starts-today",
  "workout-minutes",
  "stress",
  "taxes",
];

const MOST_CLAUSES = 2;

/**
 * What brought something up, as a fragment: "the limit you stated at your shoulder and pull-ups in this workout". Empty
 * when nothing in particular did.
 */
export function sayCause(causes: readonly Cause[] = []): string {
  const clauses = [...causes]
    .sort((one, other) => rankOf(one) - rankOf(other))
    .flatMap((cause) => clauseOf(cause) ?? []);
  const told = [...new Set(clauses)].filter(isNews).slice(0, MOST_CLAUSES);
  return told.join(" and ");
}

/** That a movement is in the workout goes without saying once another clause has named it. */
const isNews = (clause: string, at: number, clauses: readonly string[]): boolean => {
  const named = clause.replace(IN_THIS_WORKOUT, "");
  return named === clause || !clauses.slice(0, at).some((before) => before.includes(named));
};

function clauseOf({ of, word = "", movement }: Cause): string | undefined {
  const clause = METRIC_CLAUSES[of as Metric] ?? FACT_CLAUSES[of as Fact]?.(word);
  if (clause?.includes("#") !== true) return clause;
  return movement === undefined ? undefined : clause.replace("#", movement);
}

const rankOf = ({ of }: Cause): number => {
  const rank = ORDER.indexOf(of);
  return rank === -1 ? ORDER.length : rank;
};

function sayStated(word: string): string {
  const condition = CONDITIONS.find((each) => each === word);
  return condition === undefined ? "what you stated" : `what you stated: ${sayCondition(condition)}`;
}

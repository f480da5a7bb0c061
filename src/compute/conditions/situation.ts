import type { Fact, Metric } from "../../models/condition.ts";

/**
 * Everything conditions can ask about, for one athlete and one workout, or for one movement of it. A number that is
 * not known is absent. A fact lists the words it holds for: an empty list is known to hold for none, an absent one
 * is not known.
 */
export type Situation = {
  /** In the unit the metric's name says; shares from 0 to 1, masses in kilograms, lengths in metres. */
  readonly numbers: Readonly<Partial<Record<Metric, number>>>;
  readonly facts: Readonly<Partial<Record<Fact, readonly string[]>>>;
};

/** The same situation with some numbers and facts put in or replaced. */
export const withMore = (situation: Situation, more: Partial<Situation>): Situation => ({
  numbers: { ...situation.numbers, ...more.numbers },
  facts: { ...situation.facts, ...more.facts },
});

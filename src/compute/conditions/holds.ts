import type { Comparison, Condition, NumberCondition, SingleCondition } from "../../models/condition.ts";
import type { Situation } from "./situation.ts";

/** What became of one condition: whether it holds, and the number or word it was decided on. */
export type Verdict = {
  readonly condition: SingleCondition;
  readonly holds: boolean;
  /** False where the situation does not know what is asked; such a condition does not hold, nor does its contrary. */
  readonly known: boolean;
  readonly value?: number | string;
};

/** Shares come out of divisions; a hair's breadth is no difference. */
const TOLERANCE = 1e-9;

/**
 * Whether a condition holds in a situation. What is not known holds neither way. Of several joined by `or`, the
 * verdict is that of the first that holds, else of the first that is known, else of the first.
 *
 * @example holds({ kind: "number", metric: "age", is: "under", value: 18 }, { numbers: { age: 16 }, facts: {} }).holds // => true
 */
export function holds(condition: Condition, situation: Situation): Verdict {
  if (condition.kind !== "any") return holdsSingle(condition, situation);
  const verdicts = condition.of.map((single) => holdsSingle(single, situation));
  const telling = verdicts.find((each) => each.holds) ?? verdicts.find((each) => each.known) ?? verdicts[0];
  if (telling === undefined) throw new RangeError("an `or` needs at least one condition");
  return telling;
}

/** All conditions of a list together, with the verdict on each; an empty list holds. */
export function allHold(
  conditions: readonly Condition[],
  situation: Situation,
): { readonly holds: boolean; readonly verdicts: readonly Verdict[] } {
  const verdicts = conditions.map((condition) => holds(condition, situation));
  return { holds: verdicts.every((verdict) => verdict.holds), verdicts };
}

function holdsSingle(condition: SingleCondition, situation: Situation): Verdict {
  if (condition.kind === "number") return holdsNumber(condition, situation.numbers[condition.metric]);
  const words = situation.facts[condition.fact];
  if (words === undefined) return { condition, holds: false, known: false };
  const found = words.some((word) => sameName(word, condition.word));
  return { condition, holds: found === condition.holds, known: true, value: condition.word };
}

function holdsNumber(condition: NumberCondition, value: number | undefined): Verdict {
  if (value === undefined) return { condition, holds: false, known: false };
  return { condition, holds: compare(value, condition.is, condition.value), known: true, value };
}

function compare(value: number, is: Comparison, threshold: number): boolean {
  switch (is) {
    case "at-least":
      return value >= threshold - TOLERANCE;
    case "over":
      return value > threshold + TOLERANCE;
    case "at-most":
      return value <= threshold + TOLERANCE;
    case "under":
      return value < threshold - TOLERANCE;
  }
}

/** Names compare blind to case, and to whether their words are joined by spaces or hyphens. */
const sameName = (one: string, other: string): boolean =>
  one === other || comparable(one) === comparable(other);

const comparable = (name: string): string => name.trim().toLowerCase().replaceAll(/\s+/g, "-");

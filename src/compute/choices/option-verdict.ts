import type { Comparison, Fact } from "../../models/condition.ts";
import type { MovementOption } from "../../models/movement.ts";
import type { Plan } from "../../models/plan/plan.ts";
import { allHold, type Verdict } from "../conditions/holds.ts";
import type { Situation } from "../conditions/situation.ts";

export type Reason = Plan["choices"][number]["because"][number];

/** One option of a choice with what became of its conditions. */
export type OptionVerdict = {
  readonly option: MovementOption;
  readonly holds: boolean;
  readonly verdicts: readonly Verdict[];
  /** Verdicts on anything but stated limits, which most athletes do not state. */
  readonly telling: readonly Verdict[];
  readonly onLimits: readonly Verdict[];
};

const LIMITS: readonly Fact[] = ["limit-joint", "limit-condition", "limit-stress"];

/** Weighs the conditions of one option in a situation. */
export function weighOption(option: MovementOption, situation: Situation): OptionVerdict {
  const { holds, verdicts } = allHold(option.when, situation);
  return {
    option,
    holds,
    verdicts,
    telling: verdicts.filter((verdict) => !speaksOfLimit(verdict)),
    onLimits: verdicts.filter(speaksOfLimit),
  };
}

/** The same situation for somebody who states no limit. */
export const withoutLimits = (situation: Situation): Situation => ({
  ...situation,
  facts: { ...situation.facts, "limit-joint": [], "limit-condition": [], "limit-stress": [] },
});

const speaksOfLimit = ({ condition }: Verdict): boolean =>
  condition.kind === "fact" && LIMITS.includes(condition.fact);

/** Whether a number is so near its threshold that the next test may turn it: within a share of the threshold. */
export const isClose = ({ condition, value }: Verdict, share: number): boolean =>
  condition.kind === "number" &&
  typeof value === "number" &&
  Math.abs(value - condition.value) <= share * Math.abs(condition.value);

const CONTRARY: Readonly<Record<Comparison, Comparison>> = {
  "at-least": "under",
  under: "at-least",
  over: "at-most",
  "at-most": "over",
};

/** A verdict as the plan shows it: what was asked, the athlete's own value, and on which side of which threshold it lies. */
export function reasonFrom({ condition, holds, value }: Verdict): Reason {
  if (condition.kind === "number") {
    return {
      what: condition.metric,
      ...(value !== undefined && { value }),
      is: holds ? condition.is : CONTRARY[condition.is],
      threshold: condition.value,
    };
  }
  const found = holds === condition.holds;
  return { what: condition.fact, value: condition.word, is: found ? "holds" : "does-not-hold" };
}

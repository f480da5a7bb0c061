import type { Limit } from "../../models/athlete.ts";
import { sayCondition } from "./say-condition.ts";
import type { Reason } from "./withhold.ts";

/** A stated limit as the reason why something is withheld. The athlete's own words are shown elsewhere and not used here. */
export function sayLimit(limit: Limit): Reason {
  const where = limit.joint === undefined ? undefined : `your ${limit.joint}`;
  const state = limit.condition === undefined ? undefined : sayCondition(limit.condition);
  const named = where ?? state;
  return {
    why: named === undefined ? "You asked to keep away from it." : `You stated a limit: ${named}.`,
    ask:
      where === undefined
        ? "Ask your coach or a licensed professional before you do it."
        : `Ask your coach, or the licensed professional who knows ${where}, before you do it.`,
  };
}

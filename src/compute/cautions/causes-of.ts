import type { Movement } from "../../models/movement.ts";
import type { Plan } from "../../models/plan/plan.ts";
import type { Verdict } from "../conditions/holds.ts";

/** One condition that held: what it asked about, and the word or the movement it asked of. */
export type Cause = NonNullable<Plan["cautions"][number]["because"]>[number];

/**
 * What brought an entry up: every condition that held, in the order written. That something is not so brings nothing up.
 *
 * @param movement the one the conditions were asked of, where they were asked of one
 */
export const causesOf = (verdicts: readonly Verdict[], movement?: Movement): Cause[] =>
  verdicts.flatMap(({ condition }): readonly Cause[] => {
    const of = movement === undefined ? {} : { movement: movement.plural };
    if (condition.kind === "number") return [{ of: condition.metric, ...of }];
    return condition.holds ? [{ of: condition.fact, word: condition.word, ...of }] : [];
  });

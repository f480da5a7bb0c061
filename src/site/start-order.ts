import type { Plan } from "../models/plan/plan.ts";

/** Plans in the order in which the athletes start; those without a start come last, by name. */
export const inStartOrder = <T extends { readonly plan: Pick<Plan, "athlete" | "start"> }>(
  all: readonly T[],
): readonly T[] =>
  all.toSorted(({ plan: one }, { plan: other }) => {
    const [first, second] = [one.start?.instant ?? "9", other.start?.instant ?? "9"];
    if (first !== second) return first < second ? -1 : 1;
    return one.athlete.name < other.athlete.name ? -1 : 1;
  });

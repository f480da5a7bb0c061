import type { PartPlan, PlannedPacing } from "../../models/plan/plan.ts";

/** A planned part as results and clocks are set beside it. */
export const laidOf = (
  { format }: Pick<PartPlan, "format">,
  pacing: PlannedPacing,
): PlannedPacing & { readonly startsByClock: boolean } => ({
  ...pacing,
  startsByClock: format === "on-the-clock",
});

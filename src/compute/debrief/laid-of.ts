import type { PartPlan, PlannedPacing } from "../../models/plan/plan.ts";
import type { Laid } from "./pieces.ts";

/** A planned part as clocks are set beside it. */
export const laidOf = ({ format }: Pick<PartPlan, "format">, pacing: PlannedPacing): Laid => ({
  ...pacing,
  startsByClock: format === "on-the-clock",
});

import type { PartPlan } from "../../models/plan/plan.ts";
import type { Part, Workout } from "../../models/workout.ts";
import type { PlanContext } from "./plan-context.ts";
import { planPart } from "./plan-part.ts";
import type { Before, PlannedPart } from "./planned-part.ts";

/**
 * Plans the parts of a workout in order. A part with a clock of its own begins there; one that follows another begins
 * when that is planned to end, after the rest between, and is planned for the body the one before leaves.
 */
export function planParts(workout: Workout, context: PlanContext): readonly PlannedPart[] {
  const planned: PlannedPart[] = [];
  for (const part of workout.parts) {
    const { start, before } = startOf(part, planned);
    planned.push(planPart(workout, part, context, start, before));
  }
  return planned;
}

function startOf(
  part: Part,
  planned: readonly PlannedPart[],
): { readonly start: PartPlan["start"]; readonly before?: Before } {
  const { start } = part;
  if (start.kind === "clock") {
    const last = planned.at(-1);
    const begins = { kind: "clock", clock: start.at } as const;
    return last === undefined
      ? { start: begins }
      : { start: begins, before: { part: last, rest: Math.max(0, start.at - last.ends.clock) } };
  }
  const before = planned.find(({ plan }) => plan.name === start.part);
  if (before === undefined)
    throw new RangeError(`part ${part.name} follows part ${start.part}, which comes later`);
  return {
    start: {
      kind: "after",
      clock: before.ends.clock + start.rest,
      after: start.part,
      ...(start.restIs === "at-least" ? { restAtLeast: start.rest } : { rest: start.rest }),
    },
    before: { part: before, rest: start.rest },
  };
}

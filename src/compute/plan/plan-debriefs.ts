import { Temporal } from "temporal-polyfill";
import type { Athlete, LoggedResult } from "../../models/athlete.ts";
import type { Debrief } from "../../models/plan/debrief.ts";
import type { PartPlan } from "../../models/plan/plan.ts";
import type { Workout } from "../../models/workout.ts";
import { debriefPart } from "../debrief/debrief-part.ts";
import type { PlanContext } from "./plan-context.ts";
import type { PlannedPart } from "./plan-part.ts";
import { startInstant } from "./start-instant.ts";

/**
 * The athlete's results of this workout, each held against its part: of several tries the last one logged. None where the
 * workout has not been done.
 */
export function planDebriefs(
  { results }: Athlete,
  workout: Workout,
  planned: readonly PlannedPart[],
  parts: readonly PartPlan[],
  context: PlanContext,
): readonly Debrief[] {
  return parts.flatMap((plan, at) => {
    const result = results.findLast((one) => one.workout === workout.id && one.part === plan.name);
    if (result === undefined) return [];
    const hasty = planned[at]?.paced?.hasty;
    const hoursLeft = hoursToDeadline(result, context);
    const { competition, withholding, athlete, overrides } = context;
    const debrief = debriefPart({
      plan,
      result,
      level: athlete.level,
      ...(hasty !== undefined && { hasty }),
      counts: competition?.counts ?? "best",
      ...(hoursLeft !== undefined && { hoursLeft }),
      withheld: withholding.noWorkout || (plan.lifting !== undefined && withholding.noMaxLift),
      overrides,
    });
    return debrief === undefined ? [] : [debrief];
  });
}

/** Noon, for a result whose hour is not known. */
const MIDDAY = "T12:00";

/** From the start of a try to the close of the competition; from noon of its day, where its start is not the planned one. */
function hoursToDeadline({ date }: LoggedResult, { competition, start }: PlanContext): number | undefined {
  if (competition === undefined || date === undefined) return undefined;
  const closes = startInstant(competition.closes, competition.zone)?.instant;
  const began = start?.local.startsWith(date)
    ? start.instant
    : startInstant(`${date}${MIDDAY}`, competition.zone)?.instant;
  if (closes === undefined || began === undefined) return undefined;
  return Temporal.Instant.from(began).until(closes).total("hours");
}

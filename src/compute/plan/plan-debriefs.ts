import { Temporal } from "temporal-polyfill";
import type { Athlete, LoggedResult } from "../../models/athlete.ts";
import type { Debrief } from "../../models/plan/debrief.ts";
import type { PartPlan } from "../../models/plan/plan.ts";
import type { Workout } from "../../models/workout.ts";
import { DEBRIEF_CONSTANTS, type DebriefConstants } from "../debrief/constants.ts";
import { debriefPart } from "../debrief/debrief-part.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import type { PlanContext } from "./plan-context.ts";
import type { PlannedPart } from "./planned-part.ts";
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
    const hours = hoursOf(result, context);
    const { competition, withholding, athlete, overrides } = context;
    const debrief = debriefPart({
      plan,
      result,
      level: athlete.level,
      ...(hasty !== undefined && { hasty }),
      counts: competition?.counts ?? "best",
      ...(hours !== undefined && { hoursLeft: hours.left }),
      withheld: withholding.noWorkout || (plan.lifting !== undefined && withholding.noMaxLift),
      overrides,
    });
    const constants = withOverrides(DEBRIEF_CONSTANTS, overrides);
    return debrief === undefined ? [] : [withMoments(debrief, hours, constants)];
  });
}

/** Noon, for a result whose hour is not known. */
const MIDDAY = "T12:00";

/** When the first try began and when the competition closes: from noon of its day, where its start is not the planned one. */
function hoursOf({ date }: LoggedResult, { competition, start }: PlanContext): Hours | undefined {
  if (competition === undefined || date === undefined) return undefined;
  const closes = startInstant(competition.closes, competition.zone)?.instant;
  const began = start?.local.startsWith(date)
    ? start.instant
    : startInstant(`${date}${MIDDAY}`, competition.zone)?.instant;
  if (closes === undefined || began === undefined) return undefined;
  const from = Temporal.Instant.from(began);
  return {
    began: from.toZonedDateTimeISO(competition.zone),
    closes: Temporal.PlainDateTime.from(competition.closes),
    left: from.until(closes).total("hours"),
  };
}

/** Hours after a try as moments of the place: the day of the best hour, an early morning counted to the day before; and the latest start. */
function withMoments(
  debrief: Debrief,
  hours: Hours | undefined,
  { firstHour, uploadHours }: Pick<DebriefConstants, "firstHour" | "uploadHours">,
): Debrief {
  const { secondTry } = debrief;
  if (hours === undefined || secondTry.bestHours === undefined) return debrief;
  const at = hours.began.add({ minutes: Math.round(secondTry.bestHours * 60) });
  const best = (at.hour < firstHour ? at.subtract({ days: 1 }) : at).toPlainDate().toString();
  const latest = hours.closes.subtract({ minutes: Math.round(uploadHours * 60) });
  return {
    ...debrief,
    secondTry: { ...secondTry, best, latest: latest.toString({ smallestUnit: "minute" }) },
  };
}

/** Limits of a second try in time. */
type Hours = {
  readonly began: Temporal.ZonedDateTime;
  readonly closes: Temporal.PlainDateTime;
  readonly left: number;
};

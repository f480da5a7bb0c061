import type { Athlete, IsoDate } from "../../models/athlete.ts";
import type { Data } from "../../models/data.ts";
import type { Debrief } from "../../models/plan/debrief.ts";
import type { PartPlan } from "../../models/plan/plan.ts";
import type { Workout } from "../../models/workout.ts";
import { secondPlan } from "../debrief/second-plan.ts";
import { learnedFrom } from "./learned-from.ts";
import type { PlanContext } from "./plan-context.ts";
import { planParts } from "./plan-parts.ts";
import { settle } from "./settle.ts";

/** Whose plan of what, from which data and on which day. */
type Planned = {
  readonly athlete: Athlete;
  readonly workout: Workout;
  readonly data: Data;
  readonly date: IsoDate;
  /** What the plan of the first try rests on beside the athlete: what was seen of others, what the coach set. That of the second does as well. */
  readonly beside: Pick<PlanContext, "seen" | "word">;
};

/**
 * Debriefs with the plan of the second try beside that of the first, where a second try is worth a thought: made with all that
 * the results taught, those of this workout too, and like the first in everything else.
 */
export function planSecondTries(
  debriefs: readonly Debrief[],
  parts: readonly PartPlan[],
  { athlete, workout, data, date, beside }: Planned,
): readonly Debrief[] {
  if (debriefs.every(({ secondTry }) => secondTry.answer === "leave-it")) return debriefs;
  const learned = learnedFrom(athlete, workout, data, date, beside.seen ?? []);
  const { context } = settle(learned.athlete, workout, data, date, learned.paces);
  const again = planParts(workout, { ...context, ...beside }).map(({ plan }) => plan);
  return debriefs.map((debrief) => {
    const before = parts.find(({ name }) => name === debrief.part);
    const now = again.find(({ name }) => name === debrief.part);
    if (debrief.secondTry.answer === "leave-it" || !before || !now) return debrief;
    const changes = secondPlan(before, now);
    return changes === undefined ? debrief : { ...debrief, secondPlan: changes };
  });
}

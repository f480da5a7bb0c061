import type { Athlete, IsoDate } from "../../models/athlete.ts";
import type { Data } from "../../models/data.ts";
import type { Debrief } from "../../models/plan/debrief.ts";
import type { PartPlan } from "../../models/plan/plan.ts";
import type { Workout } from "../../models/workout.ts";
import { secondPlan } from "../debrief/second-plan.ts";
import { learnedFrom } from "./learned-from.ts";
import { planParts } from "./plan-parts.ts";
import { settle } from "./settle.ts";

/** Whose plan of what, from which data and on which day. */
type Planned = {
  readonly athlete: Athlete;
  readonly workout: Workout;
  readonly data: Data;
  readonly date: IsoDate;
};

/**
 * Debriefs with the plan of the second try beside that of the first, where a second try is worth a thought: made with all that
 * the results taught, those of this workout too.
 */
export function planSecondTries(
  debriefs: readonly Debrief[],
  parts: readonly PartPlan[],
  { athlete, workout, data, date }: Planned,
): readonly Debrief[] {
  if (debriefs.every(({ secondTry }) => secondTry.answer === "leave-it")) return debriefs;
  const learned = learnedFrom(athlete, workout, data, date, true);
  const { context } = settle(learned.athlete, workout, data, date, learned.paces);
  const again = planParts(workout, context).map(({ plan }) => plan);
  return debriefs.map((debrief) => {
    const before = parts.find(({ name }) => name === debrief.part);
    const now = again.find(({ name }) => name === debrief.part);
    if (debrief.secondTry.answer === "leave-it" || !before || !now) return debrief;
    const changes = secondPlan(before, now);
    return changes === undefined ? debrief : { ...debrief, secondPlan: changes };
  });
}

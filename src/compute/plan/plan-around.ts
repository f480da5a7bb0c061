import type { PartPlan, Plan } from "../../models/plan/plan.ts";
import type { Workout } from "../../models/workout.ts";
import { cautionsOf } from "../cautions/cautions.ts";
import { chooseOptions } from "../choices/choose.ts";
import { type AtMovement, atMovement } from "../conditions/movement-situation.ts";
import { type SituationInput, situationOf } from "../conditions/situation-of.ts";
import { usualAmounts } from "../conditions/usual-amounts.ts";
import { planWarmUp } from "../warm-up/plan-warm-up.ts";
import type { PlanContext } from "./plan-context.ts";

/** Everything of a plan around the paced parts. */
export type Around = Pick<
  Plan,
  "warmUp" | "choices" | "standards" | "setUp" | "after" | "cautions" | "withheld"
>;

/**
 * Warm-up, choices, standards, set-up, recovery and cautions, from the situation the paced parts make. Where the whole
 * workout is withheld, only cautions and what is withheld remain.
 */
export function planAround(workout: Workout, context: PlanContext, parts: readonly PartPlan[]): Around {
  const { athlete, library, gym, bar, withholding, overrides } = context;
  const situation = situationOf(situationInput(workout, context, parts));
  const movements = movementsAt(context, parts, situation);
  const cautions = cautionsOf(library.cautions, situation, movements);
  if (withholding.noWorkout) {
    return { choices: [], standards: [], setUp: [], cautions, withheld: withholding.withheld };
  }
  const chosen = chooseOptions({ movements, withholding, prefers: athlete.prefers, overrides });
  return {
    warmUp: planWarmUp({
      athlete,
      library,
      gym,
      bar,
      situation,
      movements,
      parts,
      withholding,
      best: context.bestLift,
      ...(context.start !== undefined && { start: context.start.local }),
      overrides,
    }),
    choices: chosen.choices,
    standards: [],
    setUp: [],
    cautions,
    withheld: [...withholding.withheld, ...chosen.withheld],
  };
}

function situationInput(workout: Workout, context: PlanContext, parts: readonly PartPlan[]): SituationInput {
  const { athlete, library, date, gym, competition, start, overrides } = context;
  return {
    athlete,
    workout,
    movements: library.movements,
    date,
    parts,
    gym,
    ...(competition !== undefined && { competition }),
    ...(start !== undefined && { start: { at: start.local, zone: start.zone } }),
    overrides,
  };
}

/** The movements of the plan in order, each with the situation narrowed to it. */
function movementsAt(
  context: PlanContext,
  parts: readonly PartPlan[],
  situation: ReturnType<typeof situationOf>,
): readonly AtMovement[] {
  const { athlete, library, date, bestLift, overrides } = context;
  const usual = usualAmounts(athlete, date, () => undefined, overrides);
  const paced = parts.flatMap(({ pacing }) => (pacing?.rows ?? []).flatMap(({ movement }) => movement ?? []));
  const lifted = parts.flatMap(({ lifting }) => (lifting?.lifts ?? []).map(({ movement }) => movement));
  return [...new Set([...paced, ...lifted])].flatMap((id) => {
    const movement = library.movements.get(id);
    if (movement === undefined) return [];
    const narrowed = atMovement({
      situation,
      movement,
      movements: library.movements,
      athlete,
      date,
      parts,
      abilities: { best: bestLift },
      usual,
      overrides,
    });
    return [{ movement, situation: narrowed }];
  });
}

import type { Movement } from "../../models/movement.ts";
import type { PartPlan, Plan } from "../../models/plan/plan.ts";
import type { Workout } from "../../models/workout.ts";
import { planAfter } from "../after/plan-after.ts";
import { activeLimits } from "../conditions/active-limits.ts";
import type { AtMovement } from "../conditions/movement-situation.ts";
import { movementsDone } from "../conditions/situation-of.ts";
import { cautionsOf } from "../cautions/cautions.ts";
import { chooseOptions } from "../choices/choose-options.ts";
import { rankChoices } from "../choices/rank-choices.ts";
import { situationsOf, type SituationsInput } from "../conditions/situations-of.ts";
import { setUpOf } from "../set-up/set-up.ts";
import { standardsOf } from "../set-up/standards.ts";
import { planWarmUp } from "../warm-up/plan-warm-up.ts";
import type { PlanContext } from "./plan-context.ts";

/** Everything of a plan around the paced parts. */
export type Around = Pick<
  Plan,
  "warmUp" | "choices" | "standards" | "setUp" | "limits" | "after" | "cautions" | "withheld"
>;

/**
 * Warm-up, choices, standards, set-up, recovery and cautions, from the situation the paced parts make. Where the whole
 * workout is withheld, only cautions and what is withheld remain.
 */
export function planAround(workout: Workout, context: PlanContext, parts: readonly PartPlan[]): Around {
  const { athlete, library, gym, bar, withholding, bestLift, competition, overrides } = context;
  const { situation, movements, inParts } = situationsOf(situationsInput(workout, context, parts));
  const cautions = cautionsOf(library.cautions, situation, movements);
  if (withholding.noWorkout) {
    return {
      ...limitsOf(context),
      choices: [],
      standards: [],
      setUp: [],
      cautions,
      withheld: withholding.withheld,
    };
  }
  const chosen = chooseOptions({ movements: inParts, withholding, prefers: athlete.prefers, overrides });
  const choices = rankChoices({ choices: chosen.choices, movements: library.movements, parts, overrides });
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
      best: bestLift,
      ...(context.start !== undefined && { start: context.start.local }),
      overrides,
    }),
    ...limitsOf(context),
    choices,
    standards: standardsOf(workout, movements, overrides),
    setUp: [
      ...setUpOf({
        workout,
        movements: movementsSetOut(movements, workout, context, parts),
        parts,
        gym,
        choices,
        ...(competition !== undefined && { competition }),
      }),
    ],
    after: planAfter({
      library,
      gym,
      bar,
      situation,
      withholding,
      best: bestLift,
      unbroken: (id) => athlete.unbroken.find((each) => each.movement === id)?.reps,
      cannot: athlete.cannot,
      hoursAreStated: athlete.trainingHours !== undefined,
      overrides,
    }),
    cautions,
    withheld: [...withholding.withheld, ...chosen.withheld],
  };
}

/** The limits that stand on the day, with the names of the movements they speak of. */
function limitsOf({ athlete, date, library }: PlanContext): Pick<Plan, "limits"> {
  const nameOf = (id: string): string => library.movements.get(id)?.plural ?? id;
  const limits = activeLimits(athlete, date).map(({ without, cleared = [], ...limit }) => ({
    ...limit,
    without: without.map(nameOf),
    cleared: cleared.map(nameOf),
  }));
  return limits.length === 0 ? {} : { limits };
}

/** What is set out: for what is done, and, where the plan ends before the work does, for what is prescribed behind it too. */
function movementsSetOut(
  planned: readonly AtMovement[],
  workout: Workout,
  context: PlanContext,
  parts: readonly PartPlan[],
): readonly Movement[] {
  const done = planned.map(({ movement }) => movement);
  if (!parts.some(({ pacing }) => pacing?.ending === "stopped-by-cap")) return done;
  const prescribed = movementsDone({ ...situationsInput(workout, context, parts), parts: [] });
  const further = prescribed.filter((id) => !done.some((movement) => movement.id === id));
  return [...done, ...further.flatMap((id) => context.library.movements.get(id) ?? [])];
}

function situationsInput(
  workout: Workout,
  context: PlanContext,
  parts: readonly PartPlan[],
): SituationsInput {
  const { athlete, library, date, gym, competition, start, withholding, bestLift, usual, overrides } =
    context;
  return {
    athlete,
    workout,
    movements: library.movements,
    date,
    parts,
    gym,
    ...(competition !== undefined && { competition }),
    ...(start !== undefined && { start: { at: start.local, zone: start.zone } }),
    withholding,
    gymAssumed: context.place.kind === "usual",
    abilities: { best: bestLift },
    usual,
    overrides,
  };
}

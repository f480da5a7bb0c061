import type { Athlete } from "../../models/athlete.ts";
import type { Data } from "../../models/data.ts";
import type { Gym, NamedGym } from "../../models/gym.ts";
import type { MassUnit } from "../../models/quantity.ts";
import type { Step } from "../../models/workout.ts";
import { PLAN_FIXED } from "./fixed-constants.ts";

/** The gym a plan is made for: one that is known by name, or a usual one where neither the athlete nor the settings name any. */
export type PlanPlace =
  { readonly kind: "named"; readonly gym: NamedGym } | { readonly kind: "usual"; readonly gym: Gym };

/** A usual gym for athletes of whom no gym is known, by the unit of its bars and plates. Judgement. */
const USUAL_GYMS: Readonly<Record<MassUnit, Gym>> = {
  kg: usualGym("kg", PLAN_FIXED.usualPlates.value.kg),
  lb: usualGym("lb", PLAN_FIXED.usualPlates.value.lb),
};

/**
 * The athlete's gym, else the one of the settings, else the only one there is, else a usual one: with plates in the unit in which
 * all loads of the work are written, else in the athlete's.
 *
 * @param work the lines of the athlete's division
 */
export function planPlace(
  athlete: Athlete,
  { gyms, settings }: Pick<Data, "gyms" | "settings">,
  work: readonly Step[],
): PlanPlace {
  const named = athlete.gym ?? settings.gym;
  const gym = named === undefined ? undefined : gyms.get(named);
  if (gym !== undefined) return { kind: "named", gym };
  const [only, second] = [...gyms.values()];
  if (only !== undefined && second === undefined) return { kind: "named", gym: only };
  const [unit, other] = new Set(work.flatMap(unitsIn));
  return { kind: "usual", gym: USUAL_GYMS[unit === undefined || other !== undefined ? athlete.units : unit] };
}

/** Units of the loads on bars and in hands, where they are written in one alone. */
function unitsIn(step: Step): readonly MassUnit[] {
  if (step.kind === "block") return step.steps.flatMap(unitsIn);
  if (step.kind === "rest" || step.load === undefined) return [];
  const { load } = step;
  const loads = load.kind === "listed" ? load.values : [load.kind === "same" ? load.value : load.start];
  return loads.flatMap((each) =>
    each.kind === "mass" && each.alternative === undefined ? [each.mass.unit] : [],
  );
}

function usualGym(
  unit: MassUnit,
  {
    long,
    short,
    plates,
  }: { readonly long: number; readonly short: number; readonly plates: readonly number[] },
): Gym {
  return {
    id: "usual-gym",
    bars: [
      { id: "long", mass: { value: long, unit }, for: "everyone" },
      { id: "short", mass: { value: short, unit }, for: "female" },
    ],
    collarsCount: false,
    plates: plates.map((value) => ({ plate: { value, unit }, pairs: 2 })),
    ergs: {},
    equipment: [],
    between: { value: PLAN_FIXED.usualBetween.value, unit: "m" },
  };
}

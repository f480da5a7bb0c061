import type { Field } from "../../models/field.ts";
import type { Range } from "../../models/plan/basics.ts";
import type { PartPlan } from "../../models/plan/plan.ts";
import { KILOGRAMS_PER_POUND } from "../../models/quantity.ts";
import { type PlannedResult, placesOf } from "../places/places-of.ts";
import { nearestLoad } from "../lifting/plates.ts";
import type { PlanContext } from "./plan-context.ts";
import type { PlannedPart } from "./plan-part.ts";
import { resultOf } from "./plan-total.ts";

/** Places of a part whose score the field at hand counts; nothing is said where there is no such field. */
export function placesOfPart({ plan }: PlannedPart, context: PlanContext): PartPlan["places"] {
  const field = context.fields.get(plan.name)?.find((each) => countsScoreOf(each, plan));
  const range = resultOf(plan);
  if (field === undefined || range === undefined) return undefined;
  const results = resultsIn(field, plan, range);
  if (field.kind !== "load") return placesOf({ part: plan.name, field, results });
  const loadAbove = (load: number): number | undefined => nextLoad(load, field, context);
  const target = results[0]?.range.target ?? 0;
  const above = loadAbove(target);
  return placesOf({
    part: plan.name,
    field,
    results,
    loadAbove,
    ...(above !== undefined && { plate: above - target }),
  });
}

function countsScoreOf({ kind }: Field, plan: PartPlan): boolean {
  if (plan.lifting !== undefined) return kind === "load";
  if (kind === "reps") return plan.score === "reps" || plan.score === "rounds-and-reps";
  return kind === plan.score;
}

/** The planned result in the unit of the field; where a cap may or may not be met, its likelier side alone. */
function resultsIn(field: Field, plan: PartPlan, range: Range): readonly PlannedResult[] {
  const perUnit = field.kind === "load" && field.unit === "lb" ? KILOGRAMS_PER_POUND : 1;
  const scaled: Range = {
    target: range.target / perUnit,
    cautious: range.cautious / perUnit,
    middle: range.middle / perUnit,
    hopeful: range.hopeful / perUnit,
  };
  const stopped = plan.pacing?.ending === "stopped-by-cap" || plan.pacing?.ending === "eliminated";
  const score = plan.pacing?.whenStopped?.scoreDone;
  if (field.kind === "time" && stopped && score !== undefined) {
    const done = { target: score, cautious: score, middle: score, hopeful: score };
    return [{ side: "capped", range: done, chance: 1 }];
  }
  return [{ side: "finished", range: scaled, chance: 1 }];
}

/** The lightest load above another that the gym's plates make, in the unit of the field. */
function nextLoad(load: number, field: Field, { gym, bar }: PlanContext): number | undefined {
  const perUnit = field.unit === "lb" ? KILOGRAMS_PER_POUND : 1;
  const next = nearestLoad(gym, bar, load * perUnit + SMALLEST_STEP, "up");
  const value = next.kilograms / perUnit;
  return value > load ? value : undefined;
}

/** Kilograms that a load must be above another to be a heavier one. */
const SMALLEST_STEP = 0.05;

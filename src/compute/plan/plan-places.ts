import type { Field } from "../../models/field.ts";
import type { Range } from "../../models/plan/basics.ts";
import type { Places } from "../../models/plan/lifting.ts";
import type { PartPlan } from "../../models/plan/plan.ts";
import { KILOGRAMS_PER_POUND } from "../../models/quantity.ts";
import type { Part } from "../../models/workout.ts";
import { nearestLoad } from "../lifting/plates.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { PLACES_CONSTANTS } from "../places/constants.ts";
import { expectedPlace } from "../places/expected-place.ts";
import { type Cap, resultsOfRange, stoppedByCap } from "../places/possible-results.ts";
import { type PlacesInput, placesOf } from "../places/places-of.ts";
import { rankField } from "../places/rank-field.ts";
import { heldBack } from "./held-back.ts";
import type { PlanContext } from "./plan-context.ts";
import { type ComparedPart, planTrade } from "./plan-trade.ts";
import { resultOf } from "./plan-total.ts";
import { PLAN_FIXED } from "./fixed-constants.ts";

/**
 * The places of each part whose score a field at hand counts; nothing is said where there is none. Where a part is followed by
 * one lifted for load and both are compared, the first says whether holding back in it could pay.
 */
export function placesOfParts(
  plans: readonly PartPlan[],
  parts: readonly Part[],
  context: PlanContext,
): readonly (Places | undefined)[] {
  const constants = withOverrides(PLACES_CONSTANTS, context.overrides);
  const compared = plans.map((plan) => comparedPart(plan, context));
  const tieBreakOf = (index: number): ComparedPart | undefined => {
    const name = parts[index]?.tieBreakPart;
    return name === undefined ? undefined : compared.find((part) => part?.part === name);
  };
  return compared.map((part, index) => {
    if (part === undefined) return undefined;
    const byTie = tieBreakOf(index);
    const lift = compared[index + 1];
    const trade = lift && planTrade(part, lift, tieBreakOf(index + 1) === part);
    const input = { ...part, ...(byTie && { tied: shareAhead(byTie) }), ...(trade && { trade }) };
    return placesOf(input, constants);
  });
}

/** What a plan says of parts that hang together where no field weighs them: what holding back buys, and which part breaks ties. */
export function tiesAndTrade(
  plans: readonly PartPlan[],
  parts: readonly Part[],
  compared: readonly (Places | undefined)[],
  context: PlanContext,
): readonly Pick<PartPlan, "heldBack" | "tiesBy">[] {
  const constants = withOverrides(PLACES_CONSTANTS, context.overrides);
  const { gym, bar } = context;
  const loadAbove = (load: number): number => nearestLoad(gym, bar, load + SMALLEST_STEP, "up").kilograms;
  return plans.map((plan, index) => {
    const next = plans[index + 1];
    const weighed = compared[index]?.holdBack !== undefined || context.anonymous === true;
    const held = next && !weighed ? heldBack(plan, next, loadAbove, constants) : undefined;
    const tiesBy = parts[index]?.tieBreakPart;
    return { ...(held && { heldBack: held }), ...(tiesBy !== undefined && { tiesBy }) };
  });
}

function comparedPart(plan: PartPlan, context: PlanContext): ComparedPart | undefined {
  const field = context.fields.get(plan.name)?.find((each) => countsScoreOf(each, plan));
  const range = resultOf(plan);
  if (field === undefined || range === undefined) return undefined;
  const cap = field.kind === "time" ? capOf(plan) : undefined;
  const compared = { plan, part: plan.name, field, ...(cap && { cap }), ...resultIn(field, plan, range) };
  if (field.kind !== "load") return compared;
  const loadAbove = (load: number): number | undefined => nextLoad(load, field, context);
  const target = compared.results[0]?.range.target ?? 0;
  const above = loadAbove(target);
  return { ...compared, loadAbove, ...(above !== undefined && { plate: above - target }) };
}

/** Of those tied with a lift, the share that did the part before it better. */
function shareAhead({ field, results, cap }: ComparedPart): number {
  const ranked = rankField(field);
  const all = results.flatMap(({ range, side, chance }) => resultsOfRange(range, side, chance));
  const place = expectedPlace(
    ranked,
    all.map((result) => stoppedByCap(result, cap)),
  );
  return place / (ranked.size + 1);
}

function countsScoreOf({ kind }: Field, plan: PartPlan): boolean {
  if (plan.lifting !== undefined) return kind === "load" && plan.score !== "load-times-reps";
  if (kind === "reps") return plan.score === "reps" || plan.score === "rounds-and-reps";
  return kind === plan.score;
}

/** The planned result in the unit of the field, on the side of the cap the plan ends on. */
function resultIn(field: Field, plan: PartPlan, range: Range): Pick<PlacesInput, "results"> {
  const perUnit = field.kind === "load" && field.unit === "lb" ? KILOGRAMS_PER_POUND : 1;
  const scaled: Range = {
    target: range.target / perUnit,
    cautious: range.cautious / perUnit,
    middle: range.middle / perUnit,
    hopeful: range.hopeful / perUnit,
  };
  // Work that a cap stops is scored in what was done, whatever its part is scored in.
  const stopped = field.kind === "time" && plan.pacing !== undefined && plan.pacing.score !== "time";
  return { results: [{ side: stopped ? "capped" : "finished", range: scaled, chance: 1 }] };
}

function capOf({ pacing }: PartPlan): Cap | undefined {
  const work = pacing?.rows.at(-1)?.scoreDone;
  return pacing?.cap === undefined || work === undefined ? undefined : { seconds: pacing.cap, work };
}

/** The lightest load above another that the gym's plates make, in the unit of the field. */
function nextLoad(load: number, field: Field, { gym, bar }: PlanContext): number | undefined {
  const perUnit = field.unit === "lb" ? KILOGRAMS_PER_POUND : 1;
  const next = nearestLoad(gym, bar, load * perUnit + SMALLEST_STEP, "up");
  const value = next.kilograms / perUnit;
  return value > load ? value : undefined;
}

/** Kilograms that a load must be above another to be a heavier one. */
const SMALLEST_STEP = PLAN_FIXED.heavierBy.value;

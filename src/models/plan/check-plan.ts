import { type Plan, planSchema } from "./plan.ts";

/** Most faults of one plan that are told; the others follow from them. */
const MOST_TOLD = 3;
/** Clocks are sums of many numbers; less than this is no difference. Seconds. */
const BLINK = 0.01;

/**
 * Holds a finished plan against its own schema, and against what no schema says: that there is something to aim at, or that
 * it is said why not. Nothing is drawn of a plan that does not hold. Gives what is wrong, place by place; nothing where all
 * is right.
 */
export function troubleInPlan(plan: Plan): string | undefined {
  const held = planSchema.safeParse(plan);
  const troubles = held.success
    ? []
    : held.error.issues.map(({ path, message }) => `${path.join(".")}: ${message}`);
  for (const [index, { pacing }] of plan.parts.entries()) {
    const row = pacing && backwardRow(pacing);
    if (row !== undefined)
      troubles.push(`parts.${index}.pacing.rows.${row}: ends before it begins, or after the part`);
  }
  if (isWithoutAim(plan)) troubles.push("headline: nothing to aim at, and nothing says why");
  if (troubles.length === 0) return undefined;
  const told = troubles.slice(0, MOST_TOLD).join("; ");
  return troubles.length > MOST_TOLD ? `${told}; and ${troubles.length - MOST_TOLD} more` : told;
}

/** The first row that does not go forward in time, or goes on after the end of the part. */
function backwardRow({ rows, duration }: NonNullable<Plan["parts"][number]["pacing"]>): number | undefined {
  let before = 0;
  for (const { index, start, end } of rows) {
    if (start < before - BLINK || end < start - BLINK || end > duration + BLINK) return index;
    before = end;
  }
  return undefined;
}

const isWithoutAim = ({ headline, parts, withheld }: Plan): boolean =>
  headline.result === undefined &&
  headline.firstLoad === undefined &&
  withheld.length === 0 &&
  parts.every(({ missing }) => missing.length === 0);

/**
 * The same plan, held.
 *
 * @throws an Error that names the athlete, the workout and what is wrong.
 */
export function heldPlan(plan: Plan): Plan {
  const trouble = troubleInPlan(plan);
  if (trouble === undefined) return plan;
  throw new Error(`the plan of ${plan.athlete.name} for ${plan.workout.title} came out wrong (${trouble})`);
}

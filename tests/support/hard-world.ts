import { harderCapacity } from "../../src/compute/capacity/harder-capacity.ts";
import { planParts } from "../../src/compute/plan/plan-parts.ts";
import { seenPerformances } from "../../src/compute/plan/seen-performances.ts";
import { settle } from "../../src/compute/plan/settle.ts";
import type { Athlete } from "../../src/models/athlete.ts";
import type { Data } from "../../src/models/data.ts";
import { seconds } from "../../src/models/quantity.ts";
import type { PartPlan, PlannedPacing } from "../../src/models/plan/plan.ts";
import type { EarlyPerformance, Workout } from "../../src/models/workout.ts";
import type { Random } from "../../src/numerics/random.ts";

const DATE = "2026-11-25";

/** A workout as it truly is: natural logarithms by which all of it, and movements beside that, ask more time than the model has. */
export type Truth = { readonly all: number; readonly movements: ReadonlyMap<string, number> };

/** How people differ from what is known of them: standard deviations of what movements share and of each movement's own. */
export type Doubt = { readonly shared: number; readonly own: number };

/** Of somebody known by level: 13 % in all, of which movements share six tenths. */
export const BY_LEVEL: Doubt = { shared: 0.13 * Math.sqrt(0.6), own: 0.13 * Math.sqrt(0.4) };
/** Of somebody with results of their own. */
export const BY_RESULTS: Doubt = { shared: 0.04, own: 0.04 };

/** Movements of the paced part. */
export const movementsIn = ({ rows }: PlannedPacing): readonly string[] => [
  ...new Set(rows.flatMap(({ movement }) => movement ?? [])),
];

/** The first part as somebody truly does it, on an even day. */
export function trulyDone(
  athlete: Athlete,
  workout: Workout,
  data: Data,
  ...truths: readonly Truth[]
): PlannedPacing | undefined {
  const { context } = settle(athlete, workout, data, DATE);
  const capacity = truths.reduce(harderCapacity, context.capacity);
  const alone = { ...workout, early: [] };
  return planParts(alone, { ...context, capacity })[0]?.plan.pacing;
}

/** Somebody's own difference from what is known. */
export function person(movements: readonly string[], { shared, own }: Doubt, random: Random): Truth {
  const all = shared * random.normal();
  return { all, movements: new Map(movements.map((id) => [id, own * random.normal()])) };
}

/** The clocks at the end of each line of a performance, on a day that is better or worse, each line off a little. */
export function clocksOfLines(
  { rows }: PlannedPacing,
  day: number,
  lineNoise: number,
  random: Random,
): readonly number[] {
  let clock = 0;
  let before = 0;
  return rows.flatMap(({ kind, end, prescribed }) => {
    clock += (end - before) * (kind === "work" ? day * Math.exp(lineNoise * random.normal()) : 1);
    before = end;
    return kind === "work" && prescribed === undefined ? [Math.round(clock)] : [];
  });
}

/** An early performance as a coach notes it. */
export const noted = (
  clocks: readonly number[],
  who: Pick<EarlyPerformance, "athlete" | "level" | "division">,
  part: string,
): EarlyPerformance => ({
  who: "somebody",
  ...who,
  part,
  splits: clocks.map(seconds),
  after: "line",
  place: { file: "made.mdx", line: 1, column: 1 },
});

/** The plan somebody gets when these performances are known. */
export function plannedWith(
  athlete: Athlete,
  workout: Workout,
  data: Data,
  early: readonly EarlyPerformance[],
): { readonly pacing: PlannedPacing | undefined; readonly part: PartPlan | undefined } {
  const known = { ...workout, early };
  const seen = seenPerformances(known, data, DATE);
  return plannedSeeing(athlete, known, data, seen);
}

/** The same, where what was seen is worked out already. */
export function plannedSeeing(
  athlete: Athlete,
  workout: Workout,
  data: Data,
  seen: ReturnType<typeof seenPerformances>,
): { readonly pacing: PlannedPacing | undefined; readonly part: PartPlan | undefined } {
  const part = planParts(workout, { ...settle(athlete, workout, data, DATE).context, seen })[0]?.plan;
  return { pacing: part?.pacing, part };
}

/** Natural logarithm of planned over done, as time: how far a plan is off. Undefined where a cap stands between the two. */
export function off(planned: PlannedPacing | undefined, done: PlannedPacing | undefined): number | undefined {
  if (!planned || !done || planned.score !== done.score) return undefined;
  const ratio = Math.log(planned.result.target / done.result.target);
  if (!Number.isFinite(ratio)) return undefined;
  return planned.score === "time" || planned.score === "slowest-interval" ? ratio : -ratio;
}

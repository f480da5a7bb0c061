import type { Course } from "../../models/course.ts";
import { seconds } from "../../models/quantity.ts";
import type { PaceShape } from "../pacing/paced-part.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { EARLY_SPLITS_CONSTANTS, type EarlySplitsConstants } from "./constants.ts";
import type { EarlySplitsFit, SeenRound } from "./early-splits-fit.ts";
import { roundWork } from "./round-work.ts";

/** What a caller may add. */
type ShapeOptions = {
  /**
   * Seconds of each round as planned without early splits. With it a round is relative to that plan instead of to an even round, so
   * that slowing which the plan foresees anyway is not counted twice, and loads that differ by round need no other account.
   */
  readonly planned?: readonly { readonly round: number; readonly seconds: number }[];
  /** Constants by name. */
  readonly overrides?: Readonly<Record<string, number>>;
};

/**
 * How far and in which direction the plan of anybody doing this course follows the early performances.
 *
 * Seconds of each round relative to the mean of its kind (1 is even), the last one seen holding on for rounds nobody got
 * to; the seconds of a change of station where a fixed cost per round was told; and the weight of both: it grows with the
 * number of performances and shrinks with the doubt about the shape. Without two rounds to hold against each other it is 0.
 */
export function shapeFrom(
  fit: EarlySplitsFit,
  course: Course,
  { planned, overrides = {} }: ShapeOptions = {},
): PaceShape {
  const constants = withOverrides(EARLY_SPLITS_CONSTANTS, overrides);
  const works = roundWork(course);
  const relative = planned === undefined ? relativeToEven(fit.rounds) : relativeTo(planned, fit.rounds);
  const likenessOf = new Map(works.map(({ round, likeness }) => [round, likeness]));
  const lastOf = new Map(fit.rounds.map(({ round }) => [likenessOf.get(round), round]));
  const relativeByRound = Array.from({ length: works.at(-1)?.round ?? 0 }, (_, index) => {
    const round = index + 1;
    const last = lastOf.get(likenessOf.get(round));
    return relative.get(round) ?? (last !== undefined && round > last ? relative.get(last) : undefined) ?? 1;
  });
  const transition = transitionOf(fit, course);
  return {
    weight: weightOf(fit, constants),
    relativeByRound,
    ...(transition === undefined ? {} : { transition: seconds(transition) }),
  };
}

const relativeToEven = (rounds: readonly SeenRound[]): ReadonlyMap<number, number> =>
  new Map(rounds.map(({ round, relative }) => [round, relative]));

/** Seconds seen over seconds planned, with a mean of 1 over the rounds of one likeness. */
function relativeTo(
  planned: NonNullable<ShapeOptions["planned"]>,
  rounds: readonly SeenRound[],
): ReadonlyMap<number, number> {
  const plan = new Map(planned.map(({ round, seconds: time }) => [round, time]));
  const both = rounds.flatMap(({ round, likeness, seconds: seen }) => {
    const own = plan.get(round);
    return own === undefined || own <= 0 ? [] : [{ round, likeness, over: seen / own }];
  });
  return new Map(
    [...Map.groupBy(both, ({ likeness }) => likeness).values()].flatMap((alike) => {
      const level = alike.reduce((sum, { over }) => sum + over, 0) / alike.length;
      return alike.map(({ round, over }) => [round, over / level] as const);
    }),
  );
}

/** Grows with performances towards its most, and is halved by a doubt as large as shapes differ. */
function weightOf(
  { rounds, performances }: EarlySplitsFit,
  { weightMost, weightHalfAt, shapeSpread }: EarlySplitsConstants,
): number {
  const comparable = [...Map.groupBy(rounds, ({ likeness }) => likeness).values()]
    .filter((alike) => alike.length > 1)
    .flat();
  if (comparable.length === 0) return 0;
  const doubt = comparable.reduce((sum, { error }) => sum + error ** 2, 0) / comparable.length;
  const ofNumber = performances / (performances + weightHalfAt);
  return (weightMost * ofNumber * shapeSpread ** 2) / (shapeSpread ** 2 + doubt);
}

/** The fixed cost of a round shared out over its changes of station; the first round has one less and is passed over. */
function transitionOf({ fixedPerRound, rounds }: EarlySplitsFit, course: Course): number | undefined {
  if (fixedPerRound === undefined) return undefined;
  const [most = []] = [...Map.groupBy(rounds, ({ likeness }) => likeness).values()].sort(
    (one, other) => other.length - one.length,
  );
  const main = new Set(most.map(({ round }) => round));
  const arrivals = Math.max(
    0,
    ...roundWork(course).flatMap((work) => (main.has(work.round) ? [work.arrivals] : [])),
  );
  return arrivals === 0 ? undefined : fixedPerRound.value / arrivals;
}

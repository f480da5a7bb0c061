import { quickNormalBelow } from "../../numerics/normal-table.ts";
import { type AttemptPlan, isStop, type Stop } from "./attempt-problem.ts";
import type { Belief } from "./day-strength.ts";

/** How a plan ends: the heaviest made load (undefined for none), the sum of all made loads, and the chance of it. */
export type Outcome = { readonly best: number | undefined; readonly sum: number; readonly chance: number };

const NODES = 21;
const REACH = 4;
/** Strengths of the day in spreads from the mean, and how likely each is. */
const DAYS = Float64Array.from({ length: NODES }, (_, at) => REACH * ((2 * at) / (NODES - 1) - 1));
const DENSITIES = DAYS.map((day) => Math.exp((-day * day) / 2));
const WEIGHTS = DENSITIES.map((density) => density / DENSITIES.reduce((sum, each) => sum + each, 0));

/**
 * Every way a plan can end, with its chance, when days are as `world` says: the plan is followed down each branch, for each
 * of 21 strengths of the day (even spacing, normal weights), every attempt with noise of its own. Exact up to that grid;
 * the world may be another one than the plan was made for.
 */
export function outcomesOf(plan: AttemptPlan | Stop, world: Belief): readonly Outcome[] {
  const outcomes: Outcome[] = [];
  const follow = (
    at: AttemptPlan | Stop,
    chances: Float64Array,
    best: number | undefined,
    sum: number,
  ): void => {
    if (isStop(at)) {
      let chance = 0;
      for (const each of chances) chance += each;
      outcomes.push({ best, sum, chance });
      return;
    }
    const made = new Float64Array(NODES);
    const missed = new Float64Array(NODES);
    for (let day = 0; day < NODES; day++) {
      const strength = at.strength * (world.mean + world.spread * (DAYS[day] ?? 0));
      const here = chances[day] ?? 0;
      const there = here * quickNormalBelow((strength - at.load) / world.noise);
      made[day] = there;
      missed[day] = here - there;
    }
    follow(at.made, made, Math.max(best ?? 0, at.load), sum + at.load);
    follow(at.missed, missed, best, sum);
  };
  follow(plan, WEIGHTS, undefined, 0);
  return outcomes;
}

/** Mean of what the outcomes are worth. */
export const expectedWorth = (
  outcomes: readonly Outcome[],
  worth: (best: number | undefined, sum: number) => number,
): number => outcomes.reduce((mean, { best, sum, chance }) => mean + chance * worth(best, sum), 0);

/** Chance of a best made load at or above one. */
export const chanceOfAtLeast = (outcomes: readonly Outcome[], kilograms: number): number =>
  expectedWorth(outcomes, (best) => (best !== undefined && best >= kilograms - 0.005 ? 1 : 0));

/** Chance that nothing is made at all. */
export const chanceOfNone = (outcomes: readonly Outcome[]): number =>
  outcomes.reduce((none, { best, chance }) => none + (best === undefined ? chance : 0), 0);

/** The result below which the outcomes lie with a chance: a load, or 0 where nothing is made. */
export function outcomeQuantile(
  outcomes: readonly Outcome[],
  share: number,
  of: (outcome: Outcome) => number,
): number {
  const sorted = [...outcomes].sort((a, b) => of(a) - of(b));
  let below = 0;
  for (const outcome of sorted) {
    below += outcome.chance;
    if (below >= share) return of(outcome);
  }
  return sorted.length > 0 ? of(sorted[sorted.length - 1] as Outcome) : 0;
}

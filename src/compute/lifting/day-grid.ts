import { quickNormalBelow } from "../../numerics/normal-table.ts";
import type { Belief } from "./day-strength.ts";
import type { Slot } from "./ladder-problem.ts";

const NODES = 21;
const REACH = 3.5;

/** Strengths of the day in spreads from the mean. */
const DAYS = Float64Array.from({ length: NODES }, (_, at) => REACH * ((2 * at) / (NODES - 1) - 1));
const DENSITIES = DAYS.map((day) => Math.exp((-day * day) / 2));
const TOTAL = DENSITIES.reduce((sum, each) => sum + each, 0);

/** How likely each strength of the day is: 21 evenly spaced, with normal weights. */
export const DAY_WEIGHTS: Float64Array = DENSITIES.map((density) => density / TOTAL);

/**
 * Chance of making a load at a slot, for each strength of the day: normal noise of the attempt, and after the first a small
 * chance to miss any load.
 */
export function chancesByDay(load: number, slot: Slot, isFirst: boolean, belief: Belief): Float64Array {
  const kept = isFirst ? 1 : 1 - belief.slip;
  return DAYS.map(
    (day) =>
      kept * quickNormalBelow((slot.strength * (belief.mean + belief.spread * day) - load) / belief.noise),
  );
}

/** Chances that both hold, day by day. */
export const both = (weights: Float64Array, chances: Float64Array): Float64Array =>
  weights.map((weight, day) => weight * (chances[day] ?? 0));

/** Chances that the first holds and the second does not. */
export const without = (weights: Float64Array, chances: Float64Array): Float64Array =>
  weights.map((weight, day) => weight * (1 - (chances[day] ?? 0)));

export const totalOf = (weights: Float64Array): number => weights.reduce((sum, each) => sum + each, 0);

/** Mean and standard deviation of the strength of the day by weights, in spreads from the mean it began with. */
export function momentsOf(weights: Float64Array): { readonly mean: number; readonly deviation: number } {
  const total = totalOf(weights);
  const mean = weights.reduce((sum, each, at) => sum + each * (DAYS[at] ?? 0), 0) / total;
  const square = weights.reduce((sum, each, at) => sum + each * ((DAYS[at] ?? 0) - mean) ** 2, 0) / total;
  return { mean, deviation: Math.sqrt(square) };
}

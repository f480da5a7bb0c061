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

/** Chances of making a load at each slot of a day, by the strength of the day, each reckoned once. */
export type DayChances = {
  readonly slots: readonly Slot[];
  /** For a slot by its number from 0, and a load in kilograms. */
  readonly of: (at: number, load: number) => Float64Array;
};

/** The chances of a day's slots when days are as believed. */
export function dayChances(slots: readonly Slot[], belief: Belief): DayChances {
  const known = slots.map(() => new Map<number, Float64Array>());
  return {
    slots,
    of: (at, load) => {
      const [slot, found] = [slots[at], known[at]?.get(load)];
      if (found) return found;
      if (!slot) throw new RangeError(`a day has no slot ${at}`);
      const chances = chancesByDay(load, slot, at === 0, belief);
      known[at]?.set(load, chances);
      return chances;
    },
  };
}

/**
 * Chance of making a load at a slot, for each strength of the day: normal noise of the attempt, and after the first a small
 * chance to miss any load.
 */
export function chancesByDay(load: number, slot: Slot, isFirst: boolean, belief: Belief): Float64Array {
  const { mean, spread, noise, slip } = belief;
  const kept = isFirst ? 1 : 1 - slip;
  const chances = new Float64Array(NODES);
  for (let day = 0; day < NODES; day++) {
    chances[day] =
      kept * quickNormalBelow((slot.strength * (mean + spread * (DAYS[day] ?? 0)) - load) / noise);
  }
  return chances;
}

// Plain loops: these run for every load of every slot, and a callback each would cost several times as much.

/** Chances that both hold, day by day. */
export function both(weights: Float64Array, chances: Float64Array): Float64Array {
  const held = new Float64Array(NODES);
  for (let day = 0; day < NODES; day++) held[day] = (weights[day] ?? 0) * (chances[day] ?? 0);
  return held;
}

/** Chances that the first holds and the second does not. */
export function without(weights: Float64Array, chances: Float64Array): Float64Array {
  const left = new Float64Array(NODES);
  for (let day = 0; day < NODES; day++) left[day] = (weights[day] ?? 0) * (1 - (chances[day] ?? 0));
  return left;
}

/** Adds weights to others, which are changed. */
export function addTo(sum: Float64Array, weights: Float64Array): void {
  for (let day = 0; day < NODES; day++) sum[day] = (sum[day] ?? 0) + (weights[day] ?? 0);
}

export function totalOf(weights: Float64Array): number {
  let sum = 0;
  for (let day = 0; day < NODES; day++) sum += weights[day] ?? 0;
  return sum;
}

/** Mean and standard deviation of the strength of the day by weights, in spreads from the mean it began with. */
export function momentsOf(weights: Float64Array): { readonly mean: number; readonly deviation: number } {
  const total = totalOf(weights);
  const mean = weights.reduce((sum, each, at) => sum + each * (DAYS[at] ?? 0), 0) / total;
  const square = weights.reduce((sum, each, at) => sum + each * ((DAYS[at] ?? 0) - mean) ** 2, 0) / total;
  return { mean, deviation: Math.sqrt(square) };
}

import type { Cut } from "./cut.ts";
import type { Belief } from "./day-strength.ts";

/** A moment at which an attempt may be made. */
export type Slot = {
  /** Seconds from the opening of the window to its start. */
  readonly start: number;
  /** Seconds of rest before it; infinite before the first. */
  readonly rest: number;
  /** Share of the day's strength there is then: what the work before has given back, less what the last attempts took. */
  readonly strength: number;
  /** Share of it that the work before has given back, whatever was lifted since. */
  readonly recovered: number;
};

/** How far a ladder may go. Loads in kilograms, jumps as shares of the load before. */
export type LadderLimits = {
  /** The best known for an attempt as it is lifted, all its reps: what bounds count from. */
  readonly best: number;
  readonly firstJump: number;
  readonly laterJump: number;
  readonly jumpOverBest: number;
  /** A jump of so many kilograms is always allowed: one step of the plates that lie at hand. */
  readonly step: number;
  /** Heaviest load of a fresh day, over the best. */
  readonly most: number;
};

/** One lift to be planned, in numbers alone. */
export type LadderProblem = {
  /** Loads that may be lifted, kilograms, ascending. */
  readonly loads: readonly number[];
  /** Those of them the first attempt may be made with, and those after it is missed; ascending. */
  readonly openers: readonly number[];
  /** Loads just over round ones, for the load aimed at; none where ties do not count. */
  readonly cuts: readonly Cut[];
  /** Most chance that such a load may cost. */
  readonly cutLoss: number;
  readonly belief: Belief;
  /** When attempts may start, in order; at least one. */
  readonly slots: readonly Slot[];
  readonly limits: LadderLimits;
  /** Usual steps from load to load, as shares; the last holds for all that follow. */
  readonly steps: readonly number[];
  /** Seconds of rest that changing plates between two loads takes. */
  readonly change: (from: number, to: number) => number;
  /** What a best made load is worth; undefined when none was made. Never falls with the load. */
  readonly worth: (best: number | undefined) => number;
  /** A load may never be lighter than the one before. */
  readonly rising: boolean;
  /** Least chance of the first load. */
  readonly openerChance: number;
  /** First load, where it is set; kilograms. */
  readonly opener?: number;
  /** Between a made load and the next, where it is set; kilograms. */
  readonly jump?: number;
  /** Share of the opener that the last try for any lift lies at. */
  readonly lastTry: number;
  /** Share of the opener under which nothing is loaded before it. */
  readonly lowestAfterMiss: number;
  /** Misses after which a day without any made lift ends. */
  readonly triesForFirst: number;
  /** By how much of the worth between the lightest and the heaviest load another ladder must beat the usual steps. */
  readonly gainWorthIt: number;
  /** The same for a ladder with a jump larger than the one before it. */
  readonly gainOfGrowingJumps: number;
};

/** Ten grams: loads nearer than this are one. */
export const SAME = 0.01;

export const isSameLoad = (a: number, b: number): boolean => Math.abs(a - b) < SAME;

/** The heaviest load of a slot, kilograms: the most of a fresh day as far as strength has come back. */
export const mostAt = ({ best, most }: LadderLimits, { recovered }: Slot): number => best * most * recovered;

/**
 * Heaviest load that may follow a made one, kilograms: a tenth more after the opener, then less, least at and over the best, one
 * step of plates in any case, and never over what the day allows at that moment.
 */
export function heaviestNext(from: number, isOpener: boolean, slot: Slot, limits: LadderLimits): number {
  const { best, firstJump, laterJump, jumpOverBest, step } = limits;
  const usual = from * (1 + (isOpener ? firstJump : laterJump));
  const overBest = Math.max(best, from * (1 + Math.min(jumpOverBest, laterJump)));
  const jumped = usual > best ? Math.min(usual, overBest) : usual;
  return Math.min(Math.max(jumped, from + step), mostAt(limits, slot));
}

/**
 * The loads that may follow a made one: those within the bounds whose plates can be changed in time. Where none lies within
 * the jump, the next there is, as long as the day allows it.
 */
export function nextLoads(
  from: number,
  isOpener: boolean,
  slot: Slot,
  { loads, limits, change, jump }: LadderProblem,
): readonly number[] {
  if (jump !== undefined) {
    const set = loads.find((load) => isSameLoad(load, from + jump));
    return set !== undefined && set <= mostAt(limits, slot) + SAME ? [set] : [];
  }
  const most = heaviestNext(from, isOpener, slot, limits) + SAME;
  const within: number[] = [];
  for (const load of loads) {
    if (load <= from + SAME) continue;
    if (load > most && within.length > 0) break;
    // Reckoned last, because plates take longest to look at.
    if (change(from, load) > slot.rest) continue;
    if (load > most) return load <= mostAt(limits, slot) + SAME ? [load] : [];
    within.push(load);
  }
  return within;
}

import type { Places } from "../../models/plan/lifting.ts";
import { expectedPlace } from "./expected-place.ts";
import type { PossibleResult } from "./possible-results.ts";
import type { RankedField } from "./rank-field.ts";

export type HoldBack = NonNullable<Places["holdBack"]>;

/** What is traded: a part done easier against the lift after it. */
export type HoldBackInput = {
  readonly first: {
    readonly field: RankedField;
    readonly results: readonly PossibleResult[];
    readonly seconds: number;
  };
  readonly lift: {
    readonly field: RankedField;
    /** Results of the lift in the unit of its field. */
    readonly results: readonly PossibleResult[];
    /** Units of the lift's field in a kilogram. */
    readonly perKilogram: number;
    /** Strength lost to the first part when the window opens, in kilograms. */
    readonly kilogramsLost: number;
  };
  /** Whether ties of the lift are broken by the first part. */
  readonly tiesByFirst: boolean;
};

/** Shares of the effort that could be held back. */
const SHARES = [0.025, 0.05, 0.1] as const;
/**
 * How fast the loss falls with effort held back, relative to it: twice, as work above what can be sustained tires most.
 * Judgement; no measurement found.
 */
const LOSS_PER_EFFORT = 2;

/**
 * Whether going easier in the first part to lift more could pay: for 2.5, 5 and 10 % of its effort, the places lost there
 * against those won at the lift, ties included. Tells the best of the three, which is usually one that does not
 * pay. Negative places are places won in all.
 */
export function holdBack({ first, lift, tiesByFirst }: HoldBackInput): HoldBack {
  const at = (share: number): HoldBack => {
    const kilogramsGained = share === 0 ? 0 : Math.min(1, LOSS_PER_EFFORT * share) * lift.kilogramsLost;
    const slower = first.results.map((result) => ({ ...result, score: easier(first.field, result, share) }));
    const firstPlace = expectedPlace(first.field, slower);
    const tied = tiesByFirst ? firstPlace / (first.field.size + 1) : 0.5;
    const liftPlace = expectedPlace(lift.field, lift.results, {
      better: kilogramsGained * lift.perKilogram,
      tied,
    });
    return {
      pays: false,
      secondsLost: share * first.seconds,
      kilogramsGained,
      placesDifference: firstPlace + liftPlace,
    };
  };
  const asPlanned = at(0).placesDifference;
  const trades = SHARES.map(at).map((trade) => ({
    ...trade,
    placesDifference: trade.placesDifference - asPlanned,
  }));
  const best = trades.reduce((a, b) => (b.placesDifference < a.placesDifference ? b : a));
  return { ...best, pays: best.placesDifference < 0 };
}

/** A result with a share of the effort held back: that much slower, or that much less work done. */
function easier(field: RankedField, { side, score }: PossibleResult, share: number): number {
  return side === "finished" && field.lowerIsBetter ? score * (1 + share) : score * (1 - share);
}

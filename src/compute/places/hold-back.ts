import type { Places } from "../../models/plan/lifting.ts";
import type { PlacesConstants } from "./constants.ts";
import { expectedPlace } from "./expected-place.ts";
import { type Cap, type PossibleResult, stoppedByCap } from "./possible-results.ts";
import type { RankedField } from "./rank-field.ts";
import { PLACES_FIXED } from "./fixed-constants.ts";

type HoldBack = NonNullable<Places["holdBack"]>;

/** What is traded: a part done easier against the lift after it. */
export type HoldBackInput = {
  readonly first: {
    readonly field: RankedField;
    readonly results: readonly PossibleResult[];
    /** Planned result: seconds, or what is counted. */
    readonly target: number;
    readonly unit: HoldBack["unit"];
    /** Seconds by which the part ends later with a share of its effort held back; 0 where its clock ends it. */
    readonly later: (share: number) => number;
    readonly cap?: Cap;
  };
  readonly lift: {
    readonly part: string;
    readonly field: RankedField;
    /** Results of the lift in the unit of its field. */
    readonly results: readonly PossibleResult[];
    /** One plate more, in the unit of its field and in kilograms. */
    readonly plate: { readonly inField: number; readonly kilograms: number };
    /** Strength lost to the first part when it counts, in kilograms. */
    readonly kilogramsLost: number;
    /** Kilograms of the expected lift that so many seconds less of the window cost. */
    readonly costOfLater: (seconds: number) => number;
  };
  /** Whether ties of the lift are broken by the first part. */
  readonly tiesByFirst: boolean;
};

/** Shares of the effort that could be held back. */
const SHARES = PLACES_FIXED.heldBackTried.value;

/**
 * Whether going easier in the first part to lift more could pay: for 2.5, 5 and 10 % of its effort, the places lost there
 * against those won at the lift, ties and the shorter window included. Tells the best of the three, which is usually one that
 * does not pay. Fields may differ in size, so places are weighed as shares of their field. What is gained in kilograms counts as
 * so much of one plate more, since loads come in steps. A trade that pays only with all of what effort held back spares is called unsure.
 */
export function holdBack(input: HoldBackInput, constants: PlacesConstants): HoldBack {
  const { lossPerEffort, lossDoubted } = constants;
  const { first, lift, tiesByFirst } = input;
  const places = (share: number): { readonly there: number; readonly here: (gained: number) => number } => {
    const there = expectedPlace(
      first.field,
      first.results.map((result) => easier(result, share, input)),
    );
    const tied = tiesByFirst ? there / (first.field.size + 1) : 0.5;
    const now = expectedPlace(lift.field, lift.results, { tied });
    const withPlate = expectedPlace(lift.field, lift.results, { better: lift.plate.inField, tied });
    return { there, here: (gained) => now + (gained / lift.plate.kilograms) * (withPlate - now) };
  };
  const asPlanned = places(0);
  const trade = (share: number, perEffort: number) => {
    const { there, here } = places(share);
    const kilogramsGained =
      Math.min(1, perEffort * share) * lift.kilogramsLost - lift.costOfLater(first.later(share));
    const placesLost = there - asPlanned.there;
    const placesWon = asPlanned.here(0) - here(kilogramsGained);
    const net = placesWon / lift.field.size - placesLost / first.field.size;
    return { share, kilogramsGained, placesLost, placesWon, net };
  };
  const best = SHARES.map((share) => trade(share, lossPerEffort)).reduce((a, b) => (b.net > a.net ? b : a));
  const { net, ...told } = best;
  const surely = trade(best.share, lossDoubted * lossPerEffort).net > 0;
  return {
    lift: lift.part,
    answer: net <= 0 ? "no" : surely ? "yes" : "unsure",
    ...told,
    lost: best.share * first.target,
    unit: first.unit,
    liftFieldSize: lift.field.size,
    tiesCounted: tiesByFirst,
  };
}

/** A result with a share of the effort held back: that much slower, the cap in mind, or that much less work done. */
function easier(
  { side, score, chance }: PossibleResult,
  share: number,
  { first: { field, cap } }: HoldBackInput,
): PossibleResult {
  if (side !== "finished" || !field.lowerIsBetter) return { side, score: score * (1 - share), chance };
  return stoppedByCap({ side, score: score * (1 + share), chance }, cap);
}

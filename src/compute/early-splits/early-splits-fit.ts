import type { EarlyTrouble } from "../../models/early-trouble.ts";
import type { Pacing } from "../../models/plan/pacing.ts";

/** A number with its standard error. */
export type Estimate = { readonly value: number; readonly error: number };

/** What early splits may tell of a workout. */
export type EarlyLaw = NonNullable<Pacing["earlySplits"]>["notIdentifiable"][number];

/** One round as it was seen. */
export type SeenRound = {
  readonly round: number;
  /** Rounds of one likeness differ in amounts only; only these are held against one another. */
  readonly likeness: string;
  /** Seconds of work and changes of station, rests left out: geometric mean of the performances, each brought to their common level. */
  readonly seconds: number;
  /** Seconds over what its amounts alone would make it; 1 is even. The mean over the rounds of one likeness is 1. */
  readonly relative: number;
  /** Standard error of `relative`. */
  readonly error: number;
  readonly performances: number;
};

/**
 * What splits of early performances of one part tell. A round takes
 * (fixed + per rep x reps) x (1 + drift)^(rounds before it) x (1 + surge, if it is the last).
 * Numbers that the splits do not tell are absent, and named in `notIdentifiable`.
 */
export type EarlySplitsFit = {
  /** Performances of which at least one round could be read. */
  readonly performances: number;
  /** Seconds a round takes whatever is in it, in the first round. */
  readonly fixedPerRound?: Estimate;
  /** Seconds per rep in the first round; mean over the movements counted in reps. */
  readonly perRep?: Estimate;
  /** Share by which each round is slower than the one before. */
  readonly driftPerRound?: Estimate;
  /** Share by which the last round is slower (below nought: faster) than its place would make it. */
  readonly finishSurge?: Estimate;
  readonly notIdentifiable: readonly EarlyLaw[];
  /** The rounds seen, ascending. */
  readonly rounds: readonly SeenRound[];
  /** Performances that could not be read, and why. */
  readonly troubles: readonly EarlyTrouble[];
};

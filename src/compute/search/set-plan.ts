/** Sets in order, none larger than the one before; the mean rest between two; seconds per unit inside the sets. */
export type SetPlan = {
  readonly sizes: readonly number[];
  readonly rest: number;
  readonly cycle: number;
  /** Rest before the first unit: what the muscle needs to do it at all, and a breath. */
  readonly restFirst: number;
  /** Seconds of all of it. */
  readonly total: number;
  /** Seconds of the fastest way, rest before it included. */
  readonly leastTotal: number;
};

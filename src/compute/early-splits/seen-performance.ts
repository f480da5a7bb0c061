import type { Estimate } from "./early-splits-fit.ts";

/** What one movement of a performance took beside all of its work. */
export type SeenMovement = Estimate & { readonly movement: string };

/**
 * One performance of a part held against what was to be expected of who did it. Plain data, so that it can be worked out once for a
 * workout and kept.
 */
export type SeenPerformance = {
  readonly part: string;
  /** Noted by the coach in the workout, logged by an athlete, or the scores of a field taken together. */
  readonly source: "early" | "result" | "field";
  /** The athlete's id, where it was one of the gym. */
  readonly athlete?: string;
  /**
   * Natural logarithm of how much longer the work took than planned without anybody having been seen (below 0: shorter). The
   * error is what is not known of the athlete, and the day.
   */
  readonly slower: Estimate;
  /** The same by movement, beside all of the work, where lines were timed. */
  readonly movements: readonly SeenMovement[];
  /** Share of the planned time that each movement of the part takes; adds up to 1. */
  readonly shares: readonly { readonly movement: string; readonly share: number }[];
  /** How many scores it stands for; 1 but for a field. */
  readonly scores: number;
};

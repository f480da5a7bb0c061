import type { ScoreKind } from "./vocabulary.ts";

/** Scores of one kind with how many athletes have each; ascending by value. */
export type ScoreCounts = readonly { readonly value: number; readonly count: number }[];

/**
 * A sample of scores for a workout. The two sides of a capped field are kept apart: `finished` holds seconds,
 * `capped` holds reps done at the cap. Scaled results are not part of it.
 */
export type Field = {
  readonly id: string;
  readonly kind: Extract<ScoreKind, "time" | "reps" | "load" | "calories" | "metres">;
  readonly division?: string;
  /** Unit of a load field. */
  readonly unit?: "kg" | "lb";
  readonly finished: ScoreCounts;
  readonly capped: ScoreCounts;
  /** Results that were left out, how many (`rows`, counts added up), and why. */
  readonly leftOut: readonly { readonly reason: string; readonly rows: number }[];
};

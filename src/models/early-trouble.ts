import type { EarlyPerformance } from "./workout.ts";

/** Why what was seen of an early performance cannot be read. Seconds. */
export type EarlyTrouble = {
  readonly performance: EarlyPerformance;
  /** A division in whose work it could be read, where its own is not said. */
  readonly fitting?: string;
} &
  /** More clocks than the `most` lines or rounds there are. */
  (
    | { readonly kind: "too-many-splits"; readonly most: number }
    /** A clock no later than the moment the work before it could begin. */
    | { readonly kind: "clock-too-soon"; readonly clock: number; readonly start: number }
    /** A time far from anything possible, beside what a regular athlete would steadily take. */
    | { readonly kind: "wild"; readonly done: number; readonly usual: number }
  );

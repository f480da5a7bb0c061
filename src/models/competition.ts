import type { Seconds } from "./quantity.ts";

export type Competition = {
  readonly id: string;
  readonly name: string;
  /** IANA time zone of all its clock times. */
  readonly zone: string;
  /** Local date and time `2026-11-26T18:00`. */
  readonly opens: string;
  readonly closes: string;
  /** Which score counts when a workout is done more than once. */
  readonly counts: "best" | "last" | "first";
  readonly ties: readonly string[];
  /** Movements that may still come. */
  readonly mayCome: readonly string[];
  /** Event rules that prevail, in the organiser's sense and our words. */
  readonly rules: readonly string[];
  readonly barCounts?: "as-weighed" | "15-kg-as-35-lb";
  readonly loading?: "alone" | "help-allowed";
  /** Least rest between two attempts of a lift, and the rest before the first of them, where the workout sets none. */
  readonly liftRest?: Seconds;
  readonly firstLiftAfter?: Seconds;
  readonly briefing?: Seconds;
};

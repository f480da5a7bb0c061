import type { LiftResult } from "../../models/athlete.ts";
import type { Level } from "../../models/vocabulary.ts";
import type { BEST_LIFT_CONSTANTS } from "./best-lift-constants.ts";
import { CAPACITY_FIXED } from "./fixed-constants.ts";

/** How many tries a best is the best of, as far as it tells: one result, two or three, four and more. */
export type KnownBy = "one-result" | "few-results" | "many-results";

/**
 * How much a stated best tells of the strength of a day. A best that a person names is the best of many tries, so the class
 * of lifters with four results or more fits it; somebody new to the sport has not had many, and of a regular only a
 * recent one is taken so. What the coach says of it goes before: a true maximum is the best of many, an easy one is but one
 * result.
 *
 * `results` counts the athlete's results of the lift, `days` is the age of this one.
 */
export function knownBy(
  level: Level,
  { effort }: LiftResult,
  results: number,
  days: number,
  { settledDays }: Readonly<Record<keyof typeof BEST_LIFT_CONSTANTS, number>>,
): KnownBy {
  if (effort === "true-max" || results >= CAPACITY_FIXED.manyResults.value) return "many-results";
  if (effort === "easy") return "one-result";
  if (level === "new") return results === 1 ? "one-result" : "few-results";
  if (level === "regular") return days <= settledDays || results > 1 ? "many-results" : "few-results";
  return "many-results";
}

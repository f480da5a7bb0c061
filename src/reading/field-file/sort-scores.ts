import type { Field, ScoreCounts } from "../../models/field.ts";
import { heaviestLift, LIGHTEST_BARBELL } from "../quantities/plausible.ts";
import { inKilograms, type MassUnit } from "../../models/quantity.ts";

/** One row, understood. */
export type Score =
  | {
      readonly side: "finished" | "capped";
      readonly value: number;
      readonly count: number;
      readonly group?: string;
    }
  | { readonly side: "left-out"; readonly reason: string; readonly count: number; readonly group?: string };

export type Kind = Field["kind"];

/** Counts by value, lowest first; equal values are added up. */
export function countScores(scores: readonly Score[], side: "finished" | "capped"): ScoreCounts {
  const counts = new Map<number, number>();
  for (const score of scores) {
    if (score.side === side) counts.set(score.value, (counts.get(score.value) ?? 0) + score.count);
  }
  return [...counts]
    .map(([value, count]) => ({ value, count }))
    .toSorted((one, other) => one.value - other.value);
}

/** Reasons for leaving out, with how many results each took, in the order met. */
export function countLeftOut(scores: readonly Score[]): Field["leftOut"] {
  const rows = new Map<string, number>();
  for (const score of scores) {
    if (score.side === "left-out") rows.set(score.reason, (rows.get(score.reason) ?? 0) + score.count);
  }
  return [...rows].map(([reason, count]) => ({ reason, rows: count }));
}

/** Why a load is no result: nobody lifts so little or so much. The group may name the lift. */
export function whyNoLoad(value: number, unit: MassUnit, group: string | undefined): string | undefined {
  if (value === 0) return "not given";
  const kilograms = inKilograms({ value, unit });
  if (kilograms < LIGHTEST_BARBELL) return "lighter than any bar";
  return kilograms > heaviestLift(group ?? "") ? "more than anybody has lifted" : undefined;
}

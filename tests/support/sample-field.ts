import type { Field, ScoreCounts } from "../../src/models/field.ts";

/** Scores with how many athletes have each, written `{ 100: 2, 110: 1 }`. */
export const scores = (counts: Readonly<Record<number, number>>): ScoreCounts =>
  Object.entries(counts)
    .map(([value, count]) => ({ value: Number(value), count }))
    .sort((a, b) => a.value - b.value);

/** A field of loads in kilograms, unless said otherwise. */
export const sampleField = (
  finished: Readonly<Record<number, number>>,
  more: Partial<Field> = {},
): Field => ({
  id: "field",
  kind: "load",
  unit: "kg",
  finished: scores(finished),
  capped: [],
  leftOut: [],
  ...more,
});

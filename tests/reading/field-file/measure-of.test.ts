import { expect, it } from "vitest";
import { measureOf } from "../../../src/reading/field-file/measure-of.ts";

it.each([
  ["Max Load (lbs)", { kind: "load", unit: "lb" }],
  ["load_kg", { kind: "load", unit: "kg" }],
  ["kg", { kind: "load", unit: "kg" }],
  ["Weight", { kind: "load" }],
  ["max", { kind: "load" }],
  ["Time (mm:ss)", { kind: "time" }],
  ["finish_time_s", { kind: "time" }],
  ["time in seconds", { kind: "time" }],
  ["Total Reps", { kind: "reps" }],
  ["cals", { kind: "calories" }],
  ["distance (m)", { kind: "metres" }],
  ["Score as published", { kind: "text" }],
  ["total", { kind: "text" }],
  ["value", { kind: "stated-elsewhere" }],
])("the heading %s says what stands below", (heading, measure) => {
  expect(measureOf(heading)).toEqual(measure);
});

it.each(["points", "kg or lb", "reps time", "time (minutes)", "load reps", ""])(
  "the heading %s does not",
  (heading) => {
    expect(measureOf(heading)).toBeUndefined();
  },
);

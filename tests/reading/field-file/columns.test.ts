import { expect, it } from "vitest";
import { findColumns } from "../../../src/reading/field-file/columns.ts";

it("columns are found in any order and under their usual names", () => {
  expect(findColumns(["Number of athletes", "Gender", "Rank", "Load (kg)", "age group"])).toEqual({
    score: { index: 3, measure: { kind: "load", unit: "kg" } },
    groups: [1, 4],
    count: 0,
  });
  expect(findColumns(["result", "value", "count"])).toMatchObject({ kind: 0, score: { index: 1 }, count: 2 });
  expect(findColumns(["event 4"])).toMatchObject({ score: { index: 0, measure: { kind: "text" } } });
});

it("what is not known is named, and percentiles are told apart", () => {
  expect(findColumns(["reps", "name"])).toMatchObject({ unknown: ["name"], percentiles: false });
  expect(findColumns(["time", "load kg"])).toMatchObject({ unknown: ["time", "load kg"], several: true });
  expect(findColumns(["sex", "p5", "p50"])).toMatchObject({ unknown: ["p5", "p50"], percentiles: true });
});

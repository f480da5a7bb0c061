import { expect, it } from "vitest";
import { pathThrough } from "../../src/charts/drawing.ts";

it("a path goes through its points, rounded to thousandths, and closes when asked", () => {
  const points = [
    [0, 0],
    [1.23456, 2],
  ] as const;
  expect([pathThrough(points, false), pathThrough(points, true)]).toEqual(["M0 0L1.235 2", "M0 0L1.235 2Z"]);
});

import { expect, it } from "vitest";
import { moveShape } from "../../src/charts/move-shape.ts";

it("every kind of shape moves by the same", () => {
  expect(moveShape({ kind: "rect", x: 1, y: 2, width: 3, height: 4, fill: "ink" }, 10, 20)).toMatchObject({
    x: 11,
    y: 22,
    width: 3,
  });
  expect(
    moveShape({ kind: "line", x1: 0, y1: 1, x2: 2, y2: 3, stroke: "ink", strokeWidth: 1 }, 10, 20),
  ).toMatchObject({
    x1: 10,
    y1: 21,
    x2: 12,
    y2: 23,
  });
  expect(moveShape({ kind: "path", d: "M0 -1L1.5 2Z", fill: "ink" }, 10, 20)).toMatchObject({
    d: "M10 19L11.5 22Z",
  });
});

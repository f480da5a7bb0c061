import * as fc from "fast-check";
import { expect, it } from "vitest";
import { placeLabels } from "../../src/charts/place-labels.ts";

it("a label is pushed inwards at the edges", () => {
  const placed = placeLabels(
    [
      { x: 0, width: 10, rank: 0 },
      { x: 100, width: 10, rank: 0 },
    ],
    0,
    100,
    1,
  );
  expect([...placed]).toEqual([
    [0, 5],
    [1, 95],
  ]);
});

it("of two that touch, the one of the smaller rank stays; of equal ranks the left one", () => {
  const near = [
    { x: 50, width: 10, rank: 1 },
    { x: 55, width: 10, rank: 0 },
    { x: 60, width: 10, rank: 1 },
  ];
  expect([...placeLabels(near, 0, 100, 1).keys()]).toEqual([1]);
  expect([
    ...placeLabels(
      near.map((label) => ({ ...label, rank: 0 })),
      0,
      100,
      1,
    ).keys(),
  ]).toEqual([0]);
});

it("placed labels never touch and never leave the line", () => {
  const label = fc.record({
    x: fc.double({ min: 0, max: 300, noNaN: true }),
    width: fc.double({ min: 1, max: 60, noNaN: true }),
    rank: fc.integer({ min: 0, max: 3 }),
  });
  fc.assert(
    fc.property(fc.array(label, { maxLength: 30 }), (labels) => {
      const placed = [...placeLabels(labels, 0, 300, 2)]
        .map(([index, centre]) => ({
          left: centre - (labels[index]?.width ?? 0) / 2,
          width: labels[index]?.width ?? 0,
        }))
        .sort((a, b) => a.left - b.left);
      for (const [index, { left, width }] of placed.entries()) {
        expect(left).toBeGreaterThanOrEqual(-1e-9);
        expect(left + width).toBeLessThanOrEqual(300 + 1e-9);
        const next = placed[index + 1];
        if (next) expect(next.left - left - width).toBeGreaterThanOrEqual(2 - 1e-9);
      }
    }),
  );
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { invertPositive } from "../../src/numerics/invert-positive.ts";

describe("the inverse of a positive definite matrix", () => {
  it("is that of two by two as worked by hand", () => {
    // [[4, 2], [2, 3]]: determinant 4 x 3 - 2 x 2 = 8, so the inverse is [[3, -2], [-2, 4]] / 8.
    const inverse = invertPositive([
      [4, 2],
      [2, 3],
    ]);
    expect(inverse?.flat()).toEqual([0.375, -0.25, -0.25, 0.5].map((x) => expect.closeTo(x, 12) as number));
  });

  it("is absent where a direction is not determined", () => {
    expect(
      invertPositive([
        [1, 1],
        [1, 1],
      ]),
    ).toBeUndefined();
    expect(invertPositive([[0]])).toBeUndefined();
    expect(
      invertPositive([
        [1, 2],
        [2, 1],
      ]),
    ).toBeUndefined();
  });

  it("is the inverse of any matrix times its transpose plus one", () => {
    const row = fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(fc.array(row, { minLength: 3, maxLength: 3 }), (rows) => {
        const product = (a: readonly (readonly number[])[], b: readonly (readonly number[])[]) =>
          a.map((one) => b[0]?.map((_, j) => one.reduce((sum, x, k) => sum + x * (b[k]?.[j] ?? 0), 0)) ?? []);
        const turned = rows.map((_, i) => rows.map((one) => one[i] ?? 0));
        const matrix = product(rows, turned).map((one, i) => one.map((x, j) => x + (i === j ? 1 : 0)));
        const identity = product(matrix, invertPositive(matrix) ?? []);
        identity.forEach((one, i) => {
          one.forEach((x, j) => {
            expect(Math.abs(x - (i === j ? 1 : 0))).toBeLessThan(1e-9);
          });
        });
      }),
    );
  });
});

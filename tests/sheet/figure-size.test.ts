import { expect, it } from "vitest";
import { KEY_ARCMINUTES, LEAST_CAPITALS, TEXT_CAPITALS, capitalsFor } from "../../src/sheet/figure-size.ts";

it.each([
  // h = 2 D tan(20'/2): 2 x 1500 x 0.0029089 = 8.727; at 2 m 11.64 and at 3 m 17.45, the usual rows of such tables.
  [1.5, 8.73],
  [2, 11.64],
  [3, 17.45],
])("twenty arcminutes at %d m are capitals of %d mm", (metres, millimetres) => {
  expect(capitalsFor(KEY_ARCMINUTES, metres)).toBeCloseTo(millimetres, 2);
});

it("running text is above the least size", () => {
  expect(TEXT_CAPITALS).toBeGreaterThan(LEAST_CAPITALS);
});

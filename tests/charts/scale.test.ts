import { expect, it } from "vitest";
import { scaleLinear } from "../../src/charts/scale.ts";

it("maps ends to ends and the middle to the middle", () => {
  const scale = scaleLinear([10, 20], [100, 0]);
  expect([scale(10), scale(15), scale(20)]).toEqual([100, 50, 0]);
});

it("maps a domain without width to the middle", () => {
  expect(scaleLinear([5, 5], [0, 10])(5)).toBe(5);
});

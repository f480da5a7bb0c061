import { expect, it } from "vitest";
import { isResultOf } from "../../src/models/loaded-form.ts";
import { sampleLift } from "../support/sample-lifter.ts";

const base = sampleLift({ id: "weighted-pull-up", styleOf: "pull-up" });
const worn = {
  ...base,
  loading: base.loading && { ...base.loading, held: "worn" as const },
  easier: ["strict-pull-up"],
} as typeof base;

it("a load added to a movement of the body is a result of its loaded form, and of nothing else", () => {
  expect(isResultOf({ movement: "weighted-pull-up" }, worn)).toBe(true);
  expect(isResultOf({ movement: "pull-up", added: true }, worn)).toBe(true);
  expect(isResultOf({ movement: "strict-pull-up", added: true }, worn)).toBe(true);
  expect(isResultOf({ movement: "strict-pull-up" }, worn)).toBe(false);
  expect(isResultOf({ movement: "bar-dip", added: true }, worn)).toBe(false);
  expect(isResultOf({ movement: "pull-up", added: true }, base)).toBe(false);
});

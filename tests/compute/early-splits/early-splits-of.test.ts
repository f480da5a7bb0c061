import { expect, it } from "vitest";
import { earlySplitsOf } from "../../../src/compute/early-splits/early-splits-of.ts";
import { fitEarlySplits } from "../../../src/compute/early-splits/fit-early-splits.ts";
import { shapeFrom } from "../../../src/compute/early-splits/shape-from.ts";
import { earlySplitsField } from "../../../src/models/plan/pacing.ts";
import { couplet, performancesBy } from "../../support/early.ts";

const law = { fixed: 12, perRep: 2.5, drift: 0.02, surge: -0.05 };
const amounts = [10, 20, 5, 30, 15];
const course = couplet(amounts);

it("the plan takes over what was told, with the weight of the shape", () => {
  const fit = fitEarlySplits(performancesBy(law, amounts, 6, 0.02, 1), course);
  const value = earlySplitsOf(fit, shapeFrom(fit, course));
  expect(earlySplitsField.parse(value)).toEqual(value);
  expect(value?.perRep).toEqual({ seconds: fit.perRep?.value, error: fit.perRep?.error });
  expect(value?.finishSurge).toEqual({ share: fit.finishSurge?.value, error: fit.finishSurge?.error });
  expect(value?.weight).toBe(shapeFrom(fit, course).weight);
  expect(value?.shape.map(({ round }) => round)).toEqual([1, 2, 3, 4, 5]);
});

it("what was not told is left out and named", () => {
  const equal = couplet([10, 10]);
  const fit = fitEarlySplits(performancesBy(law, [10, 10], 6, 0.02, 1), equal);
  const value = earlySplitsOf(fit, shapeFrom(fit, equal));
  expect(earlySplitsField.parse(value)).toEqual(value);
  expect(Object.keys(value ?? {})).toEqual(["performances", "weight", "notIdentifiable", "shape"]);
});

it("without a performance there is nothing to say", () => {
  const fit = fitEarlySplits([], course);
  expect(earlySplitsOf(fit, shapeFrom(fit, course))).toBeUndefined();
});

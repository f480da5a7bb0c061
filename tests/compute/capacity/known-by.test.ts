import { expect, it } from "vitest";
import { BEST_LIFT_CONSTANTS } from "../../../src/compute/capacity/best-lift-constants.ts";
import { knownBy } from "../../../src/compute/capacity/known-by.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import type { Level } from "../../../src/models/vocabulary.ts";
import { liftResult } from "../../support/sample-lifter.ts";

const constants = withOverrides(BEST_LIFT_CONSTANTS);
const single = liftResult("clean", 100);
const known = (level: Level, results: number, days: number, result = single) =>
  knownBy(level, result, results, days, constants);

it("a stated best is the best of many tries for competitors, and for regulars if it is recent", () => {
  expect(known("competitor", 1, 400)).toBe("many-results");
  expect(known("regular", 1, 180)).toBe("many-results");
  expect(known("regular", 1, 181)).toBe("few-results");
});

it("who is new has one result, or few", () => {
  expect(known("new", 1, 10)).toBe("one-result");
  expect(known("new", 2, 10)).toBe("few-results");
  expect(known("new", 4, 10)).toBe("many-results");
});

it("what the coach says of a result goes before", () => {
  expect(known("new", 1, 10, { ...single, effort: "true-max" })).toBe("many-results");
  expect(known("elite", 1, 10, { ...single, effort: "easy" })).toBe("one-result");
});

import { describe, expect, it } from "vitest";
import { hasOverheadCatch } from "../../../src/compute/capacity/lift-kind.ts";
import { sampleLift } from "../../support/sample-lifter.ts";

describe("a lift", () => {
  it.each(["snatch", "power-snatch", "hang-power-snatch", "dumbbell-snatch"])(
    "%s has an overhead catch",
    (id) => {
      expect(hasOverheadCatch(sampleLift({ id }))).toBe(true);
    },
  );

  it("has one too when it is a style of the snatch", () => {
    expect(hasOverheadCatch(sampleLift({ id: "muscle-lift", styleOf: "snatch" }))).toBe(true);
  });

  it.each(["clean-and-jerk", "back-squat", "deadlift", "overhead-squat"])("%s has none", (id) => {
    expect(hasOverheadCatch(sampleLift({ id }))).toBe(false);
  });
});

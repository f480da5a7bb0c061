import { expect, it } from "vitest";
import { isSameStandard } from "../../../src/compute/set-up/same-standard.ts";

// The event's words on the left, the library's on the right; whether a judge would hear the same rule twice.
it.each([
  ["Hips below knees in every squat; the bell stays off the legs.", "Hip crease below the knee", true],
  ["Chest on the floor and both hands off it; arms straight at the top.", "Both hands leave the floor", true],
  [
    "Hips below knees in every squat; the bell stays off the legs.",
    "Knees and hips straight at the top",
    false,
  ],
  ["The bar starts each set from the floor.", "Back knee touches the floor", false],
])("%s / %s: %s", (own, known, same) => {
  expect(isSameStandard(own, known, ["goblet squat"], ["run"])).toBe(same);
});

it("a standard that names another movement is not this one's", () => {
  const own = "Burpee: chest on the floor, hips straight.";
  expect(isSameStandard(own, "Chest touches the floor", ["push-up"], ["burpee"])).toBe(false);
  expect(isSameStandard(own, "Chest on the floor", ["burpee"], ["push-up"])).toBe(true);
});

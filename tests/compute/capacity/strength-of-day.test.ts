import { expect, it } from "vitest";
import { BEST_LIFT_CONSTANTS } from "../../../src/compute/capacity/best-lift-constants.ts";
import { strengthOfDay } from "../../../src/compute/capacity/strength-of-day.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";

const constants = withOverrides(BEST_LIFT_CONSTANTS);

// Fits to public results: bests under 60 kg 1.029 and 0.068, 60 to 100 kg 1.014 and 0.054, 100 kg and up 0.999 and 0.045.
it.each([
  [45, 1.029, 0.068],
  [80, 1.014, 0.054],
  [150, 0.999, 0.045],
])(
  "over a best of %f kg has the mean and the spread of lifters known by many results",
  (best, mean, spread) => {
    const day = strengthOfDay(best, "many-results", false, constants);
    expect(day.mean).toBeCloseTo(mean, 9);
    expect(day.spread).toBeCloseTo(spread, 9);
  },
);

it("is higher and wider over one result, and over two or three: 1.075 and 0.081, 1.033 and 0.063 over all weights", () => {
  const [one, few, many] = (["one-result", "few-results", "many-results"] as const).map((known) =>
    strengthOfDay(81, known, false, constants),
  );
  expect(one?.mean).toBeCloseTo(1.075, 2);
  expect(few?.mean).toBeCloseTo(1.033, 2);
  expect((one?.spread ?? 0) / (many?.spread ?? 1)).toBeCloseTo(0.081 / 0.048, 2);
  expect((few?.spread ?? 0) / (many?.spread ?? 1)).toBeCloseTo(0.063 / 0.048, 2);
});

it("is wider for lifts caught overhead: 0.055 of 0.048", () => {
  const [snatch, slow] = [true, false].map((overhead) =>
    strengthOfDay(80, "many-results", overhead, constants),
  );
  expect((snatch?.spread ?? 0) / (slow?.spread ?? 1)).toBeCloseTo(0.055 / 0.048, 2);
  expect(snatch?.mean).toBeGreaterThan(slow?.mean ?? 2);
});

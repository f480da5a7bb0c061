import { describe, expect, test } from "vitest";
import { inKilograms } from "../../../src/models/quantity.ts";
import { makeCourse } from "../../support/courses.ts";
import { amrapOf, asMuchIn, demo, demoMovement, forTime, pacedAtDemo } from "../../support/pace-demo.ts";

// The athlete's own result is the expected number.
const EFFORTS = demo.athletes.flatMap((athlete) =>
  athlete.efforts.map((effort) => ({
    athlete,
    effort,
    title: `${effort.amount} ${effort.unit} ${effort.movement} of ${athlete.id}`,
  })),
);

describe("an own max effort planned as a workout", () => {
  test.each(EFFORTS)("returns the time of $title within 2 %", ({ athlete, effort }) => {
    const { amount, unit, load } = effort;
    const kg = load === undefined ? {} : { kg: inKilograms(load) };
    const course = makeCourse([[{ move: demoMovement(effort.movement), amount, unit, ...kg }]]);
    const { target } = pacedAtDemo(athlete, course, forTime).result;
    expect(Math.abs(target / effort.time - 1)).toBeLessThan(0.02);
  });

  // A whole rep more or less is as near as a count can be.
  test.each(EFFORTS.filter(({ effort }) => effort.unit === "reps"))(
    "returns the amount of $title within 2 % or one rep",
    ({ athlete, effort }) => {
      const { amount, time, load } = effort;
      const kg = load === undefined ? {} : { kg: inKilograms(load) };
      const course = asMuchIn(time, demoMovement(effort.movement), kg);
      const { target } = pacedAtDemo(athlete, course, amrapOf(time)).result;
      expect(Math.abs(target - amount)).toBeLessThanOrEqual(Math.max(1, 0.02 * amount));
    },
  );
});

import { expect, it } from "vitest";
import { plainCapacity } from "../../support/capacities.ts";
import { makeCourse } from "../../support/courses.ts";
import { burpee, row } from "../../support/movements.ts";
import { forTime, inputFor, paced } from "../../support/paced.ts";

const speedOf = (lines: Parameters<typeof makeCourse>[0]) =>
  paced(
    inputFor(
      makeCourse(lines),
      forTime,
      plainCapacity({
        burpee: { sustainable: 3.5, kappa: 1.2 },
        row: { sustainable: 0.23, fastest: 0.16, kappa: 3 },
      }),
    ),
  ).pacing.speed;

it("tells where a tenth quicker costs least and most", () => {
  const speed = speedOf([1, 2, 3].map(() => [
    { move: burpee, amount: 15 },
    { move: row, amount: 300 },
  ])); // prettier-ignore
  expect([speed?.cheapest.name, speed?.dearest.name]).toEqual([burpee.name, row.name]);
  // A flywheel asks the cube of its speed: 1.1^2 - 1 = 21 % more for each metre; 1.1^0.2 - 1 = 1.9 % for each burpee.
  expect(speed?.dearest.cost).toBeCloseTo(0.21, 2);
  expect(speed?.cheapest.cost).toBeCloseTo(0.019, 3);
});

it("tells nothing where only one movement is done", () => {
  expect(speedOf([[{ move: burpee, amount: 60 }]])).toBeUndefined();
});

import { describe, expect, it } from "vitest";
import { bestOrder } from "../../../src/compute/pacing/best-order.ts";
import type { Course } from "../../../src/models/course.ts";
import { makeCourse } from "../../support/courses.ts";
import { airSquat, burpee, pullUp, run } from "../../support/movements.ts";

const free = { more: { freeGroup: 1 } } as const;
const pile = makeCourse([
  [
    { move: pullUp, amount: 40, ...free },
    { move: burpee, amount: 50, ...free },
    { move: airSquat, amount: 60, ...free },
    { move: run, amount: 400, ...free },
  ],
]);
const orderOf = ({ items }: Course): string =>
  items.map((item) => (item.kind === "effort" ? item.movement.id : "rest")).join(" ");

/** Loss of a way by how far each movement stands from its place in the best order: by hand, no plan is made. */
const lossBy =
  (...best: readonly string[]) =>
  (way: Course) => ({
    loss:
      way.items.length > 4
        ? 1000
        : orderOf(way)
            .split(" ")
            .reduce((sum, id, at) => sum + 10 * Math.abs(best.indexOf(id) - at), 0),
    clock: 600,
  });

describe("the best order", () => {
  it("of four movements is found by exchanging neighbours, and the others are told with what they cost", () => {
    const { course, told } = bestOrder(pile, lossBy("burpee", "pull-up", "run", "air-squat"));
    expect(orderOf(course)).toBe("burpee pull-up run air-squat");
    expect(told?.decidedBy).toBe("result");
    expect(told?.next?.costs).toBe(20);
  });

  it("of equals is the one whose tie-break is earliest", () => {
    const { course, told } = bestOrder(pile, (way) => ({
      loss: way.items.length > 4 ? 1000 : 600,
      clock: 600,
      tieAt: orderOf(way).startsWith("burpee") ? 200 : 300,
    }));
    expect(orderOf(course).startsWith("burpee")).toBe(true);
    expect(told?.decidedBy).toBe("tie-break");
  });

  it("of work without a choice is the work as it stands, and nothing is told", () => {
    const fixed = makeCourse([[{ move: burpee, amount: 10 }]]);
    expect(bestOrder(fixed, () => ({ loss: 0, clock: 0 }))).toEqual({ course: fixed });
  });
});

import { describe, expect, it } from "vitest";
import { waysOf } from "../../../src/compute/pacing/partitions.ts";
import type { Course } from "../../../src/models/course.ts";
import { type Line, makeCourse } from "../../support/courses.ts";
import { airSquat, burpee, pullUp, run } from "../../support/movements.ts";

const free = (line: Extract<Line, { move: unknown }>): Line => ({ ...line, more: { freeGroup: 1 } });
const chipper = (...amounts: readonly [number, number, number]): Course =>
  makeCourse([
    [{ move: run, amount: 1600 }],
    [
      free({ move: pullUp, amount: amounts[0] }),
      free({ move: burpee, amount: amounts[1] }),
      free({ move: airSquat, amount: amounts[2] }),
    ],
    [{ move: run, amount: 1600 }],
  ]);

/** Amounts of each item of a way. */
const amountsOf = (course: Course): readonly number[] =>
  course.items.map((item) =>
    item.kind === "effort" && item.amount.kind === "counted" ? item.amount.amount : 0,
  );

const partitionsOf = (course: Course): readonly Course[] => waysOf(course).map((way) => way.course);

describe("work in any order", () => {
  it("has no ways where nothing is free", () => {
    const course = makeCourse([[{ move: burpee, amount: 10 }]]);
    expect(waysOf(course)).toEqual([]);
  });

  it("is cut into rounds that divide every amount, written and finely cut among them", () => {
    const ways = partitionsOf(chipper(100, 200, 300));
    // Of 1, 2, 4, 5, 10, 20, 25 rounds (30 does not divide 100) five spread out ones: two runs and three movements a round.
    expect(ways.map((way) => (way.items.length - 2) / 3)).toEqual([1, 4, 5, 20, 25, 1, 1, 1, 1, 1]);
    expect(amountsOf(ways[3] ?? chipper(1, 1, 1)).slice(0, 5)).toEqual([1600, 5, 10, 15, 5]);
  });

  it("keeps the sum of every movement and of the score, whatever does not divide", () => {
    for (const way of partitionsOf(chipper(17, 31, 43))) {
      const sums = new Map<string, number>();
      let score = 0;
      for (const item of way.items) {
        if (item.kind !== "effort" || item.amount.kind !== "counted") continue;
        sums.set(item.movement.id, (sums.get(item.movement.id) ?? 0) + item.amount.amount);
        score += item.scores;
      }
      expect([...sums.values()].sort((a, b) => a - b)).toEqual([17, 31, 43, 3200]);
      expect(score).toBeCloseTo(3200 + 91, 9);
    }
  });

  it("is done one after the other in each of the six orders of three movements, as written first", () => {
    const whole = partitionsOf(chipper(17, 31, 43)).filter((way) => way.items.length === 5);
    const orders = whole.map((way) => amountsOf(way).slice(1, 4).join("-"));
    expect(orders[0]).toBe("17-31-43");
    expect([...orders].sort()).toEqual([
      "17-31-43",
      "17-43-31",
      "31-17-43",
      "31-43-17",
      "43-17-31",
      "43-31-17",
    ]);
  });

  it("counts its rounds on, also after it", () => {
    const ways = partitionsOf(chipper(100, 200, 300));
    const rounds = (ways[1] ?? chipper(1, 1, 1)).items.map((item) => item.pass.round);
    expect(rounds).toEqual([1, 2, 2, 2, 3, 3, 3, 4, 4, 4, 5, 5, 5, 6]);
  });
});

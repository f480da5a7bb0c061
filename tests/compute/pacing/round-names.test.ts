import { describe, expect, it } from "vitest";
import { roundNames } from "../../../src/compute/pacing/round-names.ts";
import type { CourseItem } from "../../../src/models/course.ts";
import { inOrder, waysOf } from "../../../src/compute/pacing/partitions.ts";
import { makeCourse } from "../../support/courses.ts";
import { airSquat, burpee, run } from "../../support/movements.ts";

/** A course with the given rounds, those marked standing beside the others. */
function withAside(rounds: number, aside: readonly number[]): readonly CourseItem[] {
  const course = makeCourse(Array.from({ length: rounds }, () => [{ move: burpee, amount: 10 }]));
  return course.items.map((item) =>
    aside.includes(item.pass.round) ? { ...item, pass: { ...item.pass, aside: true } } : item,
  );
}
const labels = (items: readonly CourseItem[]): readonly string[] =>
  [...roundNames(items).values()].map(({ label }) => label);

describe("what a reader calls the rounds", () => {
  it("counts them without what stands before, between and after them", () => {
    expect(labels(withAside(5, [1, 5]))).toEqual(["in", "1", "2", "3", "out"]);
    expect(labels(withAside(4, [2]))).toEqual(["1", "mid", "2", "3"]);
    expect(roundNames(withAside(5, [1, 5])).get(2)?.number).toBe(1);
  });

  it("counts everything where there is nothing else", () => {
    expect(labels(withAside(3, [1, 2, 3]))).toEqual(["1", "2", "3"]);
  });

  it("counts the rounds free work is cut into, beside the lines before and after it", () => {
    const more = { freeGroup: 1 } as const;
    const one = makeCourse([
      [
        { move: run, amount: 800 },
        { move: burpee, amount: 20, more },
        { move: airSquat, amount: 40, more },
        { move: run, amount: 800 },
      ],
    ]);
    const items = one.items.map((item) => ({ ...item, pass: { ...item.pass, aside: true as const } }));
    const ways = waysOf({ ...one, items });
    const five = ways.find(({ rounds }) => rounds === 5);
    if (!five) throw new Error("20 and 40 go into five rounds");
    expect(labels(five.course.items)).toEqual(["in", "1", "2", "3", "4", "5", "out"]);
    expect(labels(inOrder({ ...one, items }, five.members).course.items)).toEqual(["1"]);
  });
});

import { describe, expect, it } from "vitest";
import { rulesFor } from "../../../src/compute/motion/rules.ts";
import { tasksOf, type TrackTask } from "../../../src/compute/motion/track-task.ts";
import { transitionTo } from "../../../src/compute/pacing/transition.ts";
import type { CourseEffort } from "../../../src/models/course.ts";
import { metres, seconds } from "../../../src/models/quantity.ts";
import { plainCapacity } from "../../support/capacities.ts";
import { makeCourse } from "../../support/courses.ts";
import { burpee, pullUp, row, thruster } from "../../support/movements.ts";

const capacity = plainCapacity({ burpee: { sustainable: 4 } });
const rules = rulesFor(capacity);
const taskOf = tasksOf(capacity, undefined);
const floor = { between: metres(7) };

const effortAt = (course: ReturnType<typeof makeCourse>, i: number): CourseEffort => {
  const item = course.items[i];
  if (item?.kind !== "effort") throw new Error("no effort");
  return item;
};
const taskAt = (effort: CourseEffort): TrackTask => {
  const task = taskOf(effort);
  if ("missing" in task) throw new Error(task.missing.kind);
  return task;
};

/** Seconds from the first to the second line of a round. */
function change(lines: Parameters<typeof makeCourse>[0][number], more = {}, as = rules): number {
  const course = makeCourse([lines]);
  const [before, now] = [effortAt(course, 0), effortAt(course, 1)];
  return transitionTo({ task: taskAt(now), effort: now }, { item: before, task: taskAt(before) }, as, {
    ...floor,
    ...more,
  });
}

describe("a transition", () => {
  it("is the way between the stations and the movement's set-up", () => {
    // 7 m at 1.4 m/s are 5 s, chalk and jump to the bar 2 s.
    expect(change([{ move: burpee, amount: 10 }, { move: pullUp, amount: 5 }])).toBeCloseTo(7, 9); // prettier-ignore
  });

  it("to an erg also loses the first strokes", () => {
    // 5 s of way, 6 s to strap in, 3 s of spinning up.
    expect(change([{ move: burpee, amount: 10 }, { move: row, amount: 500 }])).toBeCloseTo(14, 9); // prettier-ignore
  });

  it("is quicker for who is used to it", () => {
    const elite = rulesFor({ ...capacity, level: "elite" });
    const lines = [{ move: burpee, amount: 10 }, { move: pullUp, amount: 5 }] as const; // prettier-ignore
    expect(change(lines, {}, elite)).toBeCloseTo(0.75 * 7, 9);
  });

  it("takes nothing when the same work goes on, inside a complex, at the start and after a rest", () => {
    expect(change([{ move: burpee, amount: 10 }, { move: burpee, amount: 10 }])).toBe(0); // prettier-ignore
    const joined = { move: thruster, amount: 1, kg: 43, more: { joinedToNext: true } };
    expect(change([joined, { move: pullUp, amount: 1 }])).toBe(0);
    const course = makeCourse([[{ move: pullUp, amount: 5 }]]);
    const first = effortAt(course, 0);
    expect(
      transitionTo(
        { task: taskAt(first), effort: first },
        { item: undefined, task: undefined },
        rules,
        floor,
      ),
    ).toBe(0);
    const rested = makeCourse([
      [{ rest: { kind: "exactly", time: seconds(30) } }, { move: pullUp, amount: 5 }],
    ]);
    const after = effortAt(rested, 1);
    expect(
      transitionTo(
        { task: taskAt(after), effort: after },
        { item: rested.items[0], task: taskAt(first) },
        rules,
        floor,
      ),
    ).toBe(0);
  });

  it("to another load of the same bar takes no time of its own: plates are changed in a row of theirs", () => {
    const lines = [{ move: thruster, amount: 5, kg: 40 }, { move: thruster, amount: 5, kg: 50 }] as const; // prettier-ignore
    expect(change(lines)).toBe(0);
  });

  it("moves towards what early performances showed, by their weight", () => {
    const shape = { weight: 0.25, relativeByRound: [], transition: seconds(11) };
    // 7 + 0.25 x (11 - 7) = 8.
    expect(change([{ move: burpee, amount: 10 }, { move: pullUp, amount: 5 }], { shape })).toBeCloseTo(8, 9); // prettier-ignore
  });
});

import { expect, it } from "vitest";
import { roundWork } from "../../../src/compute/early-splits/round-work.ts";
import { seconds } from "../../../src/models/quantity.ts";
import { makeAmrap, makeCourse } from "../../support/courses.ts";
import { couplet } from "../../support/early.ts";
import { burpee, pullUp, thruster } from "../../support/movements.ts";

it("work is seconds at reference paces, so that in a ladder it goes as the reps do", () => {
  // Pull-ups at 4 s and burpees at 4.75 s: 8.75 s for one of each.
  const rounds = roundWork(couplet([21, 15, 9]));
  expect(rounds.map(({ work }) => work)).toEqual([21 * 8.75, 15 * 8.75, 9 * 8.75]);
  expect(rounds.map(({ reps }) => reps)).toEqual([42, 30, 18]);
  expect(new Set(rounds.map(({ likeness }) => likeness)).size).toBe(1);
});

it("the first round has one change of station less, and only work with an end has a last round", () => {
  expect(roundWork(couplet([5, 5, 5])).map(({ arrivals, last }) => [arrivals, last])).toEqual([
    [1, false],
    [2, false],
    [2, true],
  ]);
  expect(roundWork(makeAmrap([{ move: burpee, amount: 5 }], 600, 3)).some(({ last }) => last)).toBe(false);
});

it("no change of station follows a rest", () => {
  const rest = { rest: { kind: "exactly" as const, time: seconds(30) } };
  const course = makeCourse([[{ move: pullUp, amount: 5 }, rest, { move: burpee, amount: 5 }]]);
  expect(roundWork(course)[0]?.arrivals).toBe(0);
});

it("rounds at other loads or of other movements are not alike", () => {
  const course = makeCourse([
    [{ move: thruster, amount: 10, kg: 40 }],
    [{ move: thruster, amount: 10, kg: 50 }],
    [{ move: thruster, amount: 5, kg: 50 }],
    [{ move: burpee, amount: 10 }],
  ]);
  const [first, second, third, fourth] = roundWork(course).map(({ likeness }) => likeness);
  expect(second).toBe(third);
  expect(new Set([first, second, fourth]).size).toBe(3);
});

it("metres and calories are work without reps, and as much as possible is no fixed amount", () => {
  const course = makeCourse([
    [
      { move: burpee, amount: 10 },
      { move: { ...burpee, id: "run", counts: ["metres"] }, amount: 200 },
    ],
    [{ move: burpee, amount: { kind: "for", time: seconds(60) } }],
  ]);
  const [first, second] = roundWork(course);
  // 10 and 200 units at 4.75 s.
  expect(first).toMatchObject({ work: 997.5, repWork: 47.5, reps: 10, fixed: true });
  expect(second?.fixed).toBe(false);
});

import { describe, expect, it } from "vitest";
import { EXPECTED_DAY, keepAsPlan, runDay } from "../../../src/compute/search/day.ts";
import { rulesFor } from "../../../src/compute/motion/rules.ts";
import { solveCourse } from "../../../src/compute/pacing/solve-course.ts";
import type { Solved } from "../../../src/compute/search/solve-part.ts";
import type { Course } from "../../../src/models/course.ts";
import { seconds } from "../../../src/models/quantity.ts";
import type { Score } from "../../../src/models/workout.ts";
import { plainCapacity } from "../../support/capacities.ts";
import { makeAmrap, makeCourse } from "../../support/courses.ts";
import { burpee, pullUp, row, run } from "../../support/movements.ts";
import { forReps, forTime, inputFor } from "../../support/paced.ts";

const capacity = plainCapacity(
  {
    burpee: { sustainable: 4.2, fastest: 2.3, kappa: 1.7, unbroken: 40 },
    "pull-up": { sustainable: 2.6, fastest: 1.3, kappa: 2.2, unbroken: 18, held: true },
    row: { sustainable: 0.24, fastest: 0.18, kappa: 3 },
    run: { sustainable: 0.27, fastest: 0.16, kappa: 2 },
  },
  { reserve: seconds(60) },
);

function solved(course: Course, score: Score): Solved {
  const found = solveCourse(inputFor(course, score, capacity), rulesFor(capacity));
  if ("missing" in found) throw new Error("missing");
  keepAsPlan(found.solved.bench, found.solved.log, found.solved.state.at);
  return found.solved;
}

const COURSES: readonly (readonly [string, Course, Score])[] = [
  ["a single run", makeCourse([[{ move: run, amount: 2000 }]]), forTime],
  [
    "rounds of three movements",
    makeCourse(
      [1, 2, 3].map(() => [
        { move: row, amount: 400 },
        { move: burpee, amount: 15 },
        { move: pullUp, amount: 12 },
      ]),
    ),
    forTime,
  ],
  ["an AMRAP", makeAmrap([{ move: burpee, amount: 10 }, { move: pullUp, amount: 8 }], 600), forReps], // prettier-ignore
];

describe("a plan followed on the expected day", () => {
  it.each(COURSES)("gives its own clock and score again: %s", (_name, course, score) => {
    const plan = solved(course, score);
    const { bench, choice, state } = plan;
    const day = runDay(bench, choice.plan, EXPECTED_DAY, 0, false);
    expect(day.clock / state.clock).toBeCloseTo(1, 3);
    expect(day.score / state.score).toBeCloseTo(1, 3);
    // Drift and finish inside a stretch are followed as straight lines, so the reserve comes back within two points.
    expect(Math.abs(day.fast + day.slow - state.fast - state.slow) / 60).toBeLessThan(0.02);
  });

  it.each(COURSES)("changes nothing for who feels just what was expected: %s", (_name, course, score) => {
    const { bench, choice } = solved(course, score);
    const blind = runDay(bench, choice.plan, EXPECTED_DAY, 0, false);
    const feeling = runDay(bench, choice.plan, EXPECTED_DAY, 0, true);
    expect(feeling.clock / blind.clock).toBeCloseTo(1, 2);
  });
});

describe("a plan followed on another day", () => {
  it("ends later on a bad day, sooner on a good one, because what is felt turns into pace", () => {
    const { bench, choice, state } = solved(...(COURSES[1]?.slice(1) as [Course, Score]));
    const clock = (form: number): number => runDay(bench, choice.plan, { form, reserveForm: 1 }, 0).clock;
    expect(clock(0.96)).toBeGreaterThan(state.clock * 1.01);
    expect(clock(1.04)).toBeLessThan(state.clock * 0.995);
  });

  it("costs more than it gains: a day 4 % worse loses more than a day 4 % better wins", () => {
    for (const [, course, score] of COURSES.slice(0, 2)) {
      const { bench, choice, state } = solved(course, score);
      const clock = (form: number): number => runDay(bench, choice.plan, { form, reserveForm: 1 }, 0).clock;
      expect(clock(0.96) - state.clock).toBeGreaterThan(state.clock - clock(1.04));
    }
  });
});

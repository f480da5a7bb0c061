import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { makePlan } from "../../../src/compute/make-plan.ts";
import { type Line, makeCourse } from "../../support/courses.ts";
import {
  amrapOf,
  asMuchIn,
  demo,
  demoBand,
  demoMovement,
  forTime,
  pacedAtDemo,
} from "../../support/pace-demo.ts";
import { soundWorkout } from "../../support/workout-notation.ts";

// Open results of an online qualifier in 2012, as many burpees to a target as possible in 7 minutes (24,452 men, 13,915 women with a
// score): men's 15th, 50th, 90th and 99th percentile 79, 98, 118 and 132 reps, women's 50th, 90th and 99th 87, 107 and 122. That
// a regular athlete is the median, a new one the 15th, a competitor the 90th and an elite one the 99th, is our judgement. Men's
// 40th and 60th percentile lie about 4 % from the median.
const QUALIFIER = [
  { id: "new-men", reps: 79 },
  { id: "regular-men", reps: 98 },
  { id: "regular-women", reps: 87 },
  { id: "competitor-men", reps: 118 },
  { id: "competitor-women", reps: 107 },
  { id: "elite-men", reps: 132 },
  { id: "elite-women", reps: 122 },
] as const;

describe("burpees to a target for seven minutes", () => {
  test.each(QUALIFIER)(
    "are planned for $id within 4.5 % of the $reps of thousands of results",
    ({ id, reps }) => {
      const course = asMuchIn(420, demoMovement("burpee-to-target"));
      const { target } = pacedAtDemo(demoBand(id), course, amrapOf(420)).result;
      expect(target / reps).toBeGreaterThan(0.955);
      expect(target / reps).toBeLessThan(1.045);
    },
  );
});

// Race of eight kilometres run with a station after each, about 800,000 results, aggregate: from the first kilometre to the level of the
// third to seventh the best twentieth slows by 10 %, to the last by 18 %; the middle slows by 28 % from the first to the last (283 to
// 361 s), the slowest fifth by 48 % (331 to 491 s). What is observed holds bad pacing, so a plan should slow by less.
const RACE = [
  { ids: ["new-men", "new-women"], observed: 0.48 },
  { ids: ["regular-men", "regular-women"], observed: 0.28 },
] as const;

/** Seconds of each of eight kilometres run, with a kilometre rowed after each: more than an hour. */
function kilometres(id: string): readonly number[] {
  const round: readonly Line[] = [
    { move: demoMovement("run"), amount: 1000, unit: "metres" },
    { move: demoMovement("row"), amount: 1000, unit: "metres" },
  ];
  const pacing = pacedAtDemo(demoBand(id), makeCourse(Array.from({ length: 8 }, () => round)), forTime);
  expect(pacing.duration).toBeGreaterThan(3600);
  return pacing.rows.filter((row) => row.movement === "run").map(({ start, end }) => end - start);
}

const slowing = (id: string): number => {
  const runs = kilometres(id);
  return (runs.at(-1) ?? NaN) / (runs[0] ?? NaN) - 1;
};

describe("eight equal segments of more than an hour", () => {
  test.each(RACE.flatMap(({ ids, observed }) => ids.map((id) => ({ id, observed }))))(
    "are planned for $id with a slowing between the best twentieth's and the one observed",
    ({ id, observed }) => {
      expect(slowing(id)).toBeGreaterThan(0.1);
      expect(slowing(id)).toBeLessThan(observed);
    },
  );

  test("slow less the better the athlete", () => {
    for (const sex of ["men", "women"]) {
      const all = ["new", "regular", "competitor", "elite"].map((level) => slowing(`${level}-${sex}`));
      expect(all).toEqual([...all].sort((a, b) => b - a));
    }
  });
});

// Open results of qualifiers, done as prescribed: tenth (women of w24: twenty-fifth) and ninetieth percentile of 160,976 men,
// 144,505 men, 32,130 women, and women of one more season. That a regular athlete lies between them is our judgement.
const WHOLE = [
  { workout: "w12", id: "regular-men", low: 78, high: 135 },
  { workout: "w13", id: "regular-men", low: 39, high: 95 },
  { workout: "w14", id: "regular-women", low: 100, high: 158 },
  { workout: "w24", id: "regular-women", low: 31, high: 77 },
] as const;

describe("whole workouts with nothing known but the level", () => {
  test.each(WHOLE)(
    "$workout is planned for $id between $low and $high reps",
    ({ workout, id, low, high }) => {
      const text = readFileSync(new URL(`../../cases/workouts/${workout}.mdx`, import.meta.url), "utf8");
      const plan = makePlan({
        athlete: demoBand(id),
        workout: soundWorkout(text.replace(/^---\n/, "").replace(/\n---\n$/, "")),
        data: demo,
        date: "2026-11-26",
      });
      const reps = plan.parts[0]?.pacing?.result.target ?? 0;
      expect(reps).toBeGreaterThan(low);
      expect(reps).toBeLessThan(high);
    },
  );
});

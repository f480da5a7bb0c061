import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { courseOf, effortsIn, sayCourse, soundWorkout, type ForWhom } from "../support/workout-notation.ts";

type Case = {
  readonly title: string;
  readonly written: string;
  readonly athlete?: ForWhom;
  readonly all?: readonly string[];
  readonly first?: readonly string[];
  readonly also?: Readonly<Record<string, unknown>> & { readonly deadlines?: readonly number[] };
};
const file = new URL("made-up-workouts.yaml", import.meta.url);
const cases = parse(readFileSync(file, "utf8")) as readonly Case[];

describe("workouts made up to be as broad as real ones", () => {
  it("are many", () => {
    expect(cases.length).toBeGreaterThanOrEqual(30);
  });

  it.each(cases.map((one) => [one.title, one] as const))("%s", (_title, { written, athlete, all, first, also }) => {
    const course = courseOf(soundWorkout(written), athlete);
    const said = sayCourse(course);
    if (all !== undefined) expect(said).toEqual(all);
    if (first !== undefined) expect(said.slice(0, first.length)).toEqual(first);
    const { deadlines, ...facts } = also ?? {};
    expect(course).toMatchObject(facts);
    expect(course.endless).toBe(facts["endless"] ?? false);
    expect(course.totalScore).toBe(facts["totalScore"]);
    expect(course.ends).toBe(facts["ends"]);
    if (deadlines !== undefined) {
      expect(effortsIn(course).map((effort) => effort.deadline?.clock)).toEqual(deadlines);
    }
  });
});

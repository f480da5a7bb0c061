import { describe, expect, it } from "vitest";
import type { Data } from "../../src/models/data.ts";
import type { Workout } from "../../src/models/workout.ts";
import { seenMark } from "../../src/site/seen-mark.ts";

const workout = { id: "long-quay", early: [{ athlete: "bo" }], fields: [] } as unknown as Workout;
const who = (id: string, mass: number, ...done: readonly string[]) => ({
  id,
  mass,
  results: done.map((each) => ({ workout: each })),
});
const dataOf = (...athletes: readonly ReturnType<typeof who>[]) =>
  ({
    athletes,
    bands: [],
    gyms: new Map(),
    competitions: new Map(),
    fields: new Map(),
    workouts: [],
  }) as unknown as Data;

describe("the mark of what was seen of a workout", () => {
  const before = seenMark(workout, dataOf(who("ana", 60, "long-quay"), who("Bo", 70), who("cy", 80)));

  it("is another where somebody who did it is, logged or noted early", () => {
    expect(seenMark(workout, dataOf(who("ana", 61, "long-quay"), who("Bo", 70), who("cy", 80)))).not.toBe(
      before,
    );
    expect(seenMark(workout, dataOf(who("ana", 60, "long-quay"), who("Bo", 71), who("cy", 80)))).not.toBe(
      before,
    );
    expect(
      seenMark(workout, dataOf(who("ana", 60, "long-quay"), who("Bo", 70), who("cy", 80, "long-quay"))),
    ).not.toBe(before);
  });

  it("stays where somebody is another who did not", () => {
    expect(
      seenMark(workout, dataOf(who("ana", 60, "long-quay"), who("Bo", 70), who("cy", 81, "tide-mill"))),
    ).toBe(before);
  });
});

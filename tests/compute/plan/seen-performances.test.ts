import { describe, expect, it } from "vitest";
import { makePlan } from "../../../src/compute/make-plan.ts";
import { makeStrategy } from "../../../src/compute/make-strategy.ts";
import { seenPerformances } from "../../../src/compute/plan/seen-performances.ts";
import type { Athlete, LoggedResult } from "../../../src/models/athlete.ts";
import type { Data } from "../../../src/models/data.ts";
import { seconds } from "../../../src/models/quantity.ts";
import type { EarlyPerformance, Workout } from "../../../src/models/workout.ts";
import { createRandom } from "../../../src/numerics/random.ts";
import { demoData } from "../../support/demo-data.ts";
import {
  BY_LEVEL,
  clocksOfLines,
  noted,
  off,
  person,
  plannedWith,
  trulyDone,
} from "../../support/hard-world.ts";

const data = demoData();
const date = "2026-11-25";
const workoutOf = (id: string): Workout => {
  const found = data.workouts.find((one) => one.id === id);
  if (!found) throw new Error(`the demonstration has ${id}`);
  return { ...found, early: [] };
};
const long = workoutOf("long-quay");
/** The ladder alone, without the bar after it. */
const ladder: Workout = { ...workoutOf("lamp-oil"), parts: workoutOf("lamp-oil").parts.slice(0, 1) };
const bandOf = (id: string): Athlete => {
  const found = data.bands.find((one) => one.id === id);
  if (!found) throw new Error(`the demonstration has ${id}`);
  return found.profile;
};
const others = ["competitor-men", "competitor-women"].map(bandOf);
const none = new Map<string, number>();

/** Performances of people of known level in a workout that asks so much more time than the model has. */
function performances(all: number, count: number, seed: number, bad = 0): readonly EarlyPerformance[] {
  const random = createRandom(seed);
  const movements = ["dumbbell-box-step-up", "hand-release-push-up"];
  return Array.from({ length: count }, (_, at) => {
    const body = bandOf(["competitor-men", "elite-men"][at % 2] ?? "");
    const done = trulyDone(body, ladder, data, { all, movements: none }, person(movements, BY_LEVEL, random));
    const day = Math.exp(0.05 * random.normal() + (at === 0 ? bad : 0));
    const clocks = done ? clocksOfLines(done, day, 0.04, random) : [];
    return noted(clocks, { level: body.level, division: "men" }, "a");
  });
}

/** Mean error of everybody else's plan. */
function errorWith(all: number, early: readonly EarlyPerformance[]): number {
  const errors = others.flatMap((athlete) => {
    const truth = trulyDone(athlete, ladder, data, { all, movements: none });
    const one = off(plannedWith(athlete, ladder, data, early).pacing, truth);
    return one === undefined ? [] : [Math.abs(one)];
  });
  return errors.reduce((sum, error) => sum + error, 0) / errors.length;
}

describe("a workout that is 15 % harder than the model has it", () => {
  const seeds = [1, 2];
  const seen = seeds.map((seed) => performances(0.15, 10, seed));
  const mean = (count: number): number =>
    seen.reduce((sum, early) => sum + errorWith(0.15, early.slice(0, count)), 0) / seen.length;

  it("is planned better after one early performance, better still after three and ten", () => {
    const [unseen = 0, one, three, ten] = [0, 1, 3, 10].map(mean);
    expect(unseen).toBeGreaterThan(0.12);
    expect(one).toBeLessThan(0.9 * unseen);
    expect(three).toBeLessThan(0.7 * unseen);
    expect(ten).toBeLessThan(0.4 * unseen);
  });

  it("a single bad day of an early performance moves nobody's plan by much more than a fifth, whatever it was", () => {
    for (const bad of [-0.7, 0.4, 0.9]) expect(errorWith(0, performances(0, 1, 4, bad))).toBeLessThan(0.21);
  });
});

/** An athlete of the demonstration with a time of the workout that is so much longer than planned. */
function resultOf(athlete: Athlete, longer: number): LoggedResult {
  const target = makePlan({ athlete, workout: long, data, date }).parts[0]?.pacing?.result.target ?? 0;
  return {
    workout: long.id,
    part: "a",
    time: seconds(target * longer),
    splits: [],
    attempts: [],
    version: "prescribed",
  };
}

describe("who counts for whom", () => {
  const [one, other, third] = data.athletes.filter(
    (athlete) => makePlan({ athlete, workout: long, data, date }).parts[0]?.pacing?.score === "time",
  );
  if (!one || !other || !third) throw new Error("the demonstration has three who finish");
  const withResults = (...done: readonly Athlete[]): Data => ({
    ...data,
    athletes: data.athletes.map((athlete) =>
      done.includes(athlete) ? { ...athlete, results: [resultOf(athlete, 1.15)] } : athlete,
    ),
  });
  const difficultyFor = (athlete: Athlete, known: Data, workout = long) =>
    makePlan({
      athlete: known.athletes.find(({ id }) => id === athlete.id) ?? athlete,
      workout,
      data: known,
      date,
    }).parts[0]?.pacing?.difficulty;

  it("results of those who have done it make the plans of those who have not slower", () => {
    const seen = difficultyFor(third, withResults(one, other));
    expect(seen).toMatchObject({ results: 2, early: 0 });
    expect(seen?.moved).toBeGreaterThan(0.04);
  });

  it("who has done it keeps the plan their result is held against", () => {
    expect(difficultyFor(one, withResults(one, other))).toBeUndefined();
  });

  it("an early performance of an athlete who also logged it is counted once, and never for themselves", () => {
    const time = resultOf(one, 1.15).time;
    const early: EarlyPerformance = { ...noted([], { athlete: one.id }, "a"), ...(time && { time }) };
    const workout = { ...long, early: [early] };
    const known = withResults(one);
    expect(seenPerformances(workout, known, date)).toHaveLength(1);
    expect(difficultyFor(third, known, workout)).toMatchObject({ early: 1, results: 0 });
    expect(difficultyFor(one, known, workout)).toBeUndefined();
  });

  it("who did the work of another division is held against that work", () => {
    const { time } = resultOf(one, 1);
    // Women's loads are lighter: whoever did them in the time of the men's took longer than was to be expected.
    const [asMen = 0, asWomen = 0] = ["men", "women"].map((division) => {
      const early: EarlyPerformance = {
        ...noted([], { athlete: one.id, division }, "a"),
        ...(time && { time }),
      };
      const [seen] = seenPerformances({ ...long, early: [early] }, data, date);
      return seen?.slower.value ?? Number.NaN;
    });
    expect(one.sex).toBe("male");
    expect(asMen).toBeCloseTo(0, 2);
    expect(asWomen).toBeGreaterThan(asMen + 0.02);
  });

  it("nothing of an athlete's performance is on the public page", () => {
    const early = noted([100, 200, 300], { athlete: one.id }, "a");
    const of = (performed: readonly EarlyPerformance[]): string =>
      JSON.stringify(
        makeStrategy({ workout: { ...long, early: performed }, data: withResults(other), date }),
      );
    expect(of([early])).toBe(of([]));
  });

  it("somebody whom nobody knows teaches no difficulty", () => {
    expect(seenPerformances({ ...long, early: [noted([100, 200], {}, "a")] }, data, date)).toEqual([]);
  });
});

import { describe, expect, it } from "vitest";
import { learnedCapacity } from "../../../src/compute/capacity/learned-capacity.ts";
import { learnedFrom } from "../../../src/compute/plan/learned-from.ts";
import { planParts } from "../../../src/compute/plan/plan-parts.ts";
import { settle } from "../../../src/compute/plan/settle.ts";
import type { Athlete, LoggedResult } from "../../../src/models/athlete.ts";
import { seconds } from "../../../src/models/quantity.ts";
import type { Workout } from "../../../src/models/workout.ts";
import { createRandom } from "../../../src/numerics/random.ts";
import { demoData } from "../../support/demo-data.ts";

const data = demoData();
const date = "2026-11-29";
const workouts = data.workouts.filter(({ parts }) => parts[0]?.clock.kind !== "max-load");

/** Target of the first part and clocks of its rounds, in seconds or units. */
function planned(athlete: Athlete, workout: Workout, paces?: Parameters<typeof settle>[4]) {
  const { context } = settle(athlete, workout, data, date, paces);
  return planParts(workout, context)[0]?.plan.pacing;
}

/**
 * What somebody really does whose body differs from what is known: the plan of that body, on a day that is 4 % better or worse, its clocks
 * told by round.
 */
function doneBy(
  athlete: Athlete,
  workout: Workout,
  truth: NonNullable<Parameters<typeof settle>[4]>,
  day: number,
): LoggedResult | undefined {
  const { context } = settle(athlete, workout, data, date);
  const real = planParts(workout, { ...context, capacity: learnedCapacity(context.capacity, truth) })[0]
    ?.plan;
  const pacing = real?.pacing;
  if (!real || !pacing) return undefined;
  const target = pacing.result.target;
  const splits = pacing.rounds.length > 1 ? roundEnds(pacing).map((end) => seconds(end * day)) : [];
  return {
    workout: workout.id,
    part: real.name,
    ...(pacing.score === "time" || pacing.score === "slowest-interval"
      ? { time: seconds(target * day) }
      : { reps: Math.round(target / day) }),
    splits,
    attempts: [],
    version: "prescribed",
  };
}

/** Clock at the last line of work of each round. */
const roundEnds = ({ rounds, rows }: NonNullable<ReturnType<typeof planned>>): readonly number[] =>
  rounds.flatMap(
    ({ round }) => rows.findLast((row) => row.kind === "work" && row.round === round)?.end ?? [],
  );

/** Mean of how far the fourth workout is off, as a logarithm, before and after three were logged, over seeded bodies. */
function errors(athlete: Athlete, doubt: number): { readonly before: number; readonly after: number } {
  const random = createRandom(5);
  const before: number[] = [];
  const after: number[] = [];
  const [fourth, ...others] = workouts;
  if (!fourth) throw new Error("the demonstration has workouts without a lift");
  const bodies = 16;
  for (let body = 0; body < bodies; body += 1) {
    const truth = {
      shared: { value: doubt * random.normal(), error: 0.001 },
      movements: new Map<string, { value: number; error: number }>(),
      unknownError: 0.1,
    };
    const results = others.slice(0, 3).flatMap((workout) => {
      const done = doneBy(athlete, workout, truth, Math.exp(0.04 * random.normal()));
      return done ? [done] : [];
    });
    const real = doneBy(athlete, fourth, truth, 1);
    const learned = learnedFrom({ ...athlete, results }, fourth, data, date);
    const plain = planned(athlete, fourth);
    const taught = planned(learned.athlete, fourth, learned.paces);
    const isTime = real?.time !== undefined;
    // A plan that a cap turns from a time into reps cannot be set beside a time.
    if ([plain, taught].some((one) => (one?.score === "time") !== isTime)) continue;
    const off = (target = 1): number => Math.abs(Math.log(target / (real?.time ?? real?.reps ?? 1)));
    before.push(off(plain?.result.target));
    after.push(off(taught?.result.target));
  }
  expect(before.length).toBeGreaterThan(0.7 * bodies);
  const mean = (offs: readonly number[]): number => offs.reduce((sum, one) => sum + one, 0) / offs.length;
  return { before: mean(before), after: mean(after) };
}

const known = data.athletes[0];
if (!known) throw new Error("the demonstration has athletes");
const levelOnly: Athlete = { ...known, lifts: [], efforts: [], unbroken: [], limits: [], results: [] };

describe("learning from three logged workouts", () => {
  it("takes a third and more off the error on a fourth, where only the level was known", () => {
    // Athletes of one level differ by 13 % (place within their level in open fields).
    const { before, after } = errors(levelOnly, 0.13);
    expect(before).toBeGreaterThan(0.04);
    expect(after).toBeLessThan((2 / 3) * before);
  });

  it("does not make it worse by a tenth where the athlete was well known", () => {
    const { before, after } = errors(known, 0.03);
    expect(after).toBeLessThan(1.1 * before + 0.003);
  });
});

describe("what is learnt", () => {
  const [first, second] = workouts;
  if (!first || !second) throw new Error("the demonstration has workouts without a lift");
  const fast = doneBy(
    levelOnly,
    second,
    { shared: { value: -0.2, error: 0.001 }, movements: new Map(), unknownError: 0.1 },
    1,
  );

  it("comes from other workouts only, up to the day, done as prescribed", () => {
    if (!fast) throw new Error("the workout can be planned");
    const learn = (result: LoggedResult, workout: Workout) =>
      learnedFrom({ ...levelOnly, results: [result] }, workout, data, date).lessons?.shared.value ?? 0;
    expect(learn(fast, first)).toBeLessThan(-0.05);
    expect(learn(fast, second)).toBe(0);
    expect(learn({ ...fast, date: "2026-12-24" }, first)).toBe(0);
    expect(learn({ ...fast, version: "scaled" }, first)).toBe(0);
  });

  it("is less than what was seen: results are held against what was known", () => {
    if (!fast) throw new Error("the workout can be planned");
    const { lessons } = learnedFrom({ ...levelOnly, results: [fast] }, first, data, date);
    expect(lessons?.shared.value).toBeGreaterThan(-0.2);
  });
});

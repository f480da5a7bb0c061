import { makePlan } from "../../../src/compute/make-plan.ts";
import { inKilograms } from "../../../src/models/quantity.ts";
import { demoData } from "../../support/demo-data.ts";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { BuildGoal } from "../../../src/compute/warm-up/build-goals.ts";
import { WARM_UP_CONSTANTS } from "../../../src/compute/warm-up/constants.ts";
import { FEWEST_SETS, lastsOf, planBuild, setsWanted } from "../../../src/compute/warm-up/plan-build.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { fifteenKiloBar, kiloGym, poundGym, twentyKiloBar } from "../../support/sample-gym.ts";

const numbers = withOverrides(WARM_UP_CONSTANTS);
const goal = (best: number, share: number, more: Partial<BuildGoal> = {}): BuildGoal => ({
  movement: "clean-and-jerk",
  name: "clean and jerk",
  best,
  isGuess: false,
  top: best * share,
  share,
  topReps: 1,
  why: { kind: "middle", reasons: [] },
  serves: "lift",
  ...more,
});
const place = { gym: kiloGym, bar: twentyKiloBar, sharing: false };
const setsOf = (build: ReturnType<typeof planBuild>) => build.flatMap((half) => half.sets);

describe("a build", () => {
  it("climbs a ladder with plates and rests", () => {
    // 75 % of 100 kg: empty bar, then near 55, 75 and 88 % of 75 kg with large plates, as a person loads them: for 41.25 kg
    // 40 (2 x 10), for 56.25 kg 60 (2 x 20), for 66 kg 70 (2 x 25), and 75 (2 x 27.5)
    const build = planBuild([goal(100, 0.75)], 5, place, numbers);
    expect(setsOf(build).map((set) => [set.load.mass.value, set.reps, set.restAfter])).toEqual([
      [20, 5, 60],
      [40, 3, 60],
      [60, 2, 90],
      [70, 1, 120],
      [75, 1, 120],
    ]);
    expect(setsOf(build).at(-1)?.load).toMatchObject({ shareOfBest: 0.75, bar: { value: 20, unit: "kg" } });
  });

  it("says how long it takes in whole minutes, in two halves", () => {
    const build = planBuild([goal(100, 0.75)], 5, place, numbers);
    // Light half: 3 x 10 s + 10 reps x 5 s + 60 + 60 + 90 s = 290 s -> 5 min; heavy half: 2 x 10 + 2 x 5 + 2 x 120 = 270 s -> 5 min
    expect(build.map((half) => half.lasts)).toEqual([300, 300]);
    expect(lastsOf(build)).toBe(600);
  });

  it("leaves out a rung the plates cannot tell from the one before", () => {
    // 75 % of 32 kg is 24 kg, with 2.5 kg plates 25 kg; 55 to 88 % of it all come down to the empty bar
    const light = setsOf(planBuild([goal(32, 0.75)], 5, place, numbers)).map((set) => set.load.mass.value);
    expect(light).toEqual([20, 25]);
  });

  it("rests longer where the bar is shared, and long enough to change plates", () => {
    const shared = setsOf(planBuild([goal(100, 0.75)], 4, { ...place, sharing: true }, numbers));
    expect(new Set(shared.map((set) => set.restAfter))).toEqual(new Set([120]));
    const slow = { ...kiloGym, plateChange: 200 as never };
    const slowly = setsOf(planBuild([goal(100, 0.75)], 4, { ...place, gym: slow }, numbers));
    expect(slowly[0]?.restAfter).toBeGreaterThanOrEqual(200);
  });

  it("gives a second lift its last two sets", () => {
    const both = [goal(100, 0.75), goal(60, 0.75, { movement: "snatch", name: "snatch" })];
    const sets = setsOf(planBuild(both, 4, place, numbers)).filter((set) => set.movement === "snatch");
    // 75 % of 60 kg is 45 kg, 70 % of that 31.5 kg, 30 with 5 kg plates
    expect(sets.map((set) => [set.load.mass.value, set.reps])).toEqual([
      [30, 2],
      [45, 1],
    ]);
  });

  it("works in pounds too", () => {
    const bar = poundGym.bars[0];
    if (bar === undefined) throw new Error("no bar");
    const sets = setsOf(planBuild([goal(100, 0.75)], 4, { ...place, gym: poundGym, bar }, numbers));
    expect(sets.every((set) => set.load.mass.unit === "lb")).toBe(true);
    // 75 kg are 165.3 lb; 165 lb can be made on a bar of 45 lb with 2 x (45 + 10 + 5)
    expect(sets.at(-1)?.load.mass.value).toBe(165);
  });

  it("wants more sets the further it climbs", () => {
    const wanted = (best: number): number => setsWanted(goal(best, 0.75), twentyKiloBar, kiloGym, numbers);
    // (75 - 20) / 20 kg is 3 jumps; (37.5 - 20) / 20 one; (150 - 20) / 20 seven, and no ladder is that long
    expect([wanted(50), wanted(100), wanted(200)]).toEqual([3, 5, 6]);
  });

  it("never tires: reps bounded, loads rising, no more than the ceiling, whatever the lift and the time", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 220 }),
        fc.integer({ min: 70, max: 80 }),
        fc.integer({ min: FEWEST_SETS, max: 6 }),
        fc.constantFrom(twentyKiloBar, fifteenKiloBar),
        fc.integer({ min: 1, max: 2 }),
        (best, percent, count, bar, topReps) => {
          const sets = setsOf(
            planBuild([goal(best, percent / 100, { topReps })], count, { ...place, bar }, numbers),
          );
          const loads = sets.map((set) => set.load.kilograms);
          expect(loads).toEqual([...new Set(loads)].sort((one, other) => one - other));
          expect(sets.reduce((sum, set) => sum + set.reps, 0)).toBeLessThanOrEqual(numbers.mostReps);
          const top = loads.at(-1) ?? 0;
          const lightest = bar.mass.value;
          expect(top).toBeLessThanOrEqual(0.8 * best + 1e-9);
          // Steps of at most 1.5 kg stand between the loads of this gym up to 200 kg, so the band is reached wherever it is wider.
          if (0.1 * best > 2 && 0.7 * best > lightest && top < 200) {
            expect(top).toBeGreaterThanOrEqual(0.7 * best - 1e-9);
          }
          for (const set of sets) {
            if ((set.load.shareOfBest ?? 0) >= 0.7) expect(set.reps).toBeLessThanOrEqual(2);
            expect(set.restAfter).toBeGreaterThanOrEqual(60);
            expect(set.restAfter).toBeLessThanOrEqual(180);
          }
        },
      ),
    );
  });

  it("is none where even the empty bar is above the ceiling", () => {
    expect(planBuild([goal(24, 0.75)], 5, place, numbers)).toEqual([]);
  });

  it("takes reps off the lightest sets first when the coach allows fewer", () => {
    const few = withOverrides(WARM_UP_CONSTANTS, { mostReps: 8 });
    const sets = setsOf(planBuild([goal(100, 0.75)], 5, place, few));
    expect(sets.map((set) => set.reps)).toEqual([1, 3, 2, 1, 1]);
  });
});

it("nobody puts a plate under 2.5 kg or 5 lb on a bar under 60 kg to warm up, but for the load of the workout itself", () => {
  const data = demoData();
  const small = data.workouts.flatMap((workout) =>
    data.athletes.flatMap((athlete) => {
      const { warmUp, loads } = makePlan({ athlete, workout, data, date: "2026-11-25" });
      return (warmUp?.steps ?? [])
        .flatMap(({ sets }) => sets)
        .filter(({ load: { kilograms, perSide = [] } }) => {
          // 110 lb stand for 50 kg: the heaviest plates that make them end in 2.5 lb.
          const isOfWorkout = loads.some(({ load }) => Math.abs(load.kilograms - kilograms) < 0.6);
          return !isOfWorkout && kilograms < 60 && perSide.some(({ plate }) => inKilograms(plate) < 2.2);
        })
        .map(({ load }) => ({ who: athlete.id, what: workout.id, ...load }));
    }),
  );
  expect(small).toEqual([]);
});

it("a build to a lift stays under its opener", () => {
  const data = demoData();
  const over = data.workouts.flatMap((workout) =>
    data.athletes.flatMap((athlete) => {
      const { parts, warmUp } = makePlan({ athlete, workout, data, date: "2026-11-25" });
      const openers = parts.flatMap(
        ({ lifting }) => lifting?.lifts.flatMap((lift) => lift.attempts[0] ?? []) ?? [],
      );
      const heaviest = Math.max(
        0,
        ...(warmUp?.steps ?? []).flatMap(({ sets }) => sets.map(({ load }) => load.kilograms)),
      );
      return openers
        .filter(({ load }) => heaviest >= load.kilograms)
        .map(() => [athlete.id, workout.id, heaviest]);
    }),
  );
  expect(over).toEqual([]);
});

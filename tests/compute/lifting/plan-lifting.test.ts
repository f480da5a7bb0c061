import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { LiftingInput } from "../../../src/compute/lifting/lifting-input.ts";
import { planLifting } from "../../../src/compute/lifting/plan-lifting.ts";
import { listPlates } from "../../../src/compute/lifting/plates.ts";
import type { MuscleWork } from "../../../src/compute/lifting/work-loss.ts";
import type { Gym } from "../../../src/models/gym.ts";
import type { BarLoad } from "../../../src/models/plan/basics.ts";
import { type Lifting, liftingField } from "../../../src/models/plan/lifting.ts";
import { inKilograms, seconds } from "../../../src/models/quantity.ts";
import { sampleField } from "../../support/sample-field.ts";
import { kg, kiloGym, lb, poundGym } from "../../support/sample-gym.ts";
import { liftResult, movementMap, sampleAthlete, sampleLift } from "../../support/sample-lifter.ts";
import {
  cleanAndJerk,
  liftCourse,
  liftingInput,
  liftPart,
  windowOfSeconds,
} from "../../support/sample-lifting.ts";

const work: readonly MuscleWork[] = [
  { muscle: "legs", intensity: 0.9, minutes: 9 },
  { muscle: "hips-and-back", intensity: 0.8, minutes: 9 },
  { muscle: "lungs", intensity: 0.9, minutes: 9 },
];
const afterWork = { before: { work, secondsSince: 0 } };
const until = (time: number) =>
  liftPart({ kind: "max-load", length: { kind: "until", time: seconds(time) }, order: "as-written" });
const limited = (attempts: number) => liftPart({ kind: "max-load", attempts, order: "as-written" });

function lifting(more: Partial<LiftingInput> = {}): Lifting {
  const plan = planLifting(liftingInput(more));
  if (!plan.ok) throw new Error(plan.missing.map(({ kind }) => kind).join("; "));
  return plan.value;
}

const firstLoad = (plan: Lifting): number => plan.lifts[0]?.attempts[0]?.load.kilograms ?? NaN;
const lifterOf = (kilos: number) => sampleAthlete([liftResult("clean-and-jerk", kilos)]);

describe("the attempts of a part", () => {
  it("fill a window of their own, opening with about nine tenths sure and going up to a long shot", () => {
    const plan = lifting();
    const attempts = plan.lifts[0]?.attempts ?? [];
    expect(plan.window).toEqual({ opens: 0, closes: 360 });
    expect(attempts.length).toBeGreaterThanOrEqual(4);
    expect(attempts[0]?.chance).toBeGreaterThanOrEqual(0.9);
    expect(attempts.at(-1)?.chance).toBeLessThan(0.5);
    expect(plan.finishTable).toEqual([]);
  });

  it("start lighter after other work, and tell what it cost", () => {
    const [fresh, tired] = [lifting(), lifting({ opens: { mean: 540, spread: 0 }, ...afterWork })];
    expect(firstLoad(tired)).toBeLessThan(firstLoad(fresh));
    expect(tired.lifts[0]?.today.lossShare).toBeGreaterThan(0.08);
    expect(tired.lifts[0]?.firstLift).toBeGreaterThanOrEqual(560);
  });

  it("in what is left of a window have a table of finishes: later means fewer lifts and less to expect", () => {
    const { finishTable } = lifting({ part: until(960), opens: { mean: 560, spread: 80 }, ...afterWork });
    expect(finishTable.length).toBeGreaterThanOrEqual(3);
    expect(finishTable.some(({ finish, until }) => finish <= 560 && 560 <= until)).toBe(true);
    const expected = finishTable.map((row) => row.expected ?? 0);
    for (const [at, value] of expected.entries()) {
      expect(value).toBeLessThanOrEqual((expected[at - 1] ?? Infinity) + 0.3);
    }
    expect(finishTable.at(-1)?.lifts).toBeLessThan(finishTable[0]?.lifts ?? 0);
    for (const { finish, firstLift } of finishTable) {
      if (firstLift !== undefined) expect(firstLift).toBeGreaterThanOrEqual(finish);
    }
  });

  it("have no row beyond the cap of the part before, and one for it", () => {
    const opens = { mean: 560, spread: 80, latest: 600 };
    const { finishTable } = lifting({ part: until(960), opens, ...afterWork });
    expect(finishTable.at(-1)?.until).toBe(600);
    expect(finishTable.length).toBeGreaterThanOrEqual(2);
  });

  it("agree with the row of the table for the expected finish", () => {
    const plan = lifting({ part: until(960), opens: { mean: 560, spread: 40 }, ...afterWork });
    const row = plan.finishTable.find(({ finish, until }) => finish <= 560 && 560 <= until);
    expect(row?.loads).toEqual(plan.lifts[0]?.attempts.map(({ load }) => load.mass));
    expect(row?.firstLift).toBeLessThanOrEqual(plan.lifts[0]?.firstLift ?? 0);
    expect(row?.firstLiftUntil).toBeGreaterThanOrEqual(plan.lifts[0]?.firstLift ?? Infinity);
  });

  it("are as many as the rules allow, without a clock with a full rest between", () => {
    const plan = lifting({ part: limited(3) });
    const attempts = plan.lifts[0]?.attempts ?? [];
    expect(attempts).toHaveLength(3);
    expect(attempts.map(({ restBefore }) => restBefore)).toEqual([0, 180, 180]);
    expect(plan.window).toEqual({ opens: 0 });
  });

  it("never go down where loads must rise, not even after a miss", () => {
    const plan = lifting({ part: limited(3), bounds: { rising: true } });
    for (const { afterMiss } of plan.lifts[0]?.attempts ?? []) {
      if (afterMiss.kind === "lift") expect(afterMiss.direction).not.toBe("lower");
    }
  });

  it("never go under 85 % of the opener, however little is known of the athlete", () => {
    for (const level of ["new", "regular", "competitor", "elite"] as const) {
      const attempts = lifting({ athlete: { ...sampleAthlete([]), level } }).lifts[0]?.attempts ?? [];
      const opener = attempts[0]?.load.kilograms ?? NaN;
      for (const { afterMiss } of attempts) {
        if (afterMiss.kind === "lift") {
          expect(afterMiss.load.kilograms).toBeGreaterThanOrEqual(0.85 * opener - 1e-6);
        }
      }
    }
  });

  it("keep to what the coach sets: attempts, smallest rest, opener and jumps", () => {
    const bounds = { attempts: 4, smallestRest: seconds(90), opener: kg(80), jump: kg(5) };
    const attempts = lifting({ part: liftPart(windowOfSeconds(600)), bounds }).lifts[0]?.attempts ?? [];
    expect(attempts.map(({ load }) => load.kilograms)).toEqual([80, 85, 90, 95]);
    for (const { restBefore } of attempts.slice(1)) expect(restBefore).toBeGreaterThanOrEqual(90);
  });

  it("of a complex rest on its weakest movement and are named with all of it", () => {
    const squat = sampleLift({ id: "front-squat" });
    const plan = lifting({
      course: liftCourse({
        pieces: [
          { movement: cleanAndJerk, reps: 1 },
          { movement: squat, reps: 3 },
        ],
      }),
      movements: movementMap(cleanAndJerk, squat),
      athlete: sampleAthlete([liftResult("clean-and-jerk", 100), liftResult("front-squat", 90)]),
    });
    expect(plan.lifts[0]).toMatchObject({
      movement: "front-squat",
      reps: 1,
      name: "1 clean and jerk + 3 front squats",
    });
  });

  it("of several lifts with attempts of their own add up", () => {
    const squat = sampleLift({ id: "back-squat" });
    const plan = lifting({
      part: limited(3),
      course: liftCourse(
        { pieces: [{ movement: squat, reps: 1 }], attempts: 3 },
        { pieces: [{ movement: cleanAndJerk, reps: 1 }], attempts: 2 },
      ),
      movements: movementMap(cleanAndJerk, squat),
      athlete: sampleAthlete([liftResult("clean-and-jerk", 100), liftResult("back-squat", 140)]),
    });
    expect(plan.sum).toBe(true);
    expect(plan.lifts.map(({ attempts }) => attempts.length)).toEqual([3, 2]);
  });

  it("of several lifts in one window share it", () => {
    const squat = sampleLift({ id: "back-squat" });
    const plan = lifting({
      part: liftPart(windowOfSeconds(720)),
      course: liftCourse(
        { pieces: [{ movement: squat, reps: 1 }] },
        { pieces: [{ movement: cleanAndJerk, reps: 1 }] },
      ),
      movements: movementMap(cleanAndJerk, squat),
      athlete: sampleAthlete([liftResult("clean-and-jerk", 100), liftResult("back-squat", 140)]),
    });
    const [first, second] = plan.lifts;
    expect(second?.firstLift).toBeGreaterThan((first?.attempts.at(-1)?.clock ?? Infinity) + 60);
    expect(second?.attempts.at(-1)?.clock).toBeLessThanOrEqual(708);
  });

  it("asked for the chance of a load go for it, and tell that chance", () => {
    const plan = lifting({ objective: "chance-of-load", objectiveLoad: kg(100) });
    const usual = lifting();
    const reached = usual.lifts[0]?.expected.middle ?? 0;
    expect(plan.objectiveChance).toBeGreaterThan(0.3);
    expect(plan.objectiveChance).toBeLessThan(0.9);
    expect(plan.objectiveLoad).toEqual(kg(100));
    expect(reached).toBeGreaterThan(0);
  });

  it("asked for the expected place pass a crowd where that is worth more than a kilogram elsewhere", () => {
    const crowd = sampleField({ 80: 10, 92.5: 400, 110: 10 });
    const plan = lifting({ objective: "expected-place", field: crowd, part: limited(2) });
    expect(plan.objective).toBe("expected-place");
    expect(plan.lifts[0]?.attempts[1]?.load.kilograms).toBe(93.5);
  });

  it("say who may load, and count a bar as the rules do", () => {
    const part = liftPart(windowOfSeconds(360), { loading: "alone" });
    expect(lifting({ part }).loading).toBe("alone");
    expect(lifting({ gym: poundGym }).lifts[0]?.attempts[0]?.load.bar).toEqual(lb(45));
  });

  it("are a valid part of a plan", () => {
    for (const more of [
      {},
      { part: until(960), opens: { mean: 560, spread: 40 }, ...afterWork },
      { part: limited(3) },
    ]) {
      expect(() => liftingField.parse(lifting(more))).not.toThrow();
    }
  });

  it("follow the coach's own constants", () => {
    const surer = lifting({ overrides: { openerChance: 0.97 } });
    expect(surer.lifts[0]?.attempts[0]?.chance).toBeGreaterThanOrEqual(0.97);
  });
});

describe("what cannot be planned", () => {
  it("is told all at once", () => {
    const plank = sampleLift({ id: "plank", lift: false });
    const plan = planLifting(
      liftingInput({
        part: limited(3),
        course: liftCourse(
          { pieces: [{ movement: plank, reps: 1 }] },
          { pieces: [{ movement: cleanAndJerk, reps: 1 }] },
        ),
        movements: movementMap(plank, cleanAndJerk),
        athlete: lifterOf(14),
      }),
    );
    expect(plan.ok || plan.missing).toEqual([
      { kind: "no-lift", movements: ["plank"] },
      { kind: "heavy-bar", lift: "clean and jerk", bar: 15, opener: expect.any(Number) as number },
    ]);
    // Best 14 kg: an opener made nine times in ten lies below it.
    const [, bar] = plan.ok ? [] : plan.missing;
    expect(bar?.kind === "heavy-bar" && bar.opener).toBeLessThan(14);
  });

  it("is a part without any lift", () => {
    const plan = planLifting(liftingInput({ course: { part: "b", items: [], endless: false } }));
    expect(plan.ok || plan.missing).toEqual([{ kind: "no-lift", movements: [] }]);
  });

  it("is set to go up by steps that the plates cannot make", () => {
    // The smallest pair of the sample gym makes steps of 1 kg or more.
    const bounds = { opener: kg(80), jump: kg(0.6) };
    const plan = planLifting(liftingInput({ bounds }));
    expect(plan.ok || plan.missing).toEqual([{ kind: "no-step", opener: 80, step: 0.6 }]);
  });

  it("is a lift without a bar: no file says which loads there are", () => {
    const bell = sampleLift({ id: "dumbbell-snatch" });
    const held = { ...bell, loading: { ...bell.loading, held: "single" } } as typeof bell;
    const plan = planLifting(
      liftingInput({
        course: liftCourse({ pieces: [{ movement: held, reps: 1 }] }),
        movements: movementMap(held),
      }),
    );
    expect(plan.ok || plan.missing).toEqual([{ kind: "no-bar", lift: held.name }]);
  });

  it("is a window that has closed before the part before it ends", () => {
    const plan = planLifting(
      liftingInput({ part: until(500), opens: { mean: 560, spread: 0 }, ...afterWork }),
    );
    expect(plan.ok || plan.missing).toEqual([
      { kind: "short-window", length: -60, needed: expect.any(Number) as number },
    ]);
  });
});

const situations: readonly Partial<LiftingInput>[] = [
  {},
  { opens: { mean: 540, spread: 0 }, ...afterWork },
  { part: until(960), opens: { mean: 560, spread: 40 }, ...afterWork },
  { part: limited(3) },
  { part: limited(3), bounds: { rising: true } },
  { part: liftPart(windowOfSeconds(100)) },
  { part: liftPart(windowOfSeconds(200), { openingBar: "empty", lateLift: "counts" }) },
];
const someSituation = fc.constantFrom(...situations);
const someGym = fc.constantFrom<Gym>(kiloGym, poundGym, {
  ...kiloGym,
  plates: [...kiloGym.plates, ...poundGym.plates],
});
const someBest = fc.integer({ min: 90, max: 400 }).map((halves) => halves / 2);

describe("whatever the athlete, the gym and the window", () => {
  it("a stronger athlete never opens lighter", () => {
    fc.assert(
      fc.property(
        someSituation,
        someGym,
        someBest,
        fc.integer({ min: 1, max: 20 }),
        (situation, gym, best, more) => {
          const open = (kilos: number): number =>
            firstLoad(lifting({ ...situation, gym, athlete: lifterOf(kilos) }));
          expect(open(best + more / 2)).toBeGreaterThanOrEqual(open(best) - 1e-6);
        },
      ),
      { numRuns: 120 },
    );
  });

  it("every load can be put on the bar with the pairs there are", () => {
    fc.assert(
      fc.property(someSituation, someGym, someBest, (situation, gym, best) => {
        const attempts = lifting({ ...situation, gym, athlete: lifterOf(best) }).lifts.flatMap(
          (lift) => lift.attempts,
        );
        const loads = attempts.flatMap(({ load, afterMiss }) =>
          afterMiss.kind === "lift" ? [load, afterMiss.load] : [load],
        );
        for (const load of loads) {
          expect(weighed(load)).toBeCloseTo(load.kilograms, 6);
          for (const { plate, pairs } of gym.plates) {
            const used = listPlates(load).filter(
              ({ value, unit }) => value === plate.value && unit === plate.unit,
            );
            expect(used.length).toBeLessThanOrEqual(pairs);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it("no attempt starts after the last start, and loads on the made line rise", () => {
    fc.assert(
      fc.property(someSituation, someGym, someBest, (situation, gym, best) => {
        const plan = lifting({ ...situation, gym, athlete: lifterOf(best) });
        for (const { attempts, lastStart } of plan.lifts) {
          attempts.forEach(({ clock, afterMiss, load, chance }, at) => {
            expect(plan.window.opens + clock).toBeLessThanOrEqual(lastStart);
            if (afterMiss.kind === "lift") {
              expect(plan.window.opens + afterMiss.clock).toBeLessThanOrEqual(lastStart);
            }
            expect(load.kilograms).toBeGreaterThan(attempts[at - 1]?.load.kilograms ?? 0);
            expect(chance).toBeGreaterThan(0);
            expect(chance).toBeLessThan(1);
          });
        }
      }),
      { numRuns: 60 },
    );
  });
});

/** What the plates, the bar and the collars of a load weigh together, kilograms. */
const weighed = (load: BarLoad): number =>
  (load.bar ? inKilograms(load.bar) : 0) +
  2 * (load.collarsEach ? inKilograms(load.collarsEach) : 0) +
  2 * listPlates(load).reduce((sum, plate) => sum + inKilograms(plate), 0);

import { describe, expect, it } from "vitest";
import type { LiftingInput } from "../../../src/compute/lifting/lifting-input.ts";
import { planLifting } from "../../../src/compute/lifting/plan-lifting.ts";
import type { MuscleWork } from "../../../src/compute/lifting/work-loss.ts";
import type { Athlete, LiftResult } from "../../../src/models/athlete.ts";
import type { Gym } from "../../../src/models/gym.ts";
import type { Lift, Lifting } from "../../../src/models/plan/lifting.ts";
import { seconds } from "../../../src/models/quantity.ts";
import { kg, kiloGym, lb, poundGym } from "../../support/sample-gym.ts";
import { liftResult, movementMap, sampleAthlete, sampleLift } from "../../support/sample-lifter.ts";
import {
  cleanAndJerk,
  liftCourse,
  liftingInput,
  liftPart,
  windowOfSeconds,
} from "../../support/sample-lifting.ts";

/**
 * Forty situations and what an experienced coach would let pass, written down before any plan was looked at. Bounds and
 * openers: attempts of public weightlifting results (openers a median 94 to 96 % of the best, jumps after a made lift with a
 * 95th percentile of 7.4 and 8.3 %, 95 of 100 lifters with four results or more at most at 106.3 % of their best that day, with
 * one result 116.7 %, with two or three 110 %); rests: 3 min better than 1 and 2 (Matuszak 2003, Ammar 2020); the rest is trade.
 */

const SQUAT = sampleLift({ id: "front-squat", taxes: { legs: 1, "hips-and-back": 0.4 } });
const JERK = sampleLift({
  id: "jerk",
  taxes: { legs: 0.5, press: 1 },
  ratios: [{ of: "clean-and-jerk", ratio: 1.05 }],
});
const HANG = sampleLift({
  id: "hang-clean",
  taxes: { legs: 0.8, "hips-and-back": 0.8 },
  ratios: [{ of: "clean-and-jerk", ratio: 1 }],
});
const SNATCH = sampleLift({
  id: "snatch",
  taxes: { legs: 0.8, "hips-and-back": 0.8 },
  ratios: [{ of: "clean-and-jerk", ratio: 0.8 }],
});
const MOVEMENTS = movementMap(cleanAndJerk, SQUAT, JERK, HANG, SNATCH);

/** Nine hard minutes of the same muscles. */
const HARD: readonly MuscleWork[] = [
  { muscle: "legs", intensity: 0.9, minutes: 9 },
  { muscle: "hips-and-back", intensity: 0.8, minutes: 9 },
  { muscle: "press", intensity: 0.6, minutes: 9 },
  { muscle: "lungs", intensity: 0.9, minutes: 9 },
];

/** Plates down to pairs of 1.25 kg: loads lie 2.5 kg apart. */
const PLAIN_GYM: Gym = { ...kiloGym, plates: kiloGym.plates.filter(({ plate }) => plate.value !== 0.5) };

type Situation = {
  readonly name: string;
  /** Best single, kilograms (or the load of the result given). */
  readonly best: number;
  readonly result?: Partial<LiftResult>;
  readonly athlete?: Partial<Athlete>;
  readonly more?: Partial<LiftingInput>;
  /** The window, minutes; none for a number of attempts without a clock. */
  readonly minutes?: number;
  readonly attempts?: number;
  readonly afterWork?: boolean;
  /** Share of the best the opener lies in. */
  readonly opener: readonly [number, number];
  /** Share of the best of the load aimed at. */
  readonly target: readonly [number, number];
  /** Rows that are printed. */
  readonly rows: readonly [number, number];
  /** The class's 95th percentile of the best made of a day, over the best. */
  readonly most?: number;
  readonly oneResult?: boolean;
};

const NEW: Partial<Athlete> = { level: "new" };
const LB: Partial<LiftingInput> = { gym: poundGym };
const complexOf = (...pieces: readonly [typeof HANG, number][]): Partial<LiftingInput> => ({
  course: liftCourse({ pieces: pieces.map(([movement, reps]) => ({ movement, reps })) }),
});

const FRESH = { opener: [0.85, 0.93], target: [0.94, 1.01] } as const;
const TIRED = { opener: [0.77, 0.9], target: [0.86, 0.99], afterWork: true } as const;
const LIGHT = { opener: [0.77, 0.93], target: [0.9, 1.04] } as const;
const LIGHT_TIRED = { opener: [0.7, 0.9], target: [0.82, 1], afterWork: true } as const;
const ONE = { most: 1.167, oneResult: true } as const;

const SITUATIONS: readonly Situation[] = [
  // Fresh, tested, kilograms.
  { name: "100 kg, fresh, 6 minutes", best: 100, minutes: 6, rows: [4, 5], ...FRESH },
  { name: "100 kg, fresh, 4 minutes", best: 100, minutes: 4, rows: [3, 4], ...FRESH },
  { name: "100 kg, fresh, 8 minutes", best: 100, minutes: 8, rows: [4, 6], ...FRESH },
  { name: "100 kg, fresh, 12 minutes", best: 100, minutes: 12, rows: [4, 6], ...FRESH },
  { name: "120 kg, fresh, 10 minutes", best: 120, minutes: 10, rows: [4, 6], ...FRESH },
  { name: "150 kg, fresh, 8 minutes", best: 150, minutes: 8, rows: [4, 6], ...FRESH },
  { name: "180 kg, fresh, 6 minutes", best: 180, minutes: 6, rows: [4, 5], ...FRESH },
  { name: "65 kg, fresh, 6 minutes", best: 65, minutes: 6, rows: [3, 5], ...LIGHT },
  { name: "45 kg, fresh, 6 minutes", best: 45, minutes: 6, rows: [3, 5], ...LIGHT },
  { name: "38 kg, fresh, 8 minutes", best: 38, minutes: 8, rows: [3, 6], ...LIGHT },
  // After nine hard minutes.
  { name: "122.5 kg, after work, 7 minutes", best: 122.5, minutes: 7, rows: [4, 5], ...TIRED },
  { name: "100 kg, after work, 4 minutes", best: 100, minutes: 4, rows: [2, 3], ...TIRED },
  { name: "100 kg, after work, 5 minutes", best: 100, minutes: 5, rows: [3, 4], ...TIRED },
  { name: "100 kg, after work, 6 minutes", best: 100, minutes: 6, rows: [4, 4], ...TIRED },
  { name: "100 kg, after work, 9 minutes", best: 100, minutes: 9, rows: [4, 6], ...TIRED },
  { name: "100 kg, after work, 12 minutes", best: 100, minutes: 12, rows: [4, 6], ...TIRED },
  { name: "150 kg, after work, 8 minutes", best: 150, minutes: 8, rows: [4, 6], ...TIRED },
  { name: "65 kg, after work, 6 minutes", best: 65, minutes: 6, rows: [3, 4], ...LIGHT_TIRED },
  { name: "45 kg, after work, 7 minutes", best: 45, minutes: 7, rows: [3, 5], ...LIGHT_TIRED },
  {
    name: "100 kg, after work, slow to recover, 8 minutes",
    best: 100,
    minutes: 8,
    rows: [4, 5],
    athlete: { recovery: "slow" },
    ...TIRED,
  },
  // Pounds.
  { name: "225 lb, fresh, 6 minutes, pounds", best: 102, minutes: 6, more: LB, rows: [3, 5], ...FRESH },
  { name: "315 lb, fresh, 8 minutes, pounds", best: 143, minutes: 8, more: LB, rows: [4, 6], ...FRESH },
  { name: "135 lb, fresh, 6 minutes, pounds", best: 61, minutes: 6, more: LB, rows: [3, 5], ...LIGHT },
  { name: "225 lb, after work, 7 minutes, pounds", best: 102, minutes: 7, more: LB, rows: [3, 5], ...TIRED },
  // How much is known.
  {
    name: "new to it, one result, 6 minutes",
    best: 60,
    minutes: 6,
    athlete: NEW,
    rows: [4, 5],
    opener: [0.8, 0.99],
    target: [0.95, 1.12],
    ...ONE,
  },
  {
    name: "new to it, one result, after work, 7 minutes",
    best: 60,
    minutes: 7,
    athlete: NEW,
    rows: [3, 5],
    ...ONE,
    opener: [0.72, 0.95],
    target: [0.88, 1.07],
    afterWork: true,
  },
  {
    name: "regular, tested two years ago, 6 minutes",
    best: 100,
    minutes: 6,
    result: { date: "2024-11-20" },
    athlete: { level: "regular" },
    rows: [4, 5],
    opener: [0.8, 0.92],
    target: [0.9, 1.02],
    most: 1.1,
  },
  {
    name: "three reps at 92 kg, 6 minutes",
    best: 92,
    result: { reps: 3 },
    minutes: 6,
    rows: [4, 5],
    // A single of about 98.5 kg, so 100 kg may be the load aimed at.
    opener: [0.85, 0.98],
    target: [0.97, 1.09],
    most: 1.18,
  },
  {
    name: "a related lift only: snatch from the clean and jerk",
    best: 100,
    minutes: 6,
    more: { course: liftCourse({ pieces: [{ movement: SNATCH, reps: 1 }] }) },
    rows: [3, 5],
    opener: [0.62, 0.73],
    target: [0.7, 0.81],
    most: 0.9,
  },
  // Attempts by number, and what a coach sets.
  { name: "three attempts, any load", best: 100, attempts: 3, rows: [3, 3], ...FRESH },
  {
    name: "three attempts, loads rise",
    best: 120,
    attempts: 3,
    more: { bounds: { rising: true } },
    rows: [3, 3],
    opener: [0.82, 0.9],
    target: [0.9, 1],
  },
  { name: "two attempts", best: 100, attempts: 2, rows: [2, 2], opener: [0.82, 0.9], target: [0.82, 0.97] },
  { name: "six attempts", best: 140, attempts: 6, rows: [4, 6], ...FRESH },
  { name: "sixteen attempts", best: 140, attempts: 16, rows: [4, 16], ...FRESH },
  {
    name: "an opener that is set",
    best: 100,
    minutes: 8,
    more: { bounds: { opener: kg(85) } },
    rows: [4, 6],
    opener: [0.85, 0.85],
    target: [0.92, 1.01],
  },
  {
    name: "an opener set in pounds, at most three",
    best: 100,
    minutes: 8,
    more: { ...LB, bounds: { opener: lb(185), attempts: 3 } },
    rows: [3, 3],
    opener: [0.83, 0.85],
    target: [0.88, 0.98],
  },
  {
    name: "opener, jumps and number set",
    best: 100,
    minutes: 10,
    more: { bounds: { opener: kg(80), jump: kg(5), attempts: 5 } },
    rows: [5, 5],
    opener: [0.8, 0.8],
    target: [0.9, 1],
  },
  // Complexes and several reps: never over the weakest link.
  {
    name: "a hang clean and a jerk after work",
    best: 122.5,
    minutes: 7,
    more: complexOf([HANG, 1], [JERK, 1]),
    rows: [3, 5],
    most: 1,
    ...TIRED,
  },
  {
    name: "fives, fresh, 10 minutes",
    best: 100,
    minutes: 10,
    more: complexOf([cleanAndJerk, 5]),
    rows: [3, 6],
    opener: [0.7, 0.82],
    target: [0.78, 0.89],
    most: 0.9,
  },
  {
    name: "a clean and jerk with three front squats",
    best: 100,
    minutes: 8,
    more: complexOf([cleanAndJerk, 1], [SQUAT, 3]),
    rows: [3, 6],
    opener: [0.8, 0.93],
    target: [0.9, 1],
    most: 1,
  },
];

function planned(situation: Situation, gym: Gym = PLAIN_GYM): Lifting {
  const { best, result = {}, athlete = {}, more = {}, minutes, attempts, afterWork } = situation;
  const clock =
    minutes === undefined
      ? ({ kind: "max-load", attempts: attempts ?? 3, order: "as-written" } as const)
      : windowOfSeconds(60 * minutes);
  const lifts = [liftResult("clean-and-jerk", best, result), liftResult("front-squat", 1.2 * best)];
  const plan = planLifting(
    liftingInput({
      part: liftPart(clock),
      gym,
      movements: MOVEMENTS,
      athlete: sampleAthlete(lifts, { sex: best > 70 ? "male" : "female", ...athlete }),
      ...(afterWork && { before: { work: HARD, secondsSince: 0 } }),
      ...more,
    }),
  );
  if (!plan.ok) throw new Error("not planned");
  return plan.value;
}

const only = (plan: Lifting): Lift => {
  const [lift] = plan.lifts;
  if (!lift) throw new Error("no lift");
  return lift;
};

describe.each(SITUATIONS)("$name", (situation) => {
  const { best, opener, target, rows, most = 1.063, oneResult = false, minutes, afterWork } = situation;
  const plan = planned(situation);
  const lift = only(plan);
  const attempts = lift.attempts;
  const loads = attempts.map(({ load }) => load.kilograms);
  const bounds = situation.more?.bounds;
  const ownBest = lift.best.kilograms;
  const step = situation.more?.gym === poundGym ? 5 * 0.4536 : 2.5;

  it("opens and aims where a coach would, with as many lifts as fit", () => {
    const aim = attempts.find(({ number }) => number === lift.target);
    expect.soft((loads[0] ?? 0) / best).toBeGreaterThanOrEqual(opener[0] - 0.001);
    expect.soft((loads[0] ?? 0) / best).toBeLessThanOrEqual(opener[1] + 0.001);
    expect.soft((aim?.load.kilograms ?? 0) / best).toBeGreaterThanOrEqual(target[0] - 0.001);
    expect.soft((aim?.load.kilograms ?? 0) / best).toBeLessThanOrEqual(target[1] + 0.001);
    expect.soft(loads.length).toBeGreaterThanOrEqual(rows[0]);
    expect.soft(loads.length).toBeLessThanOrEqual(rows[1]);
  });

  it("opens by chance: nine in ten, 94 in a hundred with two lifts or where loads rise", () => {
    if (bounds?.opener) return;
    const least = attempts.length <= 2 || bounds?.rising ? 0.94 : 0.9;
    expect(attempts[0]?.chance).toBeGreaterThanOrEqual(least - 0.001);
  });

  it("jumps 10 % at most, then 6 %, 4 % over the best (6 % with one result), or one step of plates", () => {
    for (const [at, load] of loads.entries()) {
      const from = loads[at - 1];
      if (from === undefined || bounds?.jump) continue;
      const usual = at === 1 ? 0.1 : 0.06;
      const over = load > ownBest + 0.01 ? (oneResult ? 0.06 : 0.04) : usual;
      const limit = Math.max(Math.min(over, usual) * from, load > ownBest ? ownBest - from : 0, step);
      expect(load - from).toBeGreaterThan(0);
      expect(load - from).toBeLessThanOrEqual(limit + 0.01);
    }
  });

  it("loads nothing above what 95 of 100 like this athlete make in a day, times the strength recovered", () => {
    for (const { load, lossShare } of attempts) {
      expect(load.kilograms).toBeLessThanOrEqual(most * best * (1 - lossShare) + 0.01);
    }
  });

  it("tells of each row how likely the day comes to it and how likely it is made, falling down the ladder", () => {
    let before = 1;
    for (const { chance, lifted, made, onlyIfWell, number } of attempts) {
      expect(lifted).toBeLessThanOrEqual(before + 1e-9);
      expect(made).toBeLessThanOrEqual(lifted + 1e-9);
      // Whoever comes to it by misses has no more tries left and a weaker day, so at most a second try is added.
      expect(made).toBeGreaterThanOrEqual(lifted * chance * 0.85);
      expect(made).toBeLessThanOrEqual(lifted * (1 - (1 - chance) ** 3) + 1e-9);
      expect(onlyIfWell).toBe(number > lift.target);
      before = made;
    }
  });

  it("after a missed opener goes two loads lower where the rules allow, after a later miss repeats", () => {
    const [first, ...later] = attempts;
    if (first && first.afterMiss.kind === "lift") {
      const { load, direction } = first.afterMiss;
      if (bounds?.rising || bounds?.jump) expect(direction).toBe("same");
      else {
        expect(direction).toBe("lower");
        expect(load.kilograms).toBeGreaterThanOrEqual(first.load.kilograms - 2 * step - 0.1);
      }
    }
    for (const { afterMiss } of later) {
      if (afterMiss.kind === "lift") expect(afterMiss.direction).toBe("same");
    }
  });

  it("waits for breath after work, unless one of the last four lifts would be lost, and uses the window to its end", () => {
    const first = attempts[0]?.clock ?? 0;
    const starts = attempts.map(({ clock }) => clock);
    const rests = attempts.slice(1).map(({ restBefore }) => restBefore);
    const recovery = situation.athlete?.recovery === "slow" ? 1.3 : 1;
    // 57 s times log2(5): four fifths of the fast part are back.
    if (afterWork && minutes !== undefined) {
      const breath = 57 * Math.log2(5) * recovery;
      const fourFit = 60 * minutes - breath - 12 >= 3 * 70;
      if (fourFit) expect(first).toBeGreaterThanOrEqual(breath - 5);
      else expect(first).toBeGreaterThanOrEqual(20);
    }
    for (const [at, rest] of rests.entries()) {
      expect(rest).toBeGreaterThanOrEqual(60);
      expect(rest).toBeLessThanOrEqual(240);
      if (at > 0) expect(rest).toBeGreaterThanOrEqual((rests[at - 1] ?? 0) - 5);
    }
    const last = starts.at(-1) ?? 0;
    const allRested = rests.length > 0 && rests.every((rest) => rest >= 235);
    if (minutes !== undefined && !allRested) {
      expect(last).toBeGreaterThanOrEqual(60 * minutes - 12 - 25);
      expect(last).toBeLessThanOrEqual(60 * minutes - 10);
    }
  });
});

describe("the ladders of the rule", () => {
  const loadsOf = (situation: Pick<Situation, "best" | "minutes" | "attempts">): readonly number[] => {
    const base = { name: "", opener: [0, 1], target: [0, 1], rows: [1, 6] } as const;
    return only(planned({ ...base, ...situation })).attempts.map(({ load }) => load.kilograms);
  };
  // Worked by hand: + 8, 6, 4, 3, 3 %, to the nearest 2.5 kg inside the bounds, up to 1.063 times the best.
  it("of 120 kg, six lifts fresh: 107.5, 115, 120, 122.5, 125, 127.5", () => {
    expect(loadsOf({ best: 120, attempts: 6 })).toEqual([107.5, 115, 120, 122.5, 125, 127.5]);
  });
  it("of 65 kg, five lifts: 57.5, 62.5, 65, 67.5, and nothing above 69", () => {
    expect(loadsOf({ best: 65, minutes: 6 })).toEqual([57.5, 62.5, 65, 67.5]);
  });
  it("of 150 kg, five lifts: 135, 145, 150, 155, 157.5", () => {
    expect(loadsOf({ best: 150, minutes: 6 })).toEqual([135, 145, 150, 155, 157.5]);
  });
});

describe("an athlete known by level only", () => {
  const plan = planned({
    ...(SITUATIONS[0] as Situation),
    name: "level",
    more: { athlete: sampleAthlete([], { level: "regular", sex: "male" }) },
  });
  const lift = only(plan);

  it("gets an opener to test in the warm-up and a build by feel, no ladder of kilograms", () => {
    expect(lift.attempts).toHaveLength(1);
    expect(lift.feel?.lifts).toBeGreaterThanOrEqual(4);
    expect(lift.feel?.jumpFirst).toBe(0.1);
    expect(lift.feel?.jumpLater).toBe(0.06);
  });

  it("opens well under what the level lifts, and says how much one tested lift would tell", () => {
    const [opener] = lift.attempts;
    expect((opener?.load.kilograms ?? 0) / lift.best.kilograms).toBeLessThanOrEqual(0.8);
    expect(lift.feel?.openerLow).toBeLessThan(opener?.load.kilograms ?? 0);
    expect(lift.feel?.openerHigh).toBeGreaterThan(lift.best.kilograms);
    expect(lift.feel?.spreadTested).toBeLessThan(0.5 * (lift.feel?.spreadNow ?? 0));
  });
});

describe("a light press of 28 kg and a front squat of 55 kg, three rising attempts", () => {
  const PRESS = sampleLift({ id: "shoulder-press", taxes: { press: 1 } });
  const of = (movement: typeof PRESS, best: number): readonly number[] => {
    const plan = planLifting(
      liftingInput({
        part: liftPart({ kind: "max-load", attempts: 3, order: "as-written" }),
        course: liftCourse({ pieces: [{ movement, reps: 1 }] }),
        movements: movementMap(PRESS, SQUAT),
        athlete: sampleAthlete([liftResult(movement.id, best)]),
        gym: kiloGym,
        bounds: { rising: true },
      }),
    );
    if (!plan.ok) throw new Error("not planned");
    return only(plan.value).attempts.map(({ load }) => load.kilograms);
  };

  // A coach: 24, 26, 28 or the disc beside; never 20, 22.5, 25, which ends under what she lifts any day.
  it("opens at four fifths of the best or more and ends within a disc of it", () => {
    for (const [movement, best] of [
      [PRESS, 28],
      [SQUAT, 55],
    ] as const) {
      const loads = of(movement, best);
      expect(loads).toHaveLength(3);
      expect(loads[0] ?? 0).toBeGreaterThanOrEqual(0.8 * best);
      expect(loads[2] ?? 0).toBeGreaterThanOrEqual(0.94 * best);
      expect(loads[2] ?? 0).toBeLessThanOrEqual(1.06 * best);
    }
  });
});

describe("a gym with plates of half a kilogram", () => {
  it("gives the same opener as one without: nobody fetches them for it", () => {
    const situation = SITUATIONS[0] as Situation;
    const opener = (gym: Gym): number => only(planned(situation, gym)).attempts[0]?.load.kilograms ?? 0;
    expect(opener(kiloGym)).toBe(opener(PLAIN_GYM));
  });
  it("is no reason to wait less than the rules of the coach say", () => {
    const bounds = { smallestRest: seconds(150) };
    const lift = only(planned({ ...(SITUATIONS[14] as Situation), more: { bounds } }));
    expect(lift.attempts[0]?.clock).toBeGreaterThanOrEqual(150);
    for (const { restBefore } of lift.attempts.slice(1)) expect(restBefore).toBeGreaterThanOrEqual(150);
  });
});

describe("a load aimed at that is round", () => {
  const of = (gym: Gym, more: Partial<LiftingInput> = {}): Lift =>
    only(planned({ ...(SITUATIONS[5] as Situation), more }, gym));

  // 150 kg is shared by many; two plates of half a kilogram pass them all (public results: 41 % multiples of 5 kg).
  it("lies a kilogram over the round one where plates of half a kilogram lie there", () => {
    const [plain, small] = [of(PLAIN_GYM), of(kiloGym)];
    const [round, cut] = [plain.attempts[plain.target - 1], small.attempts[small.target - 1]];
    expect((round?.load.kilograms ?? 1) % 5).toBeCloseTo(0, 6);
    expect((cut?.load.kilograms ?? 0) - (round?.load.kilograms ?? 0)).toBeCloseTo(1, 6);
    expect(cut?.over).toEqual(round?.load.mass);
    expect(round?.over).toBeUndefined();
  });

  it("stays where lifts are added, jumps are set, or a coach sets the number to none", () => {
    const fixed = of(kiloGym, { bounds: { opener: kg(85), jump: kg(5) } });
    const none = of(kiloGym, { overrides: { cutMost: 0 } });
    for (const lift of [fixed, none])
      expect(lift.attempts.every(({ over }) => over === undefined)).toBe(true);
  });
});

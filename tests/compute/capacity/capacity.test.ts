import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { BestLift } from "../../../src/compute/capacity/best-lift.ts";
import { capacityOf } from "../../../src/compute/capacity/capacity.ts";
import type { Capacity, MovementCapacity, Task } from "../../../src/compute/motion/movement-capacity.ts";
import { pacePart } from "../../../src/compute/pacing/pace-part.ts";
import type { Athlete, MaxEffort } from "../../../src/models/athlete.ts";
import type { Movement } from "../../../src/models/movement.ts";
import { kilograms, metres } from "../../../src/models/quantity.ts";
import { makeAmrap, makeCourse } from "../../support/courses.ts";
import { effort, somebody } from "../../support/efforts.ts";
import {
  airSquat,
  burpee,
  clean,
  pullUp,
  row,
  run,
  testMovements,
  thruster,
} from "../../support/movements.ts";
import { forReps, forTime, inputFor } from "../../support/paced.ts";
import { without } from "../../support/without.ts";

/** Best lift as tested in kilograms by movement, else by level: a share of 82 kg. */
const liftOf =
  (tested: Readonly<Record<string, number>> = {}) =>
  (of: Athlete, movement: Movement): BestLift | undefined => {
    const typical = movement.loading?.typical[of.level];
    if (typical === undefined) return undefined;
    const own = of.id === "somebody" && of.lifts.length > 0 ? tested[movement.id] : undefined;
    const value = own ?? 82 * typical;
    return {
      kilograms: kilograms(value),
      doubt: 0,
      spread: kilograms(0.1 * value),
      basis: own === undefined ? "level" : "tested",
      from: { kind: "given-time" },
    };
  };

const LIFT = {
  movement: "thruster",
  load: { value: 1, unit: "kg" },
  reps: 1,
  inReserve: 0,
  approximate: false,
} as const;

const capacity = (more: Partial<Athlete> = {}, tested?: Readonly<Record<string, number>>): Capacity =>
  capacityOf({
    athlete: somebody({ ...more, lifts: tested ? [LIFT] : [] }),
    movements: testMovements,
    date: "2026-11-25",
    liftOf: liftOf(tested),
  });

function known(of: Capacity, task: Task): MovementCapacity {
  const found = of.of(task);
  if ("missing" in found) throw new Error(found.missing.kind);
  return found;
}
const reps = (movement: Movement, load?: number): Task => ({
  movement,
  unit: movement.counts[0] ?? "reps",
  ...(load === undefined ? {} : { load: kilograms(load) }),
});

describe("an own effort planned as a workout", () => {
  const cases: readonly (readonly [string, readonly MaxEffort[], Partial<Athlete>?])[] = [
    ["one effort at a free movement", [effort("burpee", 98, 420)]],
    ["two efforts", [effort("burpee", 54, 180), effort("burpee", 104, 420)]],
    ["three efforts", [effort("burpee", 24, 60), effort("burpee", 60, 180), effort("burpee", 150, 600)]],
    ["a row", [effort("row", 2000, 430, { unit: "metres" })]],
    ["three rows", [[500, 92], [2000, 425], [5000, 1150]].map(([m = 0, t = 0]) => effort("row", m, t, { unit: "metres" }))],
    ["a run", [effort("run", 5000, 1380, { unit: "metres" })]],
    ["a short and a longer run", [effort("run", 400, 70, { unit: "metres" }), effort("run", 1600, 350, { unit: "metres" })]],
    ["a movement of muscles", [effort("pull-up", 100, 420)], { unbroken: [{ movement: "pull-up", reps: 22 }] }],
    ["two efforts of muscles", [effort("pull-up", 50, 130), effort("pull-up", 100, 400)]],
    ["a bar", [effort("thruster", 45, 160, { load: { value: 43, unit: "kg" } })]],
    ["a heavy bar", [effort("clean", 30, 240, { load: { value: 70, unit: "kg" } })]],
    ["squats", [effort("air-squat", 100, 150)]],
  ]; // prettier-ignore

  it.each(
    cases.flatMap(([name, efforts, more]) =>
      (["new", "regular", "elite"] as const).map((level) => ({ name, efforts, more, level })),
    ),
  )("comes back within 2 %, for time and for amount: $name, level $level", ({ efforts, more, level }) => {
    const of = capacity({ ...more, efforts, level });
    for (const { movement, amount, unit, time, load } of efforts) {
      const move = testMovements.get(movement);
      if (!move) throw new Error(movement);
      const line = { move, amount, unit, ...(load ? { kg: load.value } : {}) };
      const timed = pacePart(inputFor(makeCourse([[line]]), forTime, of));
      expect(timed.kind === "paced" && timed.pacing.result.target / time).toBeCloseTo(1, 1.4);
      expect(timed.kind === "paced" && Math.abs(timed.pacing.result.target / time - 1)).toBeLessThan(0.02);
      const counted = pacePart(inputFor(makeAmrap([{ ...line, amount: 1e5 }], time, 1), forReps, of));
      const off = counted.kind === "paced" ? Math.abs(counted.pacing.result.target - amount) : Infinity;
      // A whole rep more or less is as near as a count can be.
      expect(off).toBeLessThanOrEqual(Math.max(1, 0.02 * amount));
    }
  });
});

describe("a capacity without own results", () => {
  it("is that of the level, held for twenty minutes", () => {
    const of = capacity();
    const part = pacePart(inputFor(makeAmrap([{ move: burpee, amount: 1e5 }], 1200, 1), forReps, of));
    // A burpee every 4.75 s: 252 in twenty minutes.
    expect(part.kind === "paced" && part.pacing.result.target).toBeGreaterThan(0.98 * (1200 / 4.75));
    expect(part.kind === "paced" && part.pacing.result.target).toBeLessThan(1.02 * (1200 / 4.75));
    expect(known(of, reps(burpee))).toMatchObject({
      basis: "level",
      from: { kind: "level", level: "regular" },
    });
  });

  it("costs heart and lungs no more than hard work at the quickest cycle, however seldom a rep comes", () => {
    const { lungs = 0, pull = 1 } = pullUp.taxes;
    const seldom = (by: number): Movement => ({
      ...pullUp,
      pace: { ...pullUp.pace, steady: { ...pullUp.pace.steady, regular: by * pullUp.pace.steady.regular } },
    });
    const costOf = (by: number): MovementCapacity =>
      known(capacity(), { movement: seldom(by), unit: "reps" });
    // 2.85 times the critical effort where lungs are taxed as much as the muscle, in proportion less where they are taxed less.
    const most = (1 + 1.85 * (lungs / pull)) * costOf(2.5).fastest;
    expect(costOf(2.5).sustainable).toBeLessThan(1.05 * most);
    expect(costOf(3.5).sustainable).toBeCloseTo(costOf(2.5).sustainable, 1);
  });

  it("is quicker for a higher level and a man, between both where the sex is not stated", () => {
    const pace = (more: Partial<Athlete>): number => known(capacity(more), reps(burpee)).sustainable;
    expect(pace({ level: "elite" })).toBeLessThan(pace({ level: "new" }));
    const unstated = without(somebody(), "sex");
    const neither = known(
      capacityOf({ athlete: unstated, movements: testMovements, date: "2026-11-25", liftOf: liftOf() }),
      reps(burpee),
    ).sustainable;
    expect(pace({ sex: "male" })).toBeLessThan(neither);
    expect(neither).toBeLessThan(pace({ sex: "female" }));
  });

  it("moves with own results in other movements, by half, and is a little surer for it", () => {
    const quick = capacity({ efforts: [effort("burpee", 130, 420)] });
    const plain = capacity();
    expect(known(quick, reps(airSquat)).sustainable).toBeLessThan(known(plain, reps(airSquat)).sustainable);
    expect(known(quick, reps(airSquat)).error).toBeLessThan(known(plain, reps(airSquat)).error);
    expect(known(quick, reps(airSquat)).from).toEqual({
      kind: "own-results",
      in: ["burpee"],
      level: "regular",
    });
  });

  it("moves more with a result in a style of the same movement", () => {
    const style = { ...burpee, id: "long-burpee", name: "long burpee", styleOf: "burpee" };
    const movements = new Map([...testMovements, [style.id, style]]);
    const athlete = somebody({ efforts: [effort("burpee", 130, 420)] });
    const of = capacityOf({ athlete, movements, date: "2026-11-25", liftOf: liftOf() });
    const found = known(of, reps(style));
    expect(found).toMatchObject({
      basis: "related",
      from: { kind: "own-results", in: ["burpee"] },
      error: 0.09,
    });
  });
});

describe("a load", () => {
  it("never makes a movement faster or its sets larger by being heavier", () => {
    const of = capacity({}, { thruster: 90, clean: 100 });
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 120, noNaN: true }),
        fc.double({ min: 10, max: 120, noNaN: true }),
        fc.constantFrom(thruster, clean),
        (one, other, movement) => {
          const light = known(of, reps(movement, Math.min(one, other)));
          const heavy = known(of, reps(movement, Math.max(one, other)));
          expect(heavy.sustainable).toBeGreaterThanOrEqual(light.sustainable - 1e-9);
          expect(heavy.fastest).toBeGreaterThanOrEqual(light.fastest - 1e-9);
          expect(heavy.unbroken).toBeLessThanOrEqual(light.unbroken + 1e-9);
        },
      ),
    );
  });

  it("is easier for who is stronger", () => {
    const weak = known(capacity({}, { thruster: 70 }), reps(thruster, 43));
    const strong = known(capacity({}, { thruster: 110 }), reps(thruster, 43));
    expect(strong.sustainable).toBeLessThan(weak.sustainable);
    expect(strong.unbroken).toBeGreaterThan(weak.unbroken);
    expect(strong.loadShare).toBeCloseTo(43 / 110, 9);
  });

  it("asks no more of heart and lungs of who does more in one set", () => {
    const usual = known(capacity(), reps(pullUp));
    for (const best of [12, 25, 40]) {
      const own = known(capacity({ unbroken: [{ movement: "pull-up", reps: best }] }), reps(pullUp));
      expect(own.unbroken).toBe(best);
      expect(own.sustainable).toBeCloseTo(usual.sustainable, 9);
    }
  });

  it("above the best lift is not possible, a lift not tested being doubted a little", () => {
    const tested = capacity({}, { clean: 100 });
    expect(known(tested, reps(clean, 100)).possible).toBe(true);
    expect(known(tested, reps(clean, 101)).possible).toBe(false);
    // By level 82 x 1.1 = 90.2 kg: up to 0.97 of it, 87.5 kg.
    expect(known(capacity(), reps(clean, 87)).possible).toBe(true);
    expect(known(capacity(), reps(clean, 88)).possible).toBe(false);
  });

  it("worn makes body movements slower, a higher box too", () => {
    const of = capacity();
    const bare = known(of, reps(pullUp)).sustainable;
    const vest = known(of, { ...reps(pullUp), worn: kilograms(9) }).sustainable;
    // (1 + 9 / 82)^1.2.
    expect(vest / bare).toBeCloseTo((1 + 9 / 82) ** 1.2, 9);
    const box = { ...burpee, id: "box-burpee", height: { male: { value: 24, unit: "in" }, female: { value: 20, unit: "in" } } } as const; // prettier-ignore
    const at = (height: number): number => known(of, { ...reps(box), height: metres(height) }).sustainable;
    expect(at(0.75) / at(0.6096)).toBeCloseTo(Math.sqrt(0.75 / 0.6096), 9);
  });
});

describe("what an athlete cannot do", () => {
  it("is not possible: zero is not the same as unknown", () => {
    expect(known(capacity({ cannot: ["pull-up"] }), reps(pullUp)).possible).toBe(false);
    expect(known(capacity(), reps(pullUp)).possible).toBe(true);
  });

  it("in a unit nothing converts is missing", () => {
    expect(capacity().of({ movement: burpee, unit: "calories" })).toEqual({
      missing: { kind: "no-pace", movement: "burpee", unit: "calories", counted: "reps" },
    });
  });

  it("for a given time needs no pace", () => {
    expect(capacity().of({ movement: pullUp, unit: "seconds" })).toMatchObject({
      sustainable: 1,
      fastest: 1,
    });
  });
});

describe("running", () => {
  it("from one result follows Riegel's law to other distances within 2 %: 5 km in 20:00 is 10 km in 41:42", () => {
    const of = capacity({ efforts: [effort("run", 5000, 1200, { unit: "metres" })] });
    const part = pacePart(inputFor(makeCourse([[{ move: run, amount: 10_000 }]]), forTime, of));
    expect(part.kind === "paced" && Math.abs(part.pacing.result.target / 2501.9 - 1)).toBeLessThan(0.02);
  });

  it("from 2 km in 7:00 gives 1600 m in 5:31.5 within 2 %", () => {
    const of = capacity({ efforts: [effort("run", 2000, 420, { unit: "metres" })] });
    const part = pacePart(inputFor(makeCourse([[{ move: run, amount: 1600 }]]), forTime, of));
    expect(part.kind === "paced" && Math.abs(part.pacing.result.target / 331.5 - 1)).toBeLessThan(0.02);
  });
});

describe("an erg", () => {
  it("known by metres is known by calories", () => {
    const of = capacity({ efforts: [effort("row", 2000, 480, { unit: "metres" })] });
    const part = pacePart(
      inputFor(makeAmrap([{ move: row, amount: 1e5, unit: "calories" }], 480, 1), forReps, of),
    );
    // 2:00 per 500 m for eight minutes are 132.9 calories.
    expect(part.kind === "paced" && part.pacing.result.target).toBeGreaterThan(129);
    expect(part.kind === "paced" && part.pacing.result.target).toBeLessThan(136);
  });

  it("has no sets", () => {
    expect(known(capacity(), reps(row)).unbroken).toBe(Infinity);
  });
});

describe("recovery", () => {
  it("is as the athlete says", () => {
    expect(
      ["slow", "usual", "fast"].map((recovery) => capacity({ recovery: recovery as never }).recoverySpeed),
    ).toEqual([0.75, 1, 1.3]);
  });

  it("can be set differently by name", () => {
    const of = capacityOf({
      athlete: somebody({ recovery: "fast" }),
      movements: testMovements,
      date: "2026-11-25",
      liftOf: liftOf(),
      overrides: { recoveryFast: 1.6, reserveUsual: 80 },
    });
    expect(of.recoverySpeed).toBe(1.6);
    expect(of.reserve).toBeCloseTo(80, 9);
  });

  it("lets a best lift sink on a bad day, or rise on a good one, no further than its own doubt", () => {
    const of = capacity({}, { thruster: 100 });
    const shareOf = (factor: number): number =>
      known(of.slowedBy(factor), reps(thruster, 43)).loadShare ?? Number.NaN;
    expect(shareOf(1.05)).toBeCloseTo(0.43 * 1.05, 9);
    // One day in ten lies 1.2816 standard deviations out, of 10 % here: e^0.12816 = 1.1367.
    expect(shareOf(1.5)).toBeCloseTo(0.43 * 1.1367, 4);
    expect(shareOf(1 / 1.5)).toBeCloseTo(0.43 / 1.1367, 4);
  });
});

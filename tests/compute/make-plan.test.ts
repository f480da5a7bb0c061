import { describe, expect, test } from "vitest";
import { makePlan } from "../../src/compute/make-plan.ts";
import { makeStrategy } from "../../src/compute/make-strategy.ts";
import type { Athlete } from "../../src/models/athlete.ts";
import { planSchema, type Plan } from "../../src/models/plan/plan.ts";
import { inKilograms } from "../../src/models/quantity.ts";
import { sayAsk } from "../../src/wording/left-out.ts";
import { demoData } from "../support/demo-data.ts";

const data = demoData();
const date = "2026-11-26";
const plans = data.workouts.flatMap((workout) =>
  data.athletes.map((athlete) => ({ athlete, workout, plan: makePlan({ athlete, workout, data, date }) })),
);
const named = plans.map((each) => ({ ...each, title: `${each.athlete.id} for ${each.workout.id}` }));

function planFor(athlete: string, workout: string, change: Partial<Athlete> = {}): Plan {
  const who = data.athletes.find(({ id }) => id === athlete);
  const what = data.workouts.find(({ id }) => id === workout);
  if (who === undefined || what === undefined) throw new Error(`${athlete} or ${workout} is not there`);
  return makePlan({ athlete: { ...who, ...change }, workout: what, data, date });
}

describe.each(named)("the plan of $title", ({ plan }) => {
  test("is what its schema says, and nothing in it is not a number", () => {
    expect(planSchema.safeParse(plan).error?.issues ?? []).toEqual([]);
  });

  test("has clocks that never go back, each row beginning where the one before ended", () => {
    for (const { pacing } of plan.parts) {
      const rows = pacing?.rows ?? [];
      rows.forEach((row, at) => {
        expect(row.end).toBeGreaterThanOrEqual(row.start);
        if (at > 0) expect(row.start).toBeCloseTo(rows[at - 1]?.end ?? NaN, 6);
      });
    }
  });

  test("has sets that add up to their row, and working time inside it", () => {
    for (const row of plan.parts.flatMap(({ pacing }) => pacing?.rows ?? [])) {
      if (row.kind === "rest") continue;
      expect(row.sets.reduce((sum, set) => sum + set.amount, 0)).toBeCloseTo(row.amount, 6);
      const rests = row.sets.reduce((sum, set) => sum + set.restAfter, 0);
      const worked = row.amount * (row.secondsPerUnit ?? 0);
      expect(row.transition + rests + worked).toBeLessThanOrEqual(row.end - row.start + 1);
    }
  });

  // Where a clock stops the work, the last whole rep is done a moment before it: less than one rep, so within 2 %.
  test("ends its shares of reps, time and work at one, up to the rep a clock breaks off", () => {
    for (const { pacing } of plan.parts) {
      const last = pacing?.rows.at(-1);
      if (pacing === undefined || last === undefined) continue;
      expect(last.shareOfReps).toBeCloseTo(1, 6);
      // The way to work that is out of reach is time without work.
      const way = pacing.whenStopped?.atWall === true ? 1 - last.end / pacing.duration : 0;
      const brokenOff = way + (pacing.ending === "finishes" ? 1e-6 : 0.02);
      for (const share of [last.shareOfTime, last.shareOfWork]) {
        expect(share).toBeGreaterThan(1 - brokenOff);
        expect(share).toBeLessThan(1 + 1e-6);
      }
    }
  });

  test("loads every bar with plates that add up to it", () => {
    const bars = plan.parts.flatMap(({ lifting, pacing }) => [
      ...(lifting?.lifts ?? []).flatMap(({ attempts }) => attempts.map(({ load }) => load)),
      ...(pacing?.rows ?? []).flatMap(({ load }) => load ?? []),
      ...(plan.warmUp?.steps ?? []).flatMap(({ sets }) => sets.map(({ load }) => load)),
    ]);
    for (const { bar, perSide, collarsEach, kilograms } of bars) {
      if (bar === undefined || perSide === undefined) continue;
      const side = perSide.reduce((sum, { plate, count }) => sum + count * inKilograms(plate), 0);
      const collar = collarsEach === undefined ? 0 : inKilograms(collarsEach);
      expect(inKilograms(bar) + 2 * (side + collar)).toBeCloseTo(kilograms, 6);
    }
  });

  test("carries the stop signs and what goes before the brief", () => {
    const weights = plan.cautions.map(({ weight }) => weight);
    expect(weights.filter((weight) => weight === "stop").length).toBeGreaterThanOrEqual(3);
    expect(weights).toContain("rule");
  });

  test("starts no lift after the last start and none before the window opens", () => {
    for (const { lifting } of plan.parts) {
      for (const lift of lifting?.lifts ?? []) {
        const clocks = lift.attempts.map(({ clock }) => clock);
        expect(clocks).toEqual([...clocks].sort((a, b) => a - b));
        const opens = lifting?.window.opens ?? 0;
        for (const clock of clocks) {
          expect(clock + (clock < opens ? opens : 0)).toBeLessThanOrEqual(lift.lastStart);
        }
      }
    }
  });
});

// Part b starts 1:30 after part a, and a bar that stands ready is lifted 25 s after that at the earliest.
test("the finish table speaks of the end of the part before, not of the start of the window", () => {
  const plan = planFor("zoe-quellmalz", "lamp-oil");
  const [first, second] = plan.parts;
  const table = second?.lifting?.finishTable ?? [];
  // Rows alike are one, from the first finish to the last.
  expect(table.length).toBeGreaterThan(0);
  const ends = first?.pacing?.duration ?? 0;
  expect(table[0]?.finish ?? Infinity).toBeLessThanOrEqual(ends + 1e-6);
  for (const { finish, firstLift } of table) {
    if (firstLift !== undefined) expect(firstLift).toBeGreaterThanOrEqual(finish + 90);
  }
});

test("where the cap ends the part before, no finish past it is told", () => {
  const plan = planFor("kleio-maraki", "lamp-oil");
  const [first, second] = plan.parts;
  expect(first?.pacing?.ending).toBe("stopped-by-cap");
  for (const { finish } of second?.lifting?.finishTable ?? []) {
    expect(finish).toBeLessThanOrEqual((first?.pacing?.cap ?? 0) + 1e-6);
  }
});

test("equal input gives an equal plan", () => {
  expect(planFor("zoe-quellmalz", "lamp-oil")).toEqual(planFor("zoe-quellmalz", "lamp-oil"));
});

test("an athlete of whom only name and level are known is planned, and the plan says what it assumed", () => {
  const plan = planFor("kleio-maraki", "tide-mill");
  expect(plan.headline.result).toBeDefined();
  expect(new Set(plan.basis.map(({ kind }) => kind))).toEqual(new Set(["level"]));
});

test("a lift that a stated limit rules out is not planned, and the brief says whom to ask", () => {
  const plan = planFor("tamsin-roake", "lamp-oil");
  expect(plan.parts.find(({ name }) => name === "b")?.lifting).toBeUndefined();
  expect(plan.withheld.some(({ what, part }) => what === "part" && part === "b")).toBe(true);
});

test("no maximum is planned in pregnancy, whatever else the profile says", () => {
  const plan = planFor("zoe-quellmalz", "lamp-oil", {
    limits: [{ condition: "pregnancy", avoid: [], without: [] }],
  });
  expect(plan.parts.every(({ lifting }) => lifting === undefined)).toBe(true);
  expect(plan.withheld.length).toBeGreaterThan(0);
  expect(plan.withheld.every(({ reason }) => sayAsk(reason) !== "")).toBe(true);
});

test("a faster athlete is not planned slower: the same person with a better row never rows the gates slower", () => {
  const slower = planFor("lukasz-wierzbin", "sluice-gates");
  const who = data.athletes.find(({ id }) => id === "lukasz-wierzbin");
  const efforts = who?.efforts.map((effort) =>
    effort.movement === "row" ? { ...effort, time: (effort.time * 0.95) as typeof effort.time } : effort,
  );
  const faster = planFor("lukasz-wierzbin", "sluice-gates", { efforts: efforts ?? [] });
  expect(faster.headline.result?.target).toBeLessThan(slower.headline.result?.target ?? 0);
});

test("a strategy holds a plan for every band in order and nobody's name", () => {
  const [workout] = data.workouts;
  if (workout === undefined) throw new Error("the demonstration has workouts");
  const strategy = makeStrategy({ workout, data, date });
  // Eight bands of the demonstration, and the regular band of the masters' division beside that of its sex.
  expect(strategy.plans.map(({ band }) => band.order)).toEqual([1, 2, 3, 4, 4, 5, 6, 7, 8]);
  const text = JSON.stringify(strategy.plans);
  for (const { name, id } of data.athletes) {
    expect(text).not.toContain(name);
    expect(text).not.toContain(id);
  }
});

import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { makePlan } from "../../src/compute/make-plan.ts";
import { settle } from "../../src/compute/plan/settle.ts";
import { unroll } from "../../src/compute/unroll/unroll.ts";
import type { Athlete, IsoDate } from "../../src/models/athlete.ts";
import type { Course } from "../../src/models/course.ts";
import type { Data } from "../../src/models/data.ts";
import type { Plan } from "../../src/models/plan/plan.ts";
import { kilograms, metres, seconds } from "../../src/models/quantity.ts";
import type { Workout } from "../../src/models/workout.ts";
import { readData } from "../../src/reading/read-data.ts";
import { sayFaults } from "../../src/reading/say-fault.ts";
import { readFolder } from "../../src/site/read-folder.ts";
import { disagreements } from "../support/disagreements.ts";
import { type FastestOf, planTroubles } from "../support/plan-troubles.ts";
import { ROOT } from "../support/run-command.ts";

// Every workout of `workouts/` (as really set) and `blocks/` (of our own) for four athletes: known by level only, with results of
// their own, strong in pounds, and with a stated limit. What must hold of every plan is judged by `planTroubles`; the numbers of
// single plans are pinned elsewhere.
const DAY = "2026-11-27" as IsoDate;
const data = everything();

function everything(): Data {
  const library = ["movements", "warm-ups", "recovery", "cautions"].map((name) => `content/${name}`);
  const texts = (folder: string, as: string) =>
    readdirSync(`${ROOT}/tests/${folder}`).map((name) => ({
      path: `${as}/${name}`,
      text: readFileSync(`${ROOT}/tests/${folder}/${name}`, "utf8"),
    }));
  const read = readData(readFolder(ROOT, library).files, [
    ...texts("cases/workouts", "content/workouts"),
    ...texts("cases/blocks", "content/workouts"),
    ...texts("fixtures/four-athletes", "athletes"),
    ...readFolder(ROOT, ["content/gyms"]).files,
  ]);
  if (!read.ok) throw new Error(sayFaults(read.faults));
  return read.value;
}

function coursesOf(athlete: Athlete, workout: Workout, plan: Plan): (part: string) => Course {
  const { context } = settle(athlete, workout, data, DAY);
  return (name) => {
    const part = workout.parts.find((one) => one.name === name);
    if (!part) throw new Error(`there is no part ${name}`);
    return unroll(workout, part, {
      division: context.division,
      movements: data.library.movements,
      bestLift: (id) => context.bestLift(id)?.kilograms,
      startClock: seconds(plan.parts.find((one) => one.name === name)?.start.clock ?? 0),
      ...(athlete.bodyMass !== undefined && { bodyMass: athlete.bodyMass }),
    });
  };
}

/** The fastest cycle of what a row asks for, as the athlete's numbers have it. */
function fastestOf(athlete: Athlete, workout: Workout): FastestOf {
  const { capacity } = settle(athlete, workout, data, DAY).context;
  return ({ movement: id = "", unit, load, heightMetres }) => {
    const movement = data.library.movements.get(id);
    if (!movement) throw new Error(`there is no movement ${id}`);
    const task = {
      movement,
      unit,
      ...(load && { load: kilograms(load.kilograms) }),
      ...(heightMetres !== undefined && { height: metres(heightMetres) }),
    };
    const found = capacity.of(task);
    return "missing" in found || !found.possible ? 0 : found.fastest;
  };
}

describe("nothing is planned wrongly in silence", () => {
  it("thirty workouts as they are set and at least twenty of our own, for four athletes", () => {
    expect(data.workouts.length).toBeGreaterThanOrEqual(50);
    expect(data.athletes).toHaveLength(4);
  });

  it.each(data.workouts.map((workout) => [workout.id, workout] as const))("%s", (_id, workout) => {
    for (const athlete of data.athletes) {
      const plan = makePlan({ athlete, workout, data, date: DAY });
      expect([athlete.id, planTroubles(plan, coursesOf(athlete, workout, plan), fastestOf(athlete, workout))]).toEqual([athlete.id, []]);
      expect([athlete.id, disagreements(plan)]).toEqual([athlete.id, []]);
    }
  });
});

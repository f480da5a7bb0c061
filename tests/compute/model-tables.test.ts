import { describe, expect, it } from "vitest";
import { makePlan } from "../../src/compute/make-plan.ts";
import { MODEL_TABLES, SETTABLE } from "../../src/compute/model-tables.ts";
import type { Data } from "../../src/models/data.ts";
import { rangeOf } from "../../src/models/model-constant.ts";
import { demoData } from "../support/demo-data.ts";

const constants = MODEL_TABLES.flatMap(({ constants: all }) => Object.entries(all));
const demo = demoData();

/** Plans of an athlete with results and of one without, for a workout with a lift, by a model with one number set. */
function plansWith(name: string, value: number): readonly unknown[] {
  const data: Data = { ...demo, settings: { ...demo.settings, overrides: { [name]: value } } };
  const athletes = [data.athletes[0], data.athletes.find(({ lifts }) => lifts.length === 0)];
  return athletes.flatMap((athlete) =>
    data.workouts
      .slice(0, 2)
      .map((workout) =>
        athlete === undefined ? [] : makePlan({ athlete, workout, data, date: "2026-11-24" }),
      ),
  );
}

/** Whether a value holds a number that is none. */
const isBroken = (value: unknown): boolean =>
  typeof value === "number"
    ? !Number.isFinite(value)
    : typeof value === "object" && value !== null && Object.values(value).some(isBroken);

describe("the constants of the models", () => {
  it("have names of their own", () => {
    const names = constants.map(([name]) => name);
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
    expect(SETTABLE.size).toBe(names.length);
  });

  it("say what they do and where they come from, and lie inside what is possible", () => {
    const faults = constants.filter(([, constant]) => {
      const [least, most] = rangeOf(constant);
      const inside = constant.value >= least && constant.value <= most;
      return !inside || constant.does === "" || constant.source === "";
    });
    expect(faults).toEqual([]);
  });

  it("make a plan at the least and at the most that settings can make of them", { timeout: 240_000 }, () => {
    const broken = [...SETTABLE].flatMap(([name, range]) =>
      range.filter((value) => plansWith(name, value).some(isBroken)).map((value) => `${name}: ${value}`),
    );
    expect(broken).toEqual([]);
  });
});

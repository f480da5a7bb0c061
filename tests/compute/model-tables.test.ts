import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { makePlan } from "../../src/compute/make-plan.ts";
import { FIXED_TABLES, MODEL_TABLES, SETTABLE } from "../../src/compute/model-tables.ts";
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

  it("stand all in the list of tables", () => {
    const below = fileURLToPath(new URL("../../src/compute", import.meta.url));
    const files = readdirSync(below, { recursive: true, encoding: "utf8" });
    const named = files
      .filter((file) => file.endsWith("constants.ts"))
      .flatMap((file) => [
        ...readFileSync(`${below}/${file}`, "utf8").matchAll(
          /^export const (\w+) = \{[\s\S]*?^\} as const/gm,
        ),
      ])
      .map(([, name]) => name);
    const list = readFileSync(`${below}/model-tables.ts`, "utf8");
    expect(named.length).toBe(MODEL_TABLES.length + FIXED_TABLES.length);
    expect(named.filter((name) => !list.includes(`constants: ${name} }`))).toEqual([]);
  });

  it("say what they do and where they come from, and lie inside what is possible", () => {
    const faults = constants.filter(([, constant]) => {
      const [least, most] = rangeOf(constant);
      const inside = constant.value >= least && constant.value <= most;
      return !inside || constant.does === "" || constant.source === "";
    });
    expect(faults).toEqual([]);
  });

  // tests/experiments/model-bounds.ts tries all of them; these once hung or broke a plan.
  it.each(["refillFastSeconds", "breakShortest", "centralOfSets", "mixedSeconds"])(
    "make a plan at the least and at the most that %s can be set to",
    (name) => {
      const range = SETTABLE.get(name) ?? [];
      expect(range).toHaveLength(2);
      expect(range.filter((value) => plansWith(name, value).some(isBroken))).toEqual([]);
    },
  );
});

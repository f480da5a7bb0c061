import { expect, it } from "vitest";
import { loadsAtShare } from "../../src/compute/loads-at-share.ts";
import { makePlan } from "../../src/compute/make-plan.ts";
import type { Data } from "../../src/models/data.ts";
import { demoData } from "../support/demo-data.ts";
import { without } from "../support/without.ts";

const demo = demoData();
const athlete = demo.athletes.find(({ id }) => id === "zoe-quellmalz");
const workout = demo.workouts.find(({ id }) => id === "lamp-oil");
if (athlete === undefined || workout === undefined) throw new Error("the demonstration has changed");

const date = "2026-11-24";

it("loads a share with the bar the plan uses, where a competition counts a 15 kg bar as 35 lb", () => {
  const competitions = new Map(
    [...demo.competitions].map(([id, one]) => [id, { ...one, barCounts: "15-kg-as-35-lb" as const }]),
  );
  const data: Data = { ...demo, competitions };
  const plan = makePlan({ athlete, workout, data, date });
  const bar = plan.headline.firstLoad?.bar;
  expect(bar).toEqual({ value: 35, unit: "lb" });
  expect(loadsAtShare(athlete, workout, data, date)("clean-and-jerk", 0.7)?.bar).toEqual(bar);
});

it("has a number where the gym is only assumed", () => {
  const data: Data = { ...demo, settings: without(demo.settings, "gym"), gyms: new Map() };
  const load = loadsAtShare(without(athlete, "gym"), workout, data, date)("clean-and-jerk", 0.7);
  // 70 % of 101 kg is 70.7 kg; a usual gym makes 70 kg below it.
  expect(load?.kilograms).toBe(70);
});

import { makePlan } from "../../src/compute/make-plan.ts";
import { SETTABLE } from "../../src/compute/model-tables.ts";
import { demoData } from "../support/demo-data.ts";

// Plans two athletes of the demonstration with each number of the model at the least and at the most that settings allow, and
// tells where a plan cannot be made, holds a number that is none, or takes longer than a second. Some minutes.

const demo = demoData();
const athletes = [demo.athletes[0], demo.athletes.find(({ lifts }) => lifts.length === 0)];

const isBroken = (value: unknown): boolean =>
  typeof value === "number"
    ? !Number.isFinite(value)
    : typeof value === "object" && value !== null && Object.values(value).some(isBroken);

for (const [name, range] of SETTABLE) {
  for (const value of range) {
    const settings = { ...demo.settings, overrides: { [name]: value } };
    for (const athlete of athletes) {
      for (const workout of demo.workouts.slice(0, 2)) {
        if (athlete === undefined) continue;
        const before = performance.now();
        const broken = isBroken(
          makePlan({ athlete, workout, data: { ...demo, settings }, date: "2026-11-24" }),
        );
        const seconds = (performance.now() - before) / 1000;
        if (broken || seconds > 1) {
          console.log(
            `${name} ${value}, ${athlete.id}, ${workout.id}: ${broken ? "broken" : `${seconds.toFixed(1)} s`}`,
          );
        }
      }
    }
  }
}

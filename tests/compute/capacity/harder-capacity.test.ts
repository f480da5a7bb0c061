import { expect, it } from "vitest";
import { harderCapacity } from "../../../src/compute/capacity/harder-capacity.ts";
import { settle } from "../../../src/compute/plan/settle.ts";
import { demoData } from "../../support/demo-data.ts";

const data = demoData();
const [athlete] = data.athletes;
const [workout] = data.workouts;
const burpee = data.library.movements.get("burpee");
if (!athlete || !workout || !burpee) throw new Error("the demonstration has athletes, workouts and burpees");
const { capacity } = settle(athlete, workout, data, "2026-11-25").context;

const of = (all: number, own = 0) => {
  const known = harderCapacity(capacity, { all, movements: new Map([["burpee", own]]) }).of({
    movement: burpee,
    unit: "reps",
  });
  if ("missing" in known) throw new Error(known.missing.kind);
  return known;
};

it("a harder workout slows every pace by the factor and the quickest cycle by its root", () => {
  expect(of(Math.log(1.2)).sustainable / of(0).sustainable).toBeCloseTo(1.2, 9);
  expect(of(Math.log(1.2)).fastest / of(0).fastest).toBeCloseTo(Math.sqrt(1.2), 9);
});

it("a movement's own part comes on top of that of all the work", () => {
  expect(of(0.1, 0.05).sustainable / of(0).sustainable).toBeCloseTo(Math.exp(0.15), 9);
});

it("an easier workout lengthens no set: an own best binds", () => {
  expect(of(-0.2).unbroken).toBe(of(0).unbroken);
  expect(of(0.2).unbroken).toBeLessThanOrEqual(of(0).unbroken);
});

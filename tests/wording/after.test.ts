import { expect, it } from "vitest";
import { sayAmountRange, sayExtent, sayWork } from "../../src/wording/after.ts";

const nb = (text: string): string => text.replaceAll("_", "\u00a0");

it("amounts are told no finer than the stands they come from", () => {
  expect(sayAmountRange({ low: 64, high: 77, unit: "g" })).toBe(nb("65–75_g"));
  expect(sayAmountRange({ low: 0.45, high: 0.8, unit: "L" })).toBe(nb("0.5–0.8_L"));
  expect(sayAmountRange({ low: 20, high: 21, unit: "g" })).toBe(nb("20_g"));
});

it("a step has an amount, or a length, or neither", () => {
  expect(sayExtent({ amount: { low: 64, high: 77, unit: "g" }, minutes: 3 })).toBe(nb("65–75_g"));
  expect(sayExtent({ minutes: 10 })).toBe(nb("10_min"));
  expect(sayExtent({})).toBeUndefined();
});

it("same-day work is sets by reps at a load", () => {
  const work = { movement: "clean-pull", name: "clean pull", sets: 4, reps: 3 };
  expect(sayWork(work, "kg")).toBe(nb("clean pull 4_×_3"));
  const load = { mass: { value: 50, unit: "kg" as const }, kilograms: 50, pieces: 1 };
  expect(sayWork({ ...work, load }, "kg")).toBe(nb("clean pull 4_×_3 at 50_kg"));
});

import { expect, it } from "vitest";
import { sayEightInTen, sayGoal } from "../../src/wording/goal.ts";
import { samplePlans } from "../support/sample-plan.ts";

const nb = (text: string): string => text.replaceAll("_", "\u00a0");

it("the goal of a time is the time, with its range", () => {
  expect(sayGoal(samplePlans.forTimeThenLift)).toEqual({
    label: "aim at",
    figure: "8:30",
    unit: "",
    range: "8:05–9:05",
  });
});

it("the goal of rounds and reps takes them apart", () => {
  expect(sayGoal(samplePlans.twentyRounds)).toEqual({
    label: "aim at",
    figure: nb("20_+_9"),
    unit: "rounds + reps",
    range: nb("19_+_0 to 21_+_12"),
  });
});

it("where the cap comes first, the goal is the reps by then", () => {
  expect(sayGoal(samplePlans.almostNothingKnown)).toEqual({
    label: "by the cap of 9:00",
    figure: "106",
    unit: "reps",
    range: "94–110",
  });
});

it("of a lift alone the goal is the opener, of nothing known there is none", () => {
  const { headline, ...rest } = samplePlans.forTimeThenLift;
  const { firstLoad } = headline;
  if (!firstLoad) throw new Error("the sample has an opener");
  expect(sayGoal({ ...rest, headline: { score: "load", firstLoad } })).toEqual({
    label: "open with",
    figure: "58",
    unit: "kg",
  });
  expect(sayGoal({ ...rest, headline: { score: "load" } })).toBeUndefined();
});

it("a range is claimed for eight days in ten", () => {
  expect(sayEightInTen("8:05–9:05")).toBe(nb("8_days in_10: 8:05–9:05"));
});

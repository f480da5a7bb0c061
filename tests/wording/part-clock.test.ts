import { expect, it } from "vitest";
import { clockShift, sayWhichClock } from "../../src/wording/part-clock.ts";
import { samplePlans } from "../support/sample-plan.ts";

const [paced, lifted] = samplePlans.forTimeThenLift.parts;
if (!paced || !lifted) throw new Error("the sample has two parts");

it("the first part's clock is the running clock", () => {
  expect([clockShift(paced), sayWhichClock(paced)]).toEqual([0, undefined]);
});

it("lifts after a part are read on the running clock", () => {
  expect([clockShift(lifted), sayWhichClock(lifted)]).toEqual([lifted.start.clock, "running clock"]);
});

it("work that starts a rest after another part has a clock of its own", () => {
  const after = { ...paced, name: "C", start: { kind: "after", clock: 700, after: "A", rest: 180 } } as const;
  expect([clockShift(after), sayWhichClock(after)]).toEqual([0, "clock from the start of C"]);
});

it("work that starts at a fixed time is read on the running clock", () => {
  const fixed = { ...paced, start: { kind: "clock", clock: 600 } } as const;
  expect([clockShift(fixed), sayWhichClock(fixed)]).toEqual([600, "running clock"]);
});

it("a score that leaves rests out says so beside the running clock", () => {
  const { pacing } = paced;
  if (!pacing) throw new Error("the sample has pacing");
  const result = { ...pacing.result, target: pacing.duration - 360 };
  const apart = { ...paced, pacing: { ...pacing, score: "time", ending: "finishes", result } } as const;
  expect(sayWhichClock(apart)).toBe("running clock; the score leaves out 6:00 of rest");
});

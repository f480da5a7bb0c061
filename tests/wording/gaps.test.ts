import { expect, it } from "vitest";
import { type Gap, sayGapClock, sayGapStep, sayGapStepName, sayGapTitle } from "../../src/wording/gaps.ts";

const build: Gap["steps"][number] = {
  kind: "build",
  before: 420,
  lasts: 270,
  sets: [
    {
      load: { mass: { value: 40, unit: "kg" }, kilograms: 40, pieces: 1, perSide: [] },
      reps: 3,
      before: 240,
    },
  ],
};
const paced: Gap = { part: "b", from: 744, at: 2720, steps: [] };
const whole: Gap = { ...paced, lift: { movement: "snatch", name: "snatch" } };
const step = (kind: Gap["steps"][number]["kind"], lasts = 300) => ({ kind, before: 900, lasts, sets: [] });

it("a gap is called by what follows, how long it is and when the first lift or rep comes", () => {
  expect(sayGapTitle(whole)).toBe("Before part B: 33\u00a0min, first snatch at 45:20");
  expect(sayGapTitle(paced)).toBe("Before part B: 33\u00a0min, start at 45:20");
});

it("its steps stand on the clock of the workout, the build with load and clock of each set", () => {
  expect(sayGapClock(whole, build)).toBe("38:20");
  expect(sayGapStep(whole, build, "kg")).toBe("Build the snatch again: 3\u00a0×\u00a040\u00a0kg at 41:20.");
  expect(sayGapStepName(whole, step("keep-warm"))).toBe("keep warm");
});

it("a long wait is sat out and eaten in, a short one walked", () => {
  expect(sayGapStep(whole, step("keep-warm", 600), "kg")).toBe(
    "Keep warm: stay covered, sip, and walk a little every few minutes.",
  );
  expect(sayGapStep(whole, step("keep-warm", 2400), "kg")).toBe(
    "Keep warm: sit covered, drink, eat a little you know, and walk a few minutes every ten.",
  );
});

import { describe, expect, it } from "vitest";
import { layOut, orderSteps } from "../../../src/compute/warm-up/lay-out.ts";
import type { PickedBlock } from "../../../src/compute/warm-up/pick-blocks.ts";
import type { BuildHalf } from "../../../src/compute/warm-up/plan-build.ts";
import type { WarmUpStage } from "../../../src/models/library.ts";
import { warmUps } from "../../support/library.ts";

const picked = (stage: WarmUpStage): PickedBlock => {
  const block = warmUps.find((each) => each.stage === stage);
  if (block === undefined) throw new Error(`no ${stage}`);
  return { block, id: stage, say: block.say };
};
const half = (lasts: number, load: number): BuildHalf => ({
  lasts,
  sets: [
    {
      load: { mass: { value: load, unit: "kg" }, kilograms: load, pieces: 1 },
      reps: 1,
      restAfter: 60,
      movement: "snatch",
    },
  ],
});
const times = new Map([
  ["rest", 300],
  ["ready", 120],
  ["primer", 60],
  ["build", 420],
]);
const kept = [picked("rest"), picked("build"), picked("primer"), picked("ready")];

describe("the steps of a warm-up", () => {
  it("stand in their order, the primers between the halves of the build", () => {
    const steps = orderSteps(kept, times, [half(180, 40), half(240, 60)]);
    expect(steps.map((step) => [step.id, step.lasts, step.sets.length])).toEqual([
      ["ready", 120, 0],
      ["build", 180, 1],
      ["primer", 60, 0],
      ["build-heavy", 240, 1],
      ["rest", 300, 0],
    ]);
    expect(steps.map(({ goesOn }) => goesOn ?? false)).toEqual([false, false, false, true, false]);
  });

  it("keep a build whole that is short or has no primers to make room for", () => {
    const short = orderSteps(kept, times, [half(420, 40)]);
    expect(short.map((step) => step.id)).toEqual(["ready", "build", "primer", "rest"]);
    const alone = orderSteps([picked("build")], times, [half(180, 40), half(240, 60)]);
    expect(alone.map((step) => [step.id, step.lasts, step.sets.length])).toEqual([["build", 420, 2]]);
  });

  it("are counted back from the start, with wall clocks where it is known", () => {
    const steps = orderSteps(kept, times, [half(180, 40), half(240, 60)]);
    // 300 + 240 + 60 + 180 + 120 = 900 s, a quarter of an hour before ten past midnight
    expect(layOut(steps, "00:10").map((step) => [step.before, step.clock])).toEqual([
      [900, "23:55"],
      [780, "23:57"],
      [600, "00:00"],
      [540, "00:01"],
      [300, "00:05"],
    ]);
    expect(layOut(steps, undefined)[0]).not.toHaveProperty("clock");
  });
});

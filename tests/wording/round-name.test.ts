import { expect, it } from "vitest";
import { sayRoundLabel, sayRoundOf } from "../../src/wording/round-name.ts";
import { samplePlans } from "../support/sample-plan.ts";

it("a round is called by its number, one of a ladder by its amount", () => {
  expect(sayRoundLabel("3")).toBe("round\u00a03");
  expect(sayRoundLabel("21s")).toBe("the 21s");
});

it("what stands beside the rounds is called what it is", () => {
  expect(["in", "mid", "out"].map(sayRoundLabel)).toEqual(["the buy-in", "the work between", "the cash-out"]);
});

it("work in one round has no round to name", () => {
  const pacing = samplePlans.forTimeThenLift.parts[0]?.pacing;
  if (!pacing) throw new Error("the sample has pacing");
  expect(sayRoundOf(pacing, 4)).toBe("round\u00a04");
  expect(sayRoundOf({ rounds: pacing.rounds.slice(0, 1) }, 1)).toBeUndefined();
});

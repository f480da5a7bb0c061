import { expect, it } from "vitest";
import { changedRounds } from "../../../src/compute/early-splits/changed-rounds.ts";
import { samplePlans } from "../../support/sample-plan.ts";

const [first] = samplePlans.forTimeThenLift.parts[0]?.pacing?.rounds ?? [];
if (!first) throw new Error("the sample has rounds");
const lasting = (...seconds: readonly number[]) =>
  seconds.map((one, index) => ({ ...first, round: index + 1, seconds: one }));

it("is the difference of the first and of the last round, in seconds", () => {
  expect(changedRounds(lasting(90, 95, 102), lasting(94, 95, 99))).toEqual({ first: 4, last: -3 });
});

it("is nothing for work in one round, and where the rounds are not the same", () => {
  expect(changedRounds(lasting(90), lasting(94))).toBeUndefined();
  expect(changedRounds(lasting(90, 95, 102), lasting(94, 95))).toBeUndefined();
});

it("are not told where a cap cuts the last round elsewhere", () => {
  const cut = lasting(94, 95, 40).map((round, at) =>
    at === 2 ? { ...round, scoreDone: round.scoreDone - 5 } : round,
  );
  expect(changedRounds(lasting(90, 95, 60), cut)).toBeUndefined();
});

import { expect, it } from "vitest";
import { sayCeiling } from "../../src/wording/ceiling.ts";
import { samplePlans } from "../support/sample-plan.ts";

const pacing = samplePlans.forTimeThenLift.parts[0]?.pacing;
if (!pacing) throw new Error("the sample has pacing");
const ceiling = { round: 1, seconds: 139 };

it("the fastest start is said of the round by the name it has elsewhere", () => {
  expect(sayCeiling({ ...pacing, ceiling })).toBe("Round\u00a01 no faster than 2:19.");
  const ladder = pacing.rounds.map((round, index) => ({ ...round, label: `${21 - 3 * index}s` }));
  expect(sayCeiling({ ...pacing, rounds: ladder, ceiling })).toBe("The 21s no faster than 2:19.");
});

it("where the clock ends the round it is an amount", () => {
  const most = { round: 1, seconds: 300, score: 116 };
  expect(sayCeiling({ ...pacing, score: "reps", ceiling: most })).toBe(
    "Round\u00a01 no more than 116\u00a0reps.",
  );
});

it("in one round it is a clock", () => {
  expect(sayCeiling({ ...pacing, rounds: pacing.rounds.slice(0, 1), ceiling })).toBe(
    "Not past this point before 2:19.",
  );
  expect(sayCeiling({ ...pacing, ceiling: undefined })).toBeUndefined();
  const atStation = { ...ceiling, row: pacing.rows[0]?.index ?? 0 };
  expect(sayCeiling({ ...pacing, rounds: pacing.rounds.slice(0, 1), ceiling: atStation }, 60)).toBe(
    "Not past the first kettlebell swings before 3:19.",
  );
});

import { describe, expect, it } from "vitest";
import { ATTEMPT_CONSTANTS } from "../../../src/compute/lifting/attempt-constants.ts";
import { chooseAttempts } from "../../../src/compute/lifting/choose-attempts.ts";
import { finishOffsets, finishTable } from "../../../src/compute/lifting/finish-table.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { attemptProblem } from "../../support/attempt-problem.ts";
import { kg } from "../../support/sample-gym.ts";

const problem = attemptProblem({
  step: 60,
  gaps: [2, 3],
  firsts: [0, 1],
  begins: [0, 2, 4, 6],
  lastStart: 5,
});
const candidates = problem.loads.map((kilograms) => ({ kilograms, side: { kg: kilograms, lb: 0 } }));
const chosen = chooseAttempts(
  { ...problem, standard: { mean: 100, spread: 5, noise: 6 } },
  candidates,
  candidates,
  0,
  withOverrides(ATTEMPT_CONSTANTS),
);
const rows = finishTable(
  chosen,
  480,
  [0, 2, 4, 6].map((step) => ({ finish: 480 + 60 * step, step, strength: problem.strength })),
  kg,
);

describe("the finish-time table", () => {
  it("says for each finish when to lift first, how many lifts there are, and which loads when all are made", () => {
    expect(rows[0]).toMatchObject({ finish: 480, firstLift: 480, lifts: 3 });
    expect(rows[0]?.loads[0]).toEqual(kg(90));
  });

  it("has fewer lifts and expects less the later the finish, and none where no time is left", () => {
    expect(rows.map(({ lifts }) => lifts)).toEqual([3, 2, 1, 0]);
    const expected = rows.map((row) => row.expected ?? 0);
    expect(expected).toEqual([...expected].sort((a, b) => b - a));
    expect(rows[3]).toEqual({ finish: 840, lifts: 0, loads: [] });
  });
});

describe("the finishes looked at", () => {
  it("lie in equal distances about the expected one, from 1.4 spreads before to 2.1 after", () => {
    // 0.7 x 40 s are two steps of 20 s when rounded up
    expect(finishOffsets(40, 20)).toEqual([-4, -2, 0, 2, 4, 6]);
  });

  it("end with the cap of the part before", () => {
    expect(finishOffsets(40, 20, 70)).toEqual([-4, -2, 0, 2, 4]);
    expect(finishOffsets(40, 20, 20)).toEqual([-4, -2, 0, 1]);
    expect(finishOffsets(40, 20, -5)).toEqual([-4, -2, 0]);
  });

  it("are a step apart at least", () => {
    expect(finishOffsets(1, 20)).toEqual([-2, -1, 0, 1, 2, 3]);
  });
});

import { describe, expect, it } from "vitest";
import { attemptConstants } from "../../../src/compute/lifting/attempt-constants.ts";
import { type FinishRow, finishOffsets, finishTable } from "../../../src/compute/lifting/finish-table.ts";
import { withIron } from "../../../src/compute/lifting/lifting-input.ts";
import { windowOf } from "../../../src/compute/lifting/lifting-window.ts";
import { objectiveOf } from "../../../src/compute/lifting/objective.ts";
import { planLadder } from "../../../src/compute/lifting/plan-ladder.ts";
import { isMissing, readyLift } from "../../../src/compute/lifting/ready-lift.ts";
import { seconds } from "../../../src/models/quantity.ts";
import { liftResult, sampleAthlete } from "../../support/sample-lifter.ts";
import { cleanAndJerk, liftingInput, liftPart } from "../../support/sample-lifting.ts";

const constants = attemptConstants();
const OFFSETS = [-120, -60, 0, 60, 120, 180, 240, 300, 380, 420];

/** Rows for a part before that should end at 9:20, the window open until 16:00. */
const rowsOf = (best: number): readonly FinishRow[] => tableOf(best).rows;

function tableOf(best: number) {
  const part = liftPart({
    kind: "max-load",
    length: { kind: "until", time: seconds(960) },
    order: "as-written",
  });
  const input = withIron(
    liftingInput({
      part,
      opens: { mean: 560, spread: 40 },
      before: { work: [{ muscle: "legs", intensity: 0.9, minutes: 9 }], secondsSince: 0 },
      athlete: sampleAthlete([liftResult("clean-and-jerk", best)]),
    }),
  );
  const line = { pieces: [{ movement: cleanAndJerk, reps: 1 }] } as const;
  const ready = readyLift(input, line, windowOf(input), objectiveOf(input, false), constants);
  if (isMissing(ready)) throw new Error(ready.kind);
  const planned = planLadder(ready.task, ready.window, constants);
  const moments = { offsets: OFFSETS, opens: 560, rest: 0 };
  return { planned, rows: finishTable(ready.task, ready.window, planned, moments, constants) };
}

describe("the finish-time table", () => {
  it("covers every finish looked at once, equal loads as one row", () => {
    const rows = rowsOf(100);
    expect(rows[0]?.finish).toBe(440);
    expect(rows.at(-1)?.until).toBe(980);
    for (const [at, { loads, finish }] of rows.slice(1).entries()) {
      expect(loads).not.toEqual(rows[at]?.loads);
      expect(finish).toBeGreaterThan(rows[at]?.until ?? Infinity);
    }
    expect(rows.length).toBeLessThan(OFFSETS.length);
  });

  it("says when to lift first for the first and the last finish of a row, never before either", () => {
    for (const { finish, until, firstLift, firstLiftUntil } of rowsOf(100)) {
      if (firstLift === undefined) continue;
      expect(firstLift).toBeGreaterThanOrEqual(finish + 20);
      expect(firstLiftUntil).toBeGreaterThanOrEqual(until + 20);
    }
  });

  it("loads no more and jumps no further the later and the more tired, and in the end has no time", () => {
    for (const best of [45, 72.5, 100, 122.5, 157.5]) {
      const rows = rowsOf(best);
      for (const [row, { loads }] of rows.slice(1).entries()) {
        const before = rows[row]?.loads ?? [];
        expect(loads.length).toBeLessThanOrEqual(before.length);
        for (const [at, load] of loads.entries()) {
          expect(load).toBeLessThanOrEqual(before[at] ?? 0);
          const jump = load - (loads[at - 1] ?? load);
          expect(jump).toBeLessThanOrEqual((before[at] ?? 0) - (before[at - 1] ?? before[at] ?? 0) + 1e-6);
        }
      }
      expect(rows.at(-1)?.loads).toEqual([]);
    }
  });

  it("expects less the later the finish", () => {
    const expected = rowsOf(100).map((row) => row.expected ?? 0);
    expect(expected).toEqual([...expected].sort((a, b) => b - a));
  });
});

describe("the finishes looked at", () => {
  it("lie in equal distances about the expected one, from 1.4 spreads before to 2.1 after", () => {
    // 0.7 x 40 s are 30 s when rounded up to five
    expect(finishOffsets(40, -Infinity)).toEqual([-60, -30, 0, 30, 60, 90]);
  });

  it("end with the cap of the part before, and begin after the start", () => {
    expect(finishOffsets(40, -Infinity, 70)).toEqual([-60, -30, 0, 30, 60, 70]);
    expect(finishOffsets(40, -50, 20)).toEqual([-30, 0, 20]);
  });

  it("are five seconds apart at least", () => {
    expect(finishOffsets(1, -Infinity)).toEqual([-10, -5, 0, 5, 10, 15]);
  });

  it("bounds the other finishes by the expected one, which stays as it was planned", () => {
    for (let best = 40; best <= 160; best += 2.5) {
      const { rows, planned } = tableOf(best);
      const expected = rows.find(({ finish, until }) => finish <= 560 && 560 <= until);
      expect([best, expected?.loads]).toEqual([best, planned.chosen.loads]);
    }
  });
});

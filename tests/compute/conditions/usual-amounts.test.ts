import { describe, expect, it } from "vitest";
import { usualAmounts, type WorkDone } from "../../../src/compute/conditions/usual-amounts.ts";
import type { LoggedResult, MaxEffort } from "../../../src/models/athlete.ts";
import { seconds } from "../../../src/models/quantity.ts";
import { athlete } from "../../support/hand-made.ts";

const place = { file: "hand-made.yaml", line: 1, column: 1 };
const effort = (amount: number, date?: string): MaxEffort => ({
  movement: "pull-up",
  amount,
  unit: "reps",
  time: seconds(120),
  ...(date !== undefined && { date }),
  approximate: false,
  place,
});
const result = (given: Partial<LoggedResult>): LoggedResult => ({
  workout: "x",
  part: "a",
  splits: [],
  attempts: [],
  version: "prescribed",
  ...given,
});
const rounds: WorkDone = [1, 2, 3].flatMap(() => [
  { movement: "pull-up", amount: 10, scores: 10 },
  { movement: "run", amount: 200, scores: 1 },
]);

describe("what somebody is used to", () => {
  it("is the most of the last sixty days", () => {
    const who = athlete({ efforts: [effort(25, "2026-11-01"), effort(60, "2026-08-01"), effort(30)] });
    expect(usualAmounts(who, "2026-11-26", () => undefined).get("pull-up")).toEqual({
      amount: 30,
      last: "2026-11-01",
    });
  });

  it("counts a finished workout whole", () => {
    const who = athlete({ results: [result({ date: "2026-11-20", time: seconds(400) })] });
    const usual = usualAmounts(who, "2026-11-26", () => rounds);
    expect(usual.get("pull-up")).toEqual({ amount: 30, last: "2026-11-20" });
    expect(usual.get("run")).toEqual({ amount: 600, last: "2026-11-20" });
  });

  it("counts an unfinished workout up to its score", () => {
    // 16 reps: ten pull-ups, one run, five pull-ups
    const who = athlete({ results: [result({ reps: 16 })] });
    expect(usualAmounts(who, "2026-11-26", () => rounds).get("pull-up")).toEqual({ amount: 15 });
  });

  it("leaves out what was made scaled or lies in the future", () => {
    const who = athlete({
      results: [result({ version: "scaled" }), result({ date: "2026-12-24" })],
    });
    expect(usualAmounts(who, "2026-11-26", () => rounds).size).toBe(0);
  });

  it("takes an unbroken set only where nothing else is known", () => {
    const set = { unbroken: [{ movement: "pull-up", reps: 40 }] };
    expect(usualAmounts(athlete(set), "2026-11-26", () => undefined).get("pull-up")?.amount).toBe(40);
    const both = athlete({ ...set, efforts: [effort(25)] });
    expect(usualAmounts(both, "2026-11-26", () => undefined).get("pull-up")?.amount).toBe(25);
  });

  it("can be given another number of days by the coach", () => {
    const who = athlete({ efforts: [effort(60, "2026-08-01")] });
    const usual = usualAmounts(who, "2026-11-26", () => undefined, { usualWithinDays: 200 });
    expect(usual.get("pull-up")?.amount).toBe(60);
  });
});

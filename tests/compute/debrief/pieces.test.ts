import { describe, expect, it } from "vitest";
import { piecesOf } from "../../../src/compute/debrief/pieces.ts";
import type { PlannedPacing } from "../../../src/models/plan/plan.ts";

type Row = PlannedPacing["rows"][number];
const row = (index: number, round: number, start: number, end: number): Row => ({
  kind: "work",
  index,
  round,
  name: "row",
  short: "row",
  amount: 10,
  unit: "reps",
  complexWithNext: false,
  sets: [{ amount: 10, restAfter: 0 }],
  transition: 0,
  start,
  end,
  scoreDone: 0,
  shareOfReps: 0,
  shareOfTime: 0,
  shareOfWork: 0,
  tieBreak: false,
});
const round = (
  number: number,
  start: number,
  end: number,
  lastRow: number,
): PlannedPacing["rounds"][number] => ({
  round: number,
  label: `${number}`,
  start,
  end,
  seconds: end - start,
  lastRow,
  scoreDone: 0,
});
/** Three rounds of two lines, a minute and half a minute. */
const plan = {
  ending: "finishes" as const,
  startsByClock: false,
  rows: [
    row(0, 1, 0, 60),
    row(1, 1, 60, 90),
    row(2, 2, 90, 150),
    row(3, 2, 150, 180),
    row(4, 3, 180, 240),
    row(5, 3, 240, 270),
  ],
  rounds: [round(1, 0, 90, 1), round(2, 90, 180, 3), round(3, 180, 270, 5)],
};

describe("logged clocks beside the plan", () => {
  it("are lines where they fit the lines", () => {
    const pieces = piecesOf(plan, [62, 95, 160]);
    expect(pieces.map(({ kind, planned, done }) => [kind, planned, done])).toEqual([
      ["row", 60, 62],
      ["row", 30, 33],
      ["row", 60, 65],
    ]);
  });

  it("are rounds where they fit the rounds", () => {
    const pieces = piecesOf(plan, [93, 190, 300]);
    expect(pieces.map(({ kind, round: of, plannedEnd, done }) => [kind, of, plannedEnd, done])).toEqual([
      ["round", 1, 90, 93],
      ["round", 2, 180, 97],
      ["round", 3, 270, 110],
    ]);
  });

  it("take the result as the last clock where all before it were logged", () => {
    expect(piecesOf(plan, [93, 190], 300).map(({ doneEnd }) => doneEnd)).toEqual([93, 190, 300]);
    // One line of six: the result belongs to none of the next ones.
    expect(piecesOf(plan, [60], 300).map(({ doneEnd }) => doneEnd)).toEqual([60]);
  });

  it("leave out what lies beyond the plan and what does not go up", () => {
    expect(piecesOf(plan, [60, 90, 150, 180, 240, 270, 330])).toHaveLength(6);
    expect(piecesOf(plan, [93, 93, 300]).map(({ doneEnd }) => doneEnd)).toEqual([93, 300]);
    expect(piecesOf(plan, [])).toEqual([]);
  });

  it("leave out a round the plan does not get through", () => {
    const cut = { ...plan, ending: "fills-the-time" as const, rows: plan.rows.slice(0, 5) };
    expect(piecesOf(cut, [93, 190, 300]).map(({ doneEnd }) => doneEnd)).toEqual([93, 190]);
  });

  it("keep the place of a line that the bell of its round cuts short", () => {
    // The second line of each round is not finished; its clock is there all the same, and tells nothing of a pace.
    const cut = (line: Row) => (line.index % 2 === 1 && line.index < 5 ? { ...line, prescribed: 20 } : line);
    const gates = { ...plan, startsByClock: true, rows: plan.rows.map(cut) };
    expect(piecesOf(gates, [61, 90, 152, 180, 243, 275]).map(({ row, done }) => [row, done])).toEqual([
      [0, 61],
      [2, 62],
      [4, 63],
      [5, 32],
    ]);
    // Whoever writes no clock for what was not finished is understood as well.
    expect(piecesOf(gates, [61, 152, 243, 275]).map(({ row, doneEnd }) => [row, doneEnd])).toEqual([
      [0, 61],
      [2, 152],
      [4, 243],
      [5, 275],
    ]);
  });

  it("leave rests out: of their length, or until the clock that begins a round", () => {
    const rest = { ...row(2, 1, 90, 120), kind: "rest" as const };
    const rested = {
      ...plan,
      rows: [row(0, 1, 0, 60), row(1, 1, 60, 90), rest, row(3, 2, 120, 180), row(4, 2, 180, 210)],
    };
    // The first round took 100 s in place of 90. A rest of 30 s then ends at 130, a start by the clock stays at 120.
    expect(
      piecesOf({ ...rested, rounds: plan.rounds.slice(0, 2) }, [100, 225]).map(({ done }) => done),
    ).toEqual([100, 95]);
    const byClock = { ...rested, startsByClock: true, rounds: plan.rounds.slice(0, 2) };
    expect(piecesOf(byClock, [100, 225]).map(({ done }) => done)).toEqual([100, 105]);
  });
});

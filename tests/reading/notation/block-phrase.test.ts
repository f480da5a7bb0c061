import { describe, expect, it } from "vitest";
import { passesOf } from "../../../src/reading/notation/block-passes.ts";
import { readBlockClauses } from "../../../src/reading/notation/block-phrase.ts";
import { readingFor, tokensFrom } from "../../support/reading-lines.ts";

const clausesOf = (text: string, index = 0) => {
  const reading = readingFor(index);
  const clauses = readBlockClauses(tokensFrom(text), reading);
  if (clauses === undefined) throw new Error(reading.faults.map((fault) => fault.problem).join("; "));
  return clauses;
};

describe("the name of a block", () => {
  it.each([
    ["3 rounds", { rounds: 3 }],
    ["3 sets of", { rounds: 3 }],
    ["5/4 rounds", { rounds: 5 }],
    ["21-15-9", { ladder: { amounts: [21, 15, 9] } }],
    ["21-15-9 reps", { ladder: { amounts: [21, 15, 9] } }],
    ["10 to 6 by 2", { ladder: { amounts: [10, 8, 6] } }],
    ["1 up to 4", { ladder: { amounts: [1, 2, 3, 4] } }],
    ["10 down by 4", { ladder: { amounts: [10, 6, 2] } }],
    ["3 up by 3", { ladder: { start: 3, step: 3 } }],
    ["3-6-9-...", { ladder: { start: 3, step: 3 } }],
    ["3-6-9, etc", undefined],
    ["repeat", { rounds: "open" }],
    ["any order", { anyOrder: true }],
    ["in any order", { anyOrder: true }],
    ["every 2:00, 8 rounds, or out", { every: 120, rounds: 8, orOut: true }],
    ["every 2:00 for 8 rounds", { every: 120, rounds: 8 }],
    ["8 rounds every 2 min", { every: 120, rounds: 8 }],
    ["every 1:00 for 10:00, in turn", { every: 60, inAll: 600, inTurn: true }],
    ["every minute, 5 rounds", { every: 60, rounds: 5 }],
    ["0:20 on, 0:10 off, 8 rounds", { on: 20, off: 10, rounds: 8 }],
    ["20 s on/10 s off", undefined],
    ["40 s work, 20 s rest, 3 rounds", undefined],
    ["amrap 3:00", { lasts: 180 }],
    ["amrap in 3 min", { lasts: 180 }],
    ["3:00 amrap", { lasts: 180 }],
    ["by 9:00", { by: { kind: "clock", time: 540 } }],
    ["by +3:00", { by: { kind: "after-last-deadline", time: 180 } }],
    ["by 3:00 more", { by: { kind: "after-last-deadline", time: 180 } }],
    ["cap 2:00", { cap: 120 }],
    ["3 rounds, rest 1:00 between", { rounds: 3, restBetween: { kind: "exactly", time: 60 } }],
    ["3 rounds, 1:00 rest between rounds", { rounds: 3, restBetween: { kind: "exactly", time: 60 } }],
    [
      "4 rounds, rest as long as the work between",
      { rounds: 4, restBetween: { kind: "as-long-as-work", times: 1 } },
    ],
    ["4 rounds, rest at least 2:00 between", { rounds: 4, restBetween: { kind: "at-least", time: 120 } }],
    [
      "every 1:00, until 100 thrusters are done",
      { every: 60, untilDone: { amount: 100, movement: "thruster" } },
    ],
    ["3 rounds, unbroken, tie-break", { rounds: 3, unbroken: true, tieBreak: true }],
    ["buy-in", { once: "buy-in" }],
    ["4:00 on, 2:00 off, 3 rounds, carry on", { on: 240, off: 120, rounds: 3, carriesOn: true }],
  ] as const)("%s", (text, clauses) => {
    const reading = readingFor();
    expect(readBlockClauses(tokensFrom(text), reading)).toEqual(clauses);
    expect(reading.faults.length > 0).toBe(clauses === undefined);
  });

  it("is read for the division at hand", () => {
    expect(clausesOf("5/4 rounds", 1)).toEqual({ rounds: 4 });
    expect(clausesOf("21-15-9/15-12-9", 1)).toEqual({ ladder: { amounts: [15, 12, 9] } });
  });

  it("says how often the block is passed through", () => {
    expect(passesOf(clausesOf("3 rounds"))).toEqual({ kind: "rounds", count: 3 });
    expect(passesOf(clausesOf("3 up by 3"))).toEqual({ kind: "open-ladder", start: 3, step: 3 });
    expect(passesOf(clausesOf("3 up by 2, 3 rounds"))).toEqual({ kind: "ladder", amounts: [3, 5, 7] });
    expect(passesOf(clausesOf("by 9:00"))).toEqual({ kind: "once" });
    expect(passesOf(clausesOf("every 2:00"))).toEqual({ kind: "open-rounds" });
    expect(passesOf(clausesOf("amrap 3:00"))).toEqual({ kind: "open-rounds" });
  });
});

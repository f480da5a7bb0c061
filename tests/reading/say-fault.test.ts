import { describe, expect, it } from "vitest";
import type { Fault } from "../../src/models/fault.ts";
import { sayFault, sayFaults } from "../../src/reading/say-fault.ts";

const fault: Fault = {
  place: { file: "athletes/zoe.yaml", line: 7, column: 3 },
  found: "back sqaut",
  problem: "no movement has this name",
  allowed: "a movement of the library",
  nearest: "back squat",
  remedy: "Write `back squat`.",
  severity: "fault",
};
const question: Fault = {
  place: { file: "athletes/ada.yaml", line: 2, column: 8 },
  found: "67",
  problem: "the unit is missing; by size it would be inches",
  remedy: "Write `67 in`.",
  severity: "question",
};
const notice: Fault = { ...question, place: { ...fault.place, line: 1 }, severity: "notice" };

describe("a fault in words", () => {
  it("names place, found, wrong, allowed, nearest and remedy, each on its line", () => {
    expect(sayFault(fault)).toBe(
      [
        "athletes/zoe.yaml:7:3: Fault",
        "  found    back sqaut",
        "  wrong    no movement has this name",
        "  allowed  a movement of the library",
        "  nearest  back squat",
        "  to do    Write `back squat`.",
      ].join("\n"),
    );
  });

  it("leaves out what there is nothing to say of", () => {
    expect(sayFault({ ...question, found: "" })).toBe(
      [
        "athletes/ada.yaml:2:8: Question",
        "  because  the unit is missing; by size it would be inches",
        "  to do    Write `67 in`.",
      ].join("\n"),
    );
  });

  it("keeps what was found on one line, and short", () => {
    expect(sayFault({ ...fault, found: `a\n  b${"c".repeat(200)}` })).toContain(
      `found    a b${"c".repeat(157)} ...\n`,
    );
  });

  it("puts all in the order of files and lines under a count", () => {
    const told = sayFaults([fault, notice, question]).split("\n\n");
    expect(told[0]).toBe("1 fault, 1 question and 1 notice in 2 files.");
    expect(told.slice(1)).toEqual([sayFault(question), sayFault(notice), sayFault(fault)]);
  });

  it("says so when there are none", () => {
    expect(sayFaults([])).toBe("No faults.");
  });
});

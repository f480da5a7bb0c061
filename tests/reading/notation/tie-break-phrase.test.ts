import { expect, it } from "vitest";
import type { NotationFault } from "../../../src/reading/notation/notation-fault.ts";
import { readTieBreakPart } from "../../../src/reading/notation/tie-break-phrase.ts";
import { seconds } from "../../../src/models/quantity.ts";

const start = { kind: "clock", at: seconds(0) } as const;
const read = (note: string | undefined) => {
  const faults: NotationFault[] = [];
  const entries = note === undefined ? {} : { "tie-break": note };
  const part = readTieBreakPart({ entries, path: [], name: "b", earlier: [{ name: "A", start }] }, faults);
  return faults.length > 0 ? faults.map(({ problem, allowed }) => [problem, allowed]) : part;
};

it.each(["part a", "Part A", "by part a", "result of part a", "by the better time in part a."])(
  "a tie-break may be an earlier part: %s",
  (note) => {
    expect(read(note)).toBe("A");
  },
);

it.each([undefined, "time of the last set", "part a first, then the lighter athlete", "lighter athlete"])(
  "other notes are for people: %s",
  (note) => {
    expect(read(note)).toBeUndefined();
  },
);

it("a part that does not come earlier is told", () => {
  expect(read("part c")).toEqual([['no earlier part is called "c"', "part A"]]);
});

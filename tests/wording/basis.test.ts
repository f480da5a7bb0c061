import { expect, it } from "vitest";
import { sayBasis, saySharpen, sayTest } from "../../src/wording/basis.ts";

it.each([
  [
    { about: "row", kind: "related", from: { kind: "own-results", in: ["ski erg"] }, error: 0.09 },
    "Row: from a related movement, own results in ski erg, ±9%",
  ],
  [
    {
      about: "division",
      kind: "assumed",
      from: { kind: "division", division: "women", by: "not-listed", stated: "women 55+" },
    },
    "Division: assumed, planned as women: this workout does not list women 55+; ask the organiser which one is yours",
  ],
  [
    { about: "plates", kind: "assumed", from: { kind: "usual-gym" } },
    "Plates: assumed, no gym is given, so the plates are those of a usual gym",
  ],
  [
    { about: "pull-ups", kind: "level", from: { kind: "level", level: "regular" } },
    "Pull-ups: typical for your level (regular)",
  ],
  [
    {
      about: "snatch",
      kind: "level",
      from: { kind: "level", level: "competitor", bodyMass: "not-stated" },
      error: 0.2,
    },
    "Snatch: typical for your level (competitor), body mass not stated, ±20%",
  ],
  [
    { about: "air squats", kind: "level", from: { kind: "own-results", in: ["burpee"], level: "regular" } },
    "Air squats: typical for your level (regular), moved by own results in burpee",
  ],
] as const)("%j reads: %s", (basis, text) => {
  expect(sayBasis(basis)).toBe(text);
});

it("the sharpest test says what it would bring", () => {
  expect(
    saySharpen({
      test: { kind: "best-time", metres: 500, name: "row" },
      movement: "row",
      narrowsBy: 0.25,
    }),
  ).toBe("Take your best time over 500 m: row. It would narrow your range by 25%.");
});

it.each([
  [{ kind: "most-calories", minutes: 5, name: "row" }, "Count the calories you make in 5 minutes: row."],
  [
    { kind: "most-reps", minutes: 5, names: "pull-ups" },
    "Count the pull-ups you can do in 5 minutes, breaks included.",
  ],
  [
    { kind: "most-reps", minutes: 5, names: "power cleans", loaded: true },
    "Count the power cleans you can do in 5 minutes, with the load of the workout, breaks included.",
  ],
] as const)("the test %j reads: %s", (test, text) => {
  expect(sayTest(test)).toBe(text);
});

import { expect, it } from "vitest";
import { sayBasis, saySharpen, sayTest } from "../../src/wording/basis.ts";

it.each([
  [
    { about: "clean and jerk", kind: "tested", detail: "72 kg of 2026-09-12", error: 0.03 },
    "Clean and jerk: tested, 72 kg of 2026-09-12, ±3%",
  ],
  [
    {
      about: "division",
      kind: "assumed",
      detail: "",
      assumed: { kind: "division", division: "women", by: "not-listed", stated: "women 55+" },
    },
    "Division: assumed, planned as women: this workout does not list women 55+; ask the organiser which one is yours",
  ],
  [
    { about: "plates", kind: "assumed", detail: "", assumed: { kind: "gym", gym: "a usual gym" } },
    "Plates: assumed, no gym is given, so the plates are those of a usual gym",
  ],
  [{ about: "pull-ups", kind: "level", detail: "" }, "Pull-ups: typical for your level"],
  [{ about: "row", kind: "related", detail: "ski erg" }, "Row: from a related movement, ski erg"],
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
] as const)("the test %j reads: %s", (test, text) => {
  expect(sayTest(test)).toBe(text);
});

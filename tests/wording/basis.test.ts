import { expect, it } from "vitest";
import { sayBasis, saySharpen } from "../../src/wording/basis.ts";

it.each([
  [
    { about: "clean and jerk", kind: "tested", detail: "72 kg of 2026-09-12", error: 0.03 },
    "Clean and jerk: tested, 72 kg of 2026-09-12, ±3%",
  ],
  [{ about: "pull-ups", kind: "level", detail: "" }, "Pull-ups: typical for your level"],
  [{ about: "row", kind: "related", detail: "ski erg" }, "Row: from a related movement, ski erg"],
] as const)("%j reads: %s", (basis, text) => {
  expect(sayBasis(basis)).toBe(text);
});

it("the sharpest test says what it would bring", () => {
  expect(saySharpen({ test: "Row 500 m.", movement: "row", narrowsBy: 0.25 })).toBe(
    "Row 500 m. It would narrow your range by 25%.",
  );
});

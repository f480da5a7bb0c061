import { expect, it } from "vitest";
import { sayDate, sayMoment, sayTimeOfDay } from "../../src/wording/date.ts";

it("a day is said without leading nought, and what is no date stays as it is", () => {
  expect([sayDate("2026-11-05"), sayDate("soon")]).toEqual(["5 November 2026", "soon"]);
});

it("a local moment gives its day and time of day", () => {
  expect([sayTimeOfDay("2026-11-26T18:40"), sayMoment("2026-11-26T18:40"), sayMoment("2026-11-26")]).toEqual([
    "18:40",
    "26 November 2026, 18:40",
    "26 November 2026",
  ]);
});

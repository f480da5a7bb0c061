import { expect, test } from "vitest";
import { startInstant } from "../../../src/compute/plan/start-instant.ts";

test("an evening start in Oslo in November is one hour earlier in UTC", () => {
  expect(startInstant("2026-11-27T18:40", "Europe/Oslo")).toEqual({
    local: "2026-11-27T18:40",
    zone: "Europe/Oslo",
    instant: "2026-11-27T17:40:00Z",
  });
});

// The European Union's summer time ends on the last Sunday of October at 01:00 UTC: 02:30 happens twice.
test("a wall time that the clock change repeats or skips is no start", () => {
  expect(startInstant("2026-10-25T02:30", "Europe/Oslo")).toBeUndefined();
  expect(startInstant("2026-03-29T02:30", "Europe/Oslo")).toBeUndefined();
});

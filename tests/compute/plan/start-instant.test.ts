import { expect, test } from "vitest";
import { hoursBetween, startInstant } from "../../../src/compute/plan/start-instant.ts";

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

test("hours between two wall times count the hour that the clock change adds", () => {
  expect(hoursBetween("2026-10-24T12:00", "2026-10-25T12:00", "Europe/Oslo")).toBe(25);
  expect(hoursBetween("2026-11-28T12:00", "2026-11-28T09:30", "Europe/Oslo")).toBe(-2.5);
});

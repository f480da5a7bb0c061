import { describe, expect, it } from "vitest";
import { ageOnMonday, daysBetween } from "../../../src/compute/capacity/age-of-result.ts";

describe("the days between two dates", () => {
  it.each([
    ["2026-11-25", "2026-11-25", 0],
    ["2026-11-24", "2026-11-25", 1],
    ["2024-02-28", "2024-03-01", 2], // a leap year
    ["2023-02-28", "2023-03-01", 1],
    ["1900-02-28", "1900-03-01", 1], // no leap year
    ["2025-11-25", "2026-11-25", 365],
    ["2023-12-31", "2024-12-31", 366],
  ])("from %s to %s are %i", (from, to, days) => {
    expect(daysBetween(from, to)).toBe(days);
  });

  it("are none for a date to come", () => {
    expect(daysBetween("2026-12-24", "2026-11-25")).toBe(0);
  });
});

// 23 November 2026 is a Monday, as 1 January 2001 was, 9,457 days before: 1,351 weeks.
describe("the age of a result", () => {
  it.each([
    ["2026-11-02", "2026-11-23", 21],
    ["2026-11-02", "2026-11-26", 21],
    ["2026-11-02", "2026-11-29", 21],
    ["2026-11-02", "2026-11-30", 28],
    ["2026-11-25", "2026-11-26", 0], // younger than its week
    ["1999-12-20", "2000-01-02", 7], // a Sunday before the first Monday counted from
  ])("of %s on %s is %i days", (from, to, days) => {
    expect(ageOnMonday(from, to)).toBe(days);
  });
});

import { describe, expect, it } from "vitest";
import { hoursBetween, startNumbers } from "../../../src/compute/conditions/starts.ts";
import { athlete } from "../../support/hand-made.ts";

describe("hours between two starts", () => {
  it("are counted on the clock where zones agree or are not known", () => {
    expect(hoursBetween({ at: "2026-11-26T18:40" }, { at: "2026-11-27T09:10", zone: "Europe/Oslo" })).toBe(
      14.5,
    );
  });

  it("are counted between instants where zones differ", () => {
    // New York is six hours behind Oslo in November
    const from = { at: "2026-11-26T18:00", zone: "Europe/Oslo" };
    expect(hoursBetween(from, { at: "2026-11-26T18:00", zone: "America/New_York" })).toBe(6);
  });
});

describe("what the starts of an athlete say about one of them", () => {
  it("is nothing when the start is not known", () => {
    expect(startNumbers(athlete(), undefined)).toEqual({});
  });

  it("has no start before the first nor after the last", () => {
    expect(startNumbers(athlete(), { at: "2026-11-26T06:15" })).toEqual({
      "start-hour": 6.25,
      "starts-today": 1,
    });
  });
});

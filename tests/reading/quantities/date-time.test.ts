import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clockChangeRefusal, isZone, readDateTime } from "../../../src/reading/quantities/date-time.ts";
import { instantOf } from "../../../src/reading/quantities/instant.ts";
import { tellReading } from "../../support/tell-reading.ts";

const tell = (text: string): string =>
  tellReading(readDateTime(text), ({ at, zone }) => (zone === undefined ? at : `${at} ${zone}`));

describe("a local date and time", () => {
  it.each([
    ["2026-11-28 18:40", "2026-11-28T18:40"],
    ["2026-11-28T18:40", "2026-11-28T18:40"],
    ["2026-11-28 at 18:40", "2026-11-28T18:40"],
    ["2026-11-28 6:40 pm", "2026-11-28T18:40"],
    ["2026-11-28 12:05 am", "2026-11-28T00:05"],
    ["Sat 28 Nov 2026, 18h40", "2026-11-28T18:40"],
    ["2026-11-28 6pm", "2026-11-28T18:00"],
    ["2026-11-28 18:40 Europe/Berlin", "2026-11-28T18:40 Europe/Berlin"],
    ["28.11.2026 18:40", "2026-11-28T18:40 (read as 2026-11-28)"],
  ])("is taken from %j as %s", (text, at) => {
    expect(tell(text)).toBe(`takes ${at}`);
  });

  it.each([
    [
      "2026-11-28 6:40",
      "this may be in the morning or in the evening | Write `2026-11-28 06:40` or `2026-11-28 18:40`, whichever is meant.",
    ],
    [
      "2026-11-28 18:40-19:10",
      "more than one time stands here | Write the one time to plan for; several tries go into a list: `[..., ...]`.",
    ],
    ["2026-11-28", "the time of day is missing | Write `2026-11-28 18:00` if that is meant."],
    [
      "3/4/26 18:00",
      "day and month can be read in either order | Write `2026-04-03 18:00` or `2026-03-04 18:00`, whichever is meant. Or say once for all files, in content/settings.yaml, `dates: day first` or `dates: month first`.",
    ],
  ])("is asked about in %j", (text, told) => {
    expect(tell(text)).toBe(`asks: ${told}`);
  });

  it.each([
    ["18:40", "the date is missing | Write a date with a time of day, such as `2026-11-28 18:40`."],
    [
      "2026-11-28 25:00",
      "there is no such time of day | Write a date with a time of day, such as `2026-11-28 18:40`.",
    ],
    [
      "2026-11-28 13:00 pm",
      "there is no such time of day | Write a date with a time of day, such as `2026-11-28 18:40`.",
    ],
    [
      "2026-11-28 18:40 Europe/Berln",
      '"Europe/Berln" is no time zone | Write a time zone such as `Europe/Berlin`.',
    ],
    [
      "2026-11-28 18:40+01:00",
      "+01:00 is an offset, and no time zone | Write `2026-11-28 18:40` with the name of the zone behind it.",
    ],
    [
      "2026-11-28T17:40Z",
      "Z is an offset, and no time zone | Write `2026-11-28 17:40` with the name of the zone behind it.",
    ],
    ["soon", "this is not a date with a time | Write a date with a time of day, such as `2026-11-28 18:40`."],
  ])("is refused in %j", (text, told) => {
    expect(tell(text)).toBe(`refuses: ${told}`);
  });

  it("never throws", () => {
    fc.assert(fc.property(fc.string(), (text) => typeof readDateTime(text).ok === "boolean"));
  });
});

describe("a time zone", () => {
  it("is one of the public database", () => {
    expect(["Europe/Oslo", "America/New_York", "UTC"].map(isZone)).toEqual([true, true, true]);
    expect(["Europe/Olso", "CET+1", "", "+01:00"].map(isZone)).toEqual([false, false, false, false]);
  });

  it("leaves an hour out in the night when clocks go forward", () => {
    // Central European time skipped 2:00 to 3:00 on 29 March 2026, the last Sunday of March
    expect(clockChangeRefusal("2026-03-29T02:30", "Europe/Oslo")).toEqual({
      problem: "clocks in Europe/Oslo go forward that night, and this time is left out",
      remedy: "Write a time an hour later.",
    });
    expect(clockChangeRefusal("2026-03-29T03:30", "Europe/Oslo")).toBeUndefined();
  });

  it("has an hour twice in the night when clocks go back", () => {
    // Central European time had 2:00 to 3:00 twice on 25 October 2026, the last Sunday of October
    expect(clockChangeRefusal("2026-10-25T02:30", "Europe/Oslo")).toEqual({
      problem: "clocks in Europe/Oslo go back that night, and this time is there twice",
      remedy: "Write a time an hour earlier or later.",
    });
    expect(clockChangeRefusal("2026-10-25T03:30", "Europe/Oslo")).toBeUndefined();
  });

  it("makes a local time an instant", () => {
    // 18:40 in Oslo in November is 17:40 UTC
    expect(instantOf("2026-11-28T18:40", "Europe/Oslo")).toBe(instantOf("2026-11-28T17:40", "UTC"));
  });
});

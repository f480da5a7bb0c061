import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readClock, readTime, sayTime } from "../../../src/reading/quantities/time.ts";
import { tellReading } from "../../support/tell-reading.ts";

const tell = (text: string): string => tellReading(readTime(text));
const FORM = "Write a time such as `7:32`, `7:05.4`, `1:04:10`, `59 s` or `12 min`.";

describe("a time", () => {
  it.each([
    // 7 x 60 + 32
    ["7:32", 452],
    ["7:32 min", 452],
    ["7m32s", 452],
    ["7m 32", 452],
    ["7'32\"", 452],
    ["7’32”", 452],
    ["7 min 32 s", 452],
    ["7:05.4", 425.4],
    ["7:05,4", 425.4],
    // 3600 + 4 x 60 + 10
    ["1:04:10", 3850],
    ["1 h 4 min 10 s", 3850],
    ["1h04", 3840],
    [":59", 59],
    ["59 s", 59],
    ['59"', 59],
    ["90s", 90],
    ["12 min", 720],
    ["12'", 720],
    ["20 minutes", 1200],
    ["59:00", 3540],
  ])("is taken from %j as %d s", (text, seconds) => {
    expect(tell(text)).toBe(`takes ${seconds}`);
  });

  it("is approximate behind a tilde", () => {
    expect(tell("~19:50")).toBe("takes ~1190");
  });

  it("with half minutes is taken and told", () => {
    expect(tell("7.5 min")).toBe("takes 450 (minutes with a decimal; read as 7:30)");
  });

  it.each([
    // 7.32 minutes are 7 min 19.2 s: 13 seconds off 7:32
    [
      "7.32 min",
      "this may be minutes and seconds, or minutes with a decimal | Write `7:32` or `7:19.2`, whichever is meant.",
    ],
    [
      "7,32",
      "this may be minutes and seconds, or minutes with a decimal | Write `7:32`, `7:19.2` or `7.32 s`, whichever is meant.",
    ],
    ["59", "the unit is missing | Write `59 s` or `59 min`, whichever is meant."],
    ["732", "the unit is missing | Write `732 s`, `732 min` or `7:32`, whichever is meant."],
    // 452 of 86 400 seconds
    ["0.00523148", "a spreadsheet keeps times as shares of a day | Write `7:32` if that is meant."],
    ["12:07:32 AM", "a time of day is no time | Write `7:32` if that is meant."],
    ["7:32 am", "a time of day is no time | Write `7:32` if that is meant."],
    ["7:75", "a minute has sixty seconds | Write `8:15` if that is meant."],
    ["7:5", "seconds have two digits | Write `7:05` or `7:50`, whichever is meant."],
    ["7;32", "a semicolon stands for a colon | Write `7:32` if that is meant."],
    ["7:05:4", "this may be tenths of a second | Write `7:05.4` if that is meant."],
    ["7-32", "this may be minutes and seconds | Write `7:32` if that is meant."],
    [
      "7:30-7:40",
      "this is a range; a plan needs one time, and the slower one is the safer | Write `~7:40` if that is meant.",
    ],
    ["<7:30", "this is a bound, not a result | Write `7:30` or `~7:30`, whichever is meant."],
  ])("is asked about in %j", (text, told) => {
    expect(tell(text)).toBe(`asks: ${told}`);
  });

  it.each([
    ["", "the time is missing"],
    ["fast", "this is not a time"],
    ["1:46/500m", "this is a pace, not a time"],
    ["0:00", "a time is more than nothing"],
    ["1'500", "a minute has sixty seconds"],
    ["1:75:00", "an hour has sixty minutes"],
    ["1-2 x", "this is neither one time nor a range of two"],
  ])("is refused in %j", (text, problem) => {
    expect(tell(text)).toBe(`refuses: ${problem} | ${FORM}`);
  });

  it("reads back what is written, to the tenth of a second", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300_000 }), (tenths) => {
        const reading = readTime(sayTime(tenths / 10));
        expect(reading.ok && Math.round(reading.value * 10)).toBe(tenths);
      }),
    );
  });

  it("never throws", () => {
    fc.assert(fc.property(fc.string(), (text) => typeof readTime(text).ok === "boolean"));
  });
});

describe("a clock", () => {
  it.each([
    ["0:00", 0],
    ["7:00", 420],
    ["1:04:10", 3850],
  ])("is taken from %j as %d s", (text, seconds) => {
    expect(readClock(text)).toMatchObject({ ok: true, value: seconds });
  });

  it("is refused as anything but a clock", () => {
    expect(tellReading(readClock("12 min"))).toBe(
      "refuses: this is not a clock | Write a clock such as `7:32`, `7:05.4` or `1:04:10`.",
    );
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readLength, sayLength } from "../../../src/reading/quantities/length.ts";
import { LENGTH_UNITS } from "../../../src/models/quantity.ts";
import { tellReading } from "../../support/tell-reading.ts";

const tell = (text: string): string => tellReading(readLength(text), sayLength);
const FORM = "Write a number with m, km, mile, ft, in or cm, such as `500 m` or `24 in`.";

describe("a length", () => {
  it.each([
    ["500 m", "500 m"],
    ["400 metres", "400 m"],
    ["1,70 m", "1.7 m"],
    ["1m70", "1.7 m"],
    ["2 km", "2 km"],
    ["5k", "5 km"],
    ["1 mile", "1 mile"],
    ["1/2 mile", "0.5 mile"],
    ["50 ft", "50 ft"],
    // 5 feet of 12 inches and 7
    ["5'7\"", "67 in"],
    ["24 in", "24 in"],
    ["20”", "20 in"],
    // a yard is three feet
    ["100 yd", "300 ft"],
    ["500 mm", "50 cm"],
  ])("is taken from %j as %s", (text, said) => {
    expect(tell(text)).toBe(`takes ${said}`);
  });

  it.each([
    ["500", "the unit is missing | Write `500 m` or `500 ft`, whichever is meant."],
    [
      "1,500 m",
      "the sign in the number may group thousands or begin decimals | Write `1500 m` or `1.5 m`, whichever is meant.",
    ],
    ["500 mtrss", '"mtrss" is no unit of length | Write `500 mtrs` if that is meant.'],
    ["> 500 m", "this is a bound, not a length | Write `500 m` if that is meant."],
  ])("is asked about in %j", (text, told) => {
    expect(tell(text)).toBe(`asks: ${told}`);
  });

  it.each([
    ["", "the length is missing"],
    ["far", "this is not a length"],
    ["5-7 m", "this is a range; a plan needs one length"],
    ["0 m", "a length is more than nothing"],
    ["1.2.3 m", "this is not a number"],
    ["12 zz", '"zz" is no unit of length'],
  ])("is refused in %j", (text, problem) => {
    expect(tell(text)).toBe(`refuses: ${problem} | ${FORM}`);
  });

  it("reads back what is written", () => {
    const numbers = fc.integer({ min: 1, max: 4_219_500 }).map((hundredths) => hundredths / 100);
    fc.assert(
      fc.property(numbers, fc.constantFrom(...LENGTH_UNITS), (value, unit) => {
        expect(readLength(sayLength({ value, unit }))).toMatchObject({ ok: true, value: { value, unit } });
      }),
    );
  });

  it("never throws", () => {
    fc.assert(fc.property(fc.string(), (text) => typeof readLength(text).ok === "boolean"));
  });
});

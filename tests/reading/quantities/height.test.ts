import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readHeight } from "../../../src/reading/quantities/height.ts";
import { tellReading } from "../../support/tell-reading.ts";

const tell = (text: string): string => tellReading(readHeight(text), (metres) => metres.toFixed(4));
const FORM = "Write a height such as `170 cm`, `1.70 m` or `5'7\"`.";

describe("the height of a person", () => {
  it.each([
    // 67 in of 0.0254 m
    ["5'7\"", "1.7018"],
    ["5’ 7”", "1.7018"],
    ["5ft7", "1.7018"],
    ["5 foot 7 inches", "1.7018"],
    ["67 in", "1.7018"],
    // 67.5 in
    ["5'7½”", "1.7145"],
    // 72 in
    ["6'", "1.8288"],
    ["170cm", "1.7000"],
    ["1m70", "1.7000"],
    ["1,70 m", "1.7000"],
    ["7'2\" checked", "2.1844"],
    ["5'7\" (170 cm)", "1.7018"],
  ])("is taken from %j as %s m", (text, metres) => {
    expect(tell(text)).toBe(`takes ${metres}`);
  });

  it("can only be metres where it is a bare 1.70", () => {
    expect(tell("1,70")).toBe("takes 1.7000 (only metres are a height here; read as 1.70 m)");
  });

  it.each([
    ["170 cm (6'1\")", "these are two different heights | Write `170 cm` or `6'1\"`, whichever is meant."],
    ["5-7", "this could be feet and inches, a range or a date | Write `5'7\"` if that is meant."],
    ["5.11", "this could be feet and inches, a range or a date | Write `5'11\"` if that is meant."],
    // 5.7 ft of 0.3048 m are 1.737 m
    [
      "5.7 ft",
      "this may be feet and inches, or feet with a decimal | Write `5'7\"` or `1.74 m`, whichever is meant.",
    ],
    ["67", "the unit is missing | Write `67 in` if that is meant."],
    ["170", "the unit is missing | Write `170 cm` if that is meant."],
    ["511", "the unit is missing | Write `5'11\"` if that is meant."],
    // 511 in are 12.98 m, 510 in 12.95 m, 176 in 4.47 m
    ["511 in", "no adult is 12.98 m tall | Write `5'11\"` if that is meant."],
    ["510 in", "no adult is 12.95 m tall | Write `5'10\"` if that is meant."],
    ["176 in", "no adult is 4.47 m tall | Write `176 cm` if that is meant."],
    ["170 m", "no adult is 170.00 m tall | Write `170 cm` if that is meant."],
    ["1.70 cm", "no adult is 0.02 m tall | Write `1.7 m` if that is meant."],
    ["5'12\"", "a foot has twelve inches | Write `6'0\"` if that is meant."],
    ["7'2\"", "2.18 m is unusual for a person | Write `7'2\" checked` if that is meant."],
    ["1.3 m", "1.30 m is unusual for a person | Write `1.3 m checked` if that is meant."],
  ])("is asked about in %j", (text, told) => {
    expect(tell(text)).toBe(`asks: ${told}`);
  });

  it.each([
    // the inches lost, the decimals of metres lost: nothing to propose
    ["5 in", "no adult is 0.13 m tall"],
    ["2 cm", "no adult is 0.02 m tall"],
    ["17 cm", "no adult is 0.17 m tall"],
    ["3", "nobody is of this height in any unit"],
    ["1.2.3", "this is not a height"],
  ])("is refused in %j", (text, problem) => {
    expect(tell(text)).toBe(`refuses: ${problem} | ${FORM}`);
  });

  it("hands on what is no length at all", () => {
    expect(tell("tall")).toBe(
      "refuses: this is not a length | Write a number with m, km, mile, ft, in or cm, such as `500 m` or `24 in`.",
    );
  });

  it("never throws", () => {
    fc.assert(fc.property(fc.string(), (text) => typeof readHeight(text).ok === "boolean"));
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readBodyMass } from "../../../src/reading/quantities/body-mass.ts";
import { tellReading } from "../../support/tell-reading.ts";

const tell = (text: string): string => tellReading(readBodyMass(text), (kg) => kg.toFixed(3));

describe("the body mass of a person", () => {
  it.each([
    ["63 kg", "63.000"],
    ["61,5kg", "61.500"],
    ["61.500 kg", "61.500"],
    // 139 and 158 lb of 0.45359237 kg
    ["139 lb", "63.049"],
    ["11 st 4 lb", "71.668"],
    ["~63 kg", "~63.000"],
    ["175 kg checked", "175.000"],
  ])("is taken from %j as %s kg", (text, kg) => {
    expect(tell(text)).toBe(`takes ${kg}`);
  });

  it.each([
    ["83 lb", "83 lb is unusual for an adult | Write `83 kg` or `83 lb checked`, whichever is meant."],
    ["175 kg", "175 kg is unusual for an adult | Write `175 lb` or `175 kg checked`, whichever is meant."],
    ["6515 kg", "nobody weighs 6515 kg | Write `65.15 kg` if that is meant."],
    ["63", "the unit is missing | Write `63 kg` if that is meant."],
    ["139", "the unit is missing | Write `139 kg` or `139 lb`, whichever is meant."],
  ])("is asked about in %j", (text, told) => {
    expect(tell(text)).toBe(`asks: ${told}`);
  });

  it.each([
    ["65535 kg", "nobody weighs 65535 kg"],
    ["999 kg", "nobody weighs 999 kg"],
    ["4 kg", "nobody weighs 4 kg"],
  ])("is refused in %j", (text, problem) => {
    expect(tell(text)).toBe(`refuses: ${problem} | Write a body mass such as \`63 kg\` or \`139 lb\`.`);
  });

  it("never throws", () => {
    fc.assert(fc.property(fc.string(), (text) => typeof readBodyMass(text).ok === "boolean"));
  });
});

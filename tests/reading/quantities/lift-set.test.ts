import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readLiftSet, sayLiftSet } from "../../../src/reading/quantities/lift-set.ts";
import { tellReading } from "../../support/tell-reading.ts";

const tell = (text: string, context = {}): string => tellReading(readLiftSet(text, context), sayLiftSet);
const FORM = "Write a load such as `110 kg`, or reps x load such as `3 x 100 kg`.";
const ORDER = "without a unit this can be reps x load, load x reps or sets x reps";

describe("a lift", () => {
  it.each([
    ["110 kg", "110 kg"],
    ["82,5 kg", "82.5 kg"],
    ["315#", "315 lb"],
    ["1RM: 102,5 kg", "102.5 kg"],
    ["PR 100 kg", "100 kg"],
    ["3 x 100 kg", "3 x 100 kg"],
    ["3x100kg", "3 x 100 kg"],
    ["3 × 82,5 kg", "3 x 82.5 kg"],
    ["100 kg x 3", "3 x 100 kg"],
    ["100 kg for 5", "5 x 100 kg"],
    ["100 kg, 3 reps", "3 x 100 kg"],
    ["5 reps at 100 kg", "5 x 100 kg"],
    ["5RM 85 kg", "5 x 85 kg"],
    ["100 kg for a double", "2 x 100 kg"],
    ["85 kg (5RM)", "5 x 85 kg"],
    // effort 8 of 10 leaves two reps
    ["150KGx5@8", "5 x 150 kg @8"],
    ["5 x 100 kg, 2 in reserve", "5 x 100 kg @8"],
    ["100 kg RPE 9.5", "100 kg @9.5"],
    ["BW+20 kg", "BW+20 kg"],
    ["3 x BW+20 kg", "3 x BW+20 kg"],
    ["+20 kg", "BW+20 kg"],
    ["5 x BW", "5 x BW"],
    ["3 x 100 kg (220 lb)", "3 x 100 kg"],
    ["105 kg (belt)", "105 kg"],
    ["105 kg w/ belt", "105 kg"],
    ["105 kg PR!", "105 kg"],
    ["105 kg in comp", "105 kg"],
    ["New PR! 105 kg", "105 kg"],
    ["105 kg 🎉", "105 kg"],
    ["'105 kg", "105 kg"],
  ])("is taken from %j as %s", (text, set) => {
    expect(tell(text)).toBe(`takes ${set}`);
  });

  it("is approximate where it was estimated", () => {
    expect(tell("e1RM 120 kg")).toBe("takes ~120 kg");
    expect(tell("3 x ~100 kg")).toBe("takes ~3 x 100 kg");
  });

  it("takes unit and reps from the heading of its column", () => {
    expect(tell("102,5", { unit: "kg" })).toBe("takes 102.5 kg");
    expect(tell("BW+20", { unit: "kg", reps: 3 })).toBe("takes 3 x BW+20 kg");
  });

  it.each([
    ["264.48 lb", "120 kg (an odd number of lb that is a round number of kg; read as 120 kg)"],
    ["225 lb 5x5", "5 x 225 lb (of several sets the best one counts; read as 5 x 225 lb)"],
    ["5x5x100 kg", "5 x 100 kg (of several sets the best one counts; read as 5 x 100 kg)"],
    ["3x5 at 100 kg", "5 x 100 kg (of several sets the best one counts; read as 5 x 100 kg)"],
    ["115 lb: 6, 5, 5 @8", "6 x 115 lb @8 (of several sets the best one counts; read as 6 x 115 lb @8)"],
  ])("is taken from %j and told", (text, told) => {
    expect(tell(text)).toBe(`takes ${told}`);
  });

  it.each([
    ["5x85", `${ORDER} | Write \`5 x 85 kg\` or \`5 x 85 lb\`, whichever is meant.`],
    ["85x5", `${ORDER} | Write \`5 x 85 kg\` or \`5 x 85 lb\`, whichever is meant.`],
    ["82,5 x 3", `${ORDER} | Write \`3 x 82,5 kg\` or \`3 x 82,5 lb\`, whichever is meant.`],
    ["100kg 5", "the second number may be reps or sets | Write `5 x 100kg` if that is meant."],
    ["5 x 5 @ 100", "the unit is missing | Write `5 x 100 kg` or `5 x 100 lb`, whichever is meant."],
    ["225 5x5", "the unit is missing | Write `5 x 225 kg` or `5 x 225 lb`, whichever is meant."],
    ["115: 6, 5, 5 @8", "the unit is missing | Write `6 x 115 kg` or `6 x 115 lb`, whichever is meant."],
    ["1RM: 102,5", "the unit is missing | Write `102.5 kg` or `102.5 lb`, whichever is meant."],
    ["BW+20", "the unit is missing | Write `BW+20 kg` or `BW+20 lb`, whichever is meant."],
    [
      "90-95",
      "this is a range; a plan needs one number, and the lower one is the safer | Write `~90 kg` or `~90 lb`, whichever is meant.",
    ],
    [
      "110 kg (heavy)",
      "words in brackets are not understood here | Write `110 kg` if that is meant. Leave them out, or write a date or a number of reps there.",
    ],
    ["1.5 x BW", "a multiple of body mass is no load | Write the load itself, with kg or lb."],
  ])("is asked about in %j", (text, told) => {
    expect(tell(text)).toBe(`asks: ${told}`);
  });

  it.each([
    [
      "3x5@80%",
      "a share of a best is a plan, not a result | Write the load that was lifted, or leave the line out.",
    ],
    [
      "BW-20 kg",
      "help that takes body mass away is no load | Leave the line out, and name the movement under `cannot`.",
    ],
    ["100 kg @11", "effort goes from 1 to 10 | Write an effort such as `@8`."],
    ["0 x 100 kg", `a set has 1 to 100 reps | ${FORM}`],
    ["heavy", "this is not a mass | Write a number with kg or lb, such as `102.5 kg` or `225 lb`."],
  ])("is refused in %j", (text, told) => {
    expect(tell(text)).toBe(`refuses: ${told}`);
  });

  it("reads back what is written", () => {
    const sets = fc.record({
      reps: fc.integer({ min: 1, max: 30 }),
      load: fc.record({
        value: fc.integer({ min: 10, max: 1200 }).map((quarters) => quarters / 4),
        unit: fc.constantFrom("kg" as const, "lb" as const),
      }),
      added: fc.boolean(),
      inReserve: fc.integer({ min: 0, max: 4 }),
    });
    fc.assert(
      fc.property(sets, (set) => {
        // Quarters of a pound may be round kilograms; they are told, not taken as they stand.
        fc.pre(set.load.unit === "kg" || Number.isInteger(set.load.value * 2));
        expect(readLiftSet(sayLiftSet(set))).toMatchObject({ ok: true, value: set });
      }),
    );
  });

  it("never throws", () => {
    const signs = fc.constantFrom(
      "5",
      "x",
      "100",
      " ",
      "kg",
      "lb",
      "@8",
      "BW",
      "+",
      "-",
      "(",
      ")",
      "RM",
      ",",
      ":",
      "%",
      "reps",
    );
    const texts = fc.oneof(
      fc.string(),
      fc.array(signs).map((parts) => parts.join("")),
    );
    fc.assert(fc.property(texts, (text) => typeof readLiftSet(text).ok === "boolean"));
  });
});

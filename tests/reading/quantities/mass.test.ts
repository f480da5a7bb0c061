import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readMass, sayMass } from "../../../src/reading/quantities/mass.ts";
import { inKilograms, massIn, type Mass } from "../../../src/models/quantity.ts";
import { tellReading } from "../../support/tell-reading.ts";

const tell = (text: string, context = {}): string => tellReading(readMass(text, context), sayMass);
const FORM = "Write a number with kg or lb, such as `102.5 kg` or `225 lb`.";

describe("a mass", () => {
  it.each([
    ["102,5 kg", "102.5 kg"],
    ["102.5kg", "102.5 kg"],
    ["100 KG", "100 kg"],
    ["90 kilos", "90 kg"],
    ["225 lb", "225 lb"],
    ["225lbs.", "225 lb"],
    ["315#", "315 lb"],
    ["315 #", "315 lb"],
    ["１０２，５ kg", "102.5 kg"],
    ["١٠٢٫٥ kg", "102.5 kg"],
    ["1'000 kg", "1000 kg"],
    ["1,234.5 lb", "1234.5 lb"],
    ["0,125 kg", "0.125 kg"],
    // 11 stone of 14 lb and 4 lb
    ["11 st 4 lb", "158 lb"],
    ["1800 g", "1.8 kg"],
    // one mass in both units, within rounding
    ["100 kg / 220 lb", "100 kg"],
    ["225 lb (102 kg)", "225 lb"],
  ])("is taken from %j as %s", (text, said) => {
    expect(tell(text)).toBe(`takes ${said}`);
  });

  it.each(["~100 kg", "about 100 kg", "ca. 100 kg", "100 kg?", "100ish kg", "100 kg (est)", "maybe 100 kg"])(
    "is approximate in %j",
    (text) => {
      expect(tell(text)).toBe("takes ~100 kg");
    },
  );

  it("takes the unit of its column, and only for a number without one", () => {
    expect(tell("102,5", { unit: "kg" })).toBe("takes 102.5 kg");
    expect(tell("405 lb", { unit: "kg" })).toBe("takes 405 lb");
  });

  it("proposes the likelier unit first", () => {
    expect(tell("225", { likely: "lb" })).toBe(
      "asks: the unit is missing | Write `225 lb` or `225 kg`, whichever is meant.",
    );
  });

  it.each([
    ["102,5", "the unit is missing | Write `102.5 kg` or `102.5 lb`, whichever is meant."],
    [
      "90-95",
      "this is a range; a plan needs one number, and the lower one is the safer | Write `~90 kg` or `~90 lb`, whichever is meant.",
    ],
    [
      "90–95 kg",
      "this is a range; a plan needs one number, and the lower one is the safer | Write `~90 kg` if that is meant.",
    ],
    ["100+ kg", "this is a bound, not a result | Write `100 kg` or `~100 kg`, whichever is meant."],
    [
      "1,800 kg",
      "the sign in the number may group thousands or begin decimals | Write `1.8 kg` or `1800 kg`, whichever is meant.",
    ],
    [
      "1,800 g",
      "the sign in the number may group thousands or begin decimals | Write `1800 g` or `1.8 g`, whichever is meant.",
    ],
    ["#315", '"#" before a number usually counts, behind it means pounds | Write `315 lb` if that is meant.'],
    ["100k", "k stands for kilo or for a thousand | Write `100 kg` if that is meant."],
    ["100 kq", '"kq" is no unit of mass | Write `100 kg` if that is meant.'],
    ["1O2 kg", "a letter stands among the digits | Write `102 kg` if that is meant."],
    ["100 kg each hand", '"each hand" behind the mass is not understood | Write `100 kg` if that is meant.'],
    ["100 kg (100 lb)", "these are two different masses | Write `100 kg` or `100 lb`, whichever is meant."],
    ["1.5 pood", "a pood is made as 16 kg | Write `24 kg` if that is meant."],
  ])("is asked about in %j", (text, told) => {
    expect(tell(text)).toBe(`asks: ${told}`);
  });

  it.each([
    ["", "the mass is missing"],
    ["kg", "this is not a mass"],
    ["-5 kg", "a mass is more than nothing"],
    ["0 kg", "a mass is more than nothing"],
    ["0 g", "a mass is more than nothing"],
    ["1.2.3 kg", "this is not a number"],
    ["70%", "a share says nothing without what it is a share of"],
    ["100/95 kg", "this is more than one number"],
    ["100 reps", '"reps" is no unit of mass'],
    ["1.2.3-4.5.6 kg", "this is neither one mass nor a range of two"],
  ])("is refused in %j", (text, problem) => {
    expect(tell(text)).toBe(`refuses: ${problem} | ${FORM}`);
  });

  it("names the units that are plausible, if only one is", () => {
    const plausible = (kg: number): boolean => kg >= 100 && kg <= 250;
    // 395 lb is 179 kg, 395 kg is not plausible here; 180 lb is 82 kg
    expect(tell("395", { plausible })).toBe("asks: the unit is missing | Write `395 lb` if that is meant.");
    expect(tell("180", { plausible })).toBe("asks: the unit is missing | Write `180 kg` if that is meant.");
    expect(tell("102.500 kg", { plausible })).toBe("takes 102.5 kg");
  });

  it("reads back what is written, in both units", () => {
    const masses = fc.record({
      value: fc.integer({ min: 1, max: 400_000 }).map((thousandths) => thousandths / 1000),
      unit: fc.constantFrom("kg" as const, "lb" as const),
    });
    fc.assert(
      fc.property(masses, fc.boolean(), (mass: Mass, comma) => {
        // Three decimals can be taken for thousands; everything else reads back.
        fc.pre(!/^[1-9]\d{0,2}\.\d{3}$/.test(String(mass.value)));
        const said = sayMass(mass);
        expect(readMass(comma ? said.replace(".", ",") : said)).toMatchObject({ ok: true, value: mass });
      }),
    );
  });

  it("keeps its weight through pounds and back", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 500, noNaN: true }), (value) => {
        const there = massIn("lb", inKilograms({ value, unit: "kg" }));
        expect(inKilograms(there)).toBeCloseTo(value, 9);
      }),
    );
  });

  it("never throws", () => {
    fc.assert(fc.property(fc.string(), (text) => typeof readMass(text).ok === "boolean"));
  });

  it("among words is asked about where every number can be one", () => {
    const plausible = (kg: number): boolean => kg >= 20 && kg <= 300;
    expect(tell("missed 110, made 105", { unit: "kg", plausible })).toBe(
      "asks: this is more than one number | Write `110 kg` or `105 kg`, whichever is meant.",
    );
    expect(tell("2 plates", { unit: "kg", plausible })).toBe(
      `refuses: "plates" is no unit of mass | ${FORM}`,
    );
  });

  it("of ranges within ranges is refused, however long they are", () => {
    expect(tell(`${"1-".repeat(20_000)}9 kg`)).toBe(
      `refuses: this is neither one mass nor a range of two | ${FORM}`,
    );
  });
});

import { describe, expect, it } from "vitest";
import { sayKilograms, sayLoad, sayMass } from "../../src/wording/mass.ts";

const nb = (text: string): string => text.replaceAll(" ", "\u00a0");

describe("a mass", () => {
  it("is said in the unit it is marked in", () => {
    expect([sayMass({ value: 102.5, unit: "kg" }), sayMass({ value: 225, unit: "lb" })]).toEqual([
      nb("102.5 kg"),
      nb("225 lb"),
    ]);
  });

  it("that was computed is said to the half, in the reader's unit", () => {
    // 66.66 kg / 0.45359237 = 146.96 lb
    expect([sayKilograms(66.66, "kg"), sayKilograms(66.66, "lb")]).toEqual([nb("66.5 kg"), nb("147 lb")]);
  });
});

describe("a load", () => {
  it("in the reader's unit stands alone", () => {
    expect(sayLoad({ mass: { value: 60, unit: "kg" }, kilograms: 60, pieces: 1 }, "kg")).toBe(nb("60 kg"));
  });

  it("in the other unit gives both, and a pair says so", () => {
    // 35 lb x 0.45359237 = 15.88 kg; 100 kg / 0.45359237 = 220.46 lb
    expect(sayLoad({ mass: { value: 35, unit: "lb" }, kilograms: 15.87573295, pieces: 2 }, "kg")).toBe(
      nb("2 × 35 lb (15.9 kg)"),
    );
    expect(sayLoad({ mass: { value: 100, unit: "kg" }, kilograms: 100, pieces: 1 }, "lb")).toBe(
      nb("100 kg (220 lb)"),
    );
  });

  it("made of plates of both units gives both", () => {
    const perSide = [
      { plate: { value: 20, unit: "kg" as const }, count: 1 },
      { plate: { value: 10, unit: "lb" as const }, count: 1 },
    ];
    // 20 + 2 x (20 + 4.535924) = 69.07 kg = 152.28 lb
    const load = { mass: { value: 69.07, unit: "kg" as const }, kilograms: 69.071848, pieces: 1, perSide };
    expect(sayLoad(load, "kg")).toBe(nb("69.1 kg (152 lb)"));
  });
});

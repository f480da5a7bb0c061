import { describe, expect, it } from "vitest";
import { otherUnits } from "../../src/browser/other-unit.ts";

const said = (text: string): string =>
  otherUnits(text.replaceAll("_", "\u00a0"))
    .map((piece) => piece.text + (piece.added ?? ""))
    .join("")
    .replaceAll("\u00a0", "_");

describe("the other unit beside a mass", () => {
  // 85 kg / 0.45359237 = 187.4 lb; 225 lb x 0.45359237 = 102.1 kg, 35 lb = 15.9 kg.
  it("is said behind it, in whole pounds, and in kilograms to a tenth below a hundred", () => {
    expect(said("open with 85_kg at 6:55")).toBe("open with 85_kg (187_lb) at 6:55");
    expect(said("225_lb, then 35_lb")).toBe("225_lb (102_kg), then 35_lb (15.9_kg)");
  });

  it("follows a pair and both ends of a range", () => {
    expect(said("2_×_15_kg")).toBe("2_×_15_kg (33_lb)");
    expect(said("Expected best lift 85–95_kg.")).toBe("Expected best lift 85–95_kg (187_lb–209_lb).");
  });

  it.each([
    "25 + 10_kg a side",
    "on 2.5_kg, each side",
    "off 1.25_kg, on 2.5_kg, each side",
    "25 + 2×2.5_kg a side",
    "50_kg (110_lb)",
  ])("leaves plates and what has both as they are: %s", (text) => {
    expect(said(text)).toBe(text);
  });

  it("takes no amount of something else for a mass", () => {
    expect(said("300–450 g a day, 12 reps, 400 m")).toBe("300–450 g a day, 12 reps, 400 m");
  });
});

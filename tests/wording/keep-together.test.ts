import { describe, expect, it } from "vitest";
import { keepTogether } from "../../src/wording/keep-together.ts";

describe("what stands together on a line", () => {
  it("is a number with its unit, the pieces of a load, and the sets of a visit", () => {
    expect(keepTogether("dumbbell box step-up at 2 x 22.5 kg to 60 cm")).toBe(
      "dumbbell box step-up at 2\u00a0x\u00a022.5\u00a0kg to 60\u00a0cm",
    );
    expect(keepTogether("breathe 8 s, then 7-7-6, rest 11 s")).toBe(
      "breathe 8\u00a0s, then 7-\u20607-\u20606, rest 11\u00a0s",
    );
  });

  it("is no word that only begins like a unit", () => {
    expect(keepTogether("36 double-under, 12 kettlebell swings, 4 minutes")).toBe(
      "36 double-under, 12 kettlebell swings, 4 minutes",
    );
  });
});

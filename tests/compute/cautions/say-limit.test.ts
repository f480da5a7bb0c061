import { describe, expect, it } from "vitest";
import { sayLimit } from "../../../src/compute/cautions/say-limit.ts";

describe("a stated limit as a reason", () => {
  it("names the joint and who knows it", () => {
    expect(sayLimit({ joint: "knee", avoid: ["impact"], without: [] })).toEqual({
      why: "You stated a limit: your knee.",
      ask: "Ask your coach, or the licensed professional who knows your knee, before you do it.",
    });
  });

  it("names the condition, and nobody's own words", () => {
    const limit = { condition: "recent-illness", avoid: [], without: [], note: "Private words." } as const;
    expect(sayLimit(limit)).toEqual({
      why: "You stated a limit: an illness not long ago.",
      ask: "Ask your coach or a licensed professional before you do it.",
    });
  });

  it("says that the athlete asked for it where nothing is named", () => {
    expect(sayLimit({ avoid: ["kipping"], without: [] }).why).toBe("You asked to keep away from it.");
  });
});

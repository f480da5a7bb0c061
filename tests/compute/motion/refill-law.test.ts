import { describe, expect, it } from "vitest";
import { fastRefilled, refillLaw, slowRefilled } from "../../../src/compute/motion/refill-law.ts";
import { rulesFor } from "../../../src/compute/motion/rules.ts";
import { seconds } from "../../../src/models/quantity.ts";

const rules = rulesFor({ level: "regular", reserve: seconds(60), recoverySpeed: 1 });

describe("the law of refilling", () => {
  // By hand: from empty, after 10 s the fast third has closed 1 - 1/e of its gap, 0.6321 of 20 s of work;
  // after 240 s the slow two thirds have closed as much of theirs, 0.6321 of 40.
  it("closes each gap by its own time constant", () => {
    expect(fastRefilled(0, refillLaw(rules, 60, 10))).toBeCloseTo(12.642, 3);
    expect(slowRefilled(0, refillLaw(rules, 60, 240))).toBeCloseTo(25.285, 3);
  });

  it("leaves a full store full, and changes nothing in no time", () => {
    expect(fastRefilled(20, refillLaw(rules, 60, 500))).toBeCloseTo(20, 12);
    expect(slowRefilled(7, refillLaw(rules, 60, 0))).toBe(7);
  });
});

import { describe, expect, it } from "vitest";
import { type Cause, causesOf } from "../../../src/compute/cautions/causes-of.ts";
import { allHold } from "../../../src/compute/conditions/holds.ts";
import { readCondition } from "../../../src/reading/conditions/read-condition.ts";
import { sampleMovements } from "../../support/sample-movements.ts";

const situation = {
  numbers: { wbgt: 31, age: 15, "times-usual": 2 },
  facts: { "limit-condition": ["asthma"], "gym-has": [], stress: ["kipping"] },
} as const;
const causes = (texts: readonly string[], movement?: string): readonly Cause[] => {
  const conditions = texts.flatMap((text) => {
    const read = readCondition(text);
    return read.ok ? [read.value] : [];
  });
  return causesOf(
    allHold(conditions, situation).verdicts,
    movement === undefined ? undefined : sampleMovements.get(movement),
  );
};

describe("what brought a caution up", () => {
  it("is every number and fact that held, in the order written", () => {
    expect(causes([])).toEqual([]);
    expect(causes(["wbgt over 30", "limit-condition asthma"])).toEqual([
      { of: "wbgt" },
      { of: "limit-condition", word: "asthma" },
    ]);
  });

  it("is, of several that would do, the one that held", () => {
    expect(causes(["limit-condition epilepsy or age under 18"])).toEqual([{ of: "age" }]);
  });

  it("is nothing that is not so", () => {
    expect(causes(["not gym-has pins"])).toEqual([]);
  });

  it("names the movement asked of", () => {
    expect(causes(["times-usual over 1.5", "stress kipping"], "pull-up")).toEqual([
      { of: "times-usual", movement: "pull-ups" },
      { of: "stress", word: "kipping", movement: "pull-ups" },
    ]);
  });
});

import { describe, expect, it } from "vitest";
import { sayCause } from "../../../src/compute/cautions/say-cause.ts";
import { allHold } from "../../../src/compute/conditions/holds.ts";
import { readCondition } from "../../../src/reading/conditions/read-condition.ts";
import { sampleMovements } from "../../support/sample-movements.ts";

const situation = {
  numbers: { wbgt: 31, age: 15, "times-usual": 2 },
  facts: { "limit-condition": ["asthma"], "gym-has": [], stress: ["kipping"] },
} as const;
const cause = (texts: readonly string[]): string => {
  const conditions = texts.flatMap((text) => {
    const read = readCondition(text);
    return read.ok ? [read.value] : [];
  });
  return sayCause(allHold(conditions, situation).verdicts, sampleMovements.get("pull-up"));
};

describe("what brought something up", () => {
  it.each([
    [[], ""],
    [["wbgt over 30"], "the heat expected at your start"],
    [["wbgt over 30", "age under 18"], "the heat expected at your start and your age"],
    [["age under 18 or limit-condition asthma"], "your age"],
    [["limit-condition asthma"], "what you stated: asthma"],
    [["times-usual over 1.5", "stress kipping"], "more pull-ups than you have lately done"],
    [["not gym-has pins"], ""],
    [
      ["stress kipping", "wbgt over 30", "limit-condition asthma"],
      "what you stated: asthma and the heat expected at your start",
    ],
  ])("%j: %s", (texts, expected) => {
    expect(cause(texts)).toBe(expected);
  });
});

import { describe, expect, it } from "vitest";
import { allHold, holds } from "../../../src/compute/conditions/holds.ts";
import { type Situation, withMore } from "../../../src/compute/conditions/situation.ts";
import type { Condition } from "../../../src/models/condition.ts";
import { readCondition } from "../../../src/reading/conditions/read-condition.ts";

const condition = (text: string): Condition => {
  const read = readCondition(text);
  if (!read.ok) throw new Error(read.refusal.problem);
  return read.value;
};

const situation: Situation = {
  numbers: { "load-share": 0.8, wbgt: 28 },
  facts: { stress: ["kipping", "overhead"], "gym-has": ["bumper plates"], prefers: [] },
};

describe("a condition in a situation", () => {
  it.each([
    ["load-share at least 80%", true],
    ["load-share over 80%", false],
    ["load-share at most 80%", true],
    ["load-share under 80%", false],
    ["wbgt over 27.8", true],
    ["wbgt at most 27.8", false],
    ["stress kipping", true],
    ["not stress kipping", false],
    ["stress impact", false],
    ["not stress impact", true],
    ["gym-has Bumper  Plates", true],
    ["gym-has bumper-plates", true],
    ["not prefers butterfly", true],
    ["stress impact or wbgt over 27.8", true],
    ["stress impact or wbgt under 27.8", false],
  ])("%s: %s", (text, expected) => {
    expect(holds(condition(text), situation).holds).toBe(expected);
  });

  it("does not hold over what is not known, and neither does its contrary", () => {
    for (const text of ["age under 18", "age at least 18", "sex female", "not sex female"]) {
      expect(holds(condition(text), situation)).toMatchObject({ holds: false, known: false });
    }
  });

  it("tells the number or word it was decided on", () => {
    expect(holds(condition("wbgt over 27.8"), situation).value).toBe(28);
    expect(holds(condition("stress kipping"), situation).value).toBe("kipping");
    expect(holds(condition("age under 18"), situation).value).toBeUndefined();
  });

  it("tells of several joined by `or` the one that holds", () => {
    const verdict = holds(condition("age under 18 or stress impact or stress overhead"), situation);
    expect(verdict).toMatchObject({ holds: true, value: "overhead" });
  });

  it("is not shaken by the last digit of a division", () => {
    // 0.1 + 0.7 is 0.7999999999999999 in binary
    const close = withMore(situation, { numbers: { "load-share": 0.1 + 0.7 } });
    expect(holds(condition("load-share at least 80%"), close).holds).toBe(true);
    expect(holds(condition("load-share under 80%"), close).holds).toBe(false);
  });
});

describe("a list of conditions", () => {
  it("holds when all do, and when it is empty", () => {
    expect(allHold([], situation).holds).toBe(true);
    expect(allHold([condition("stress kipping"), condition("wbgt over 27.8")], situation).holds).toBe(true);
    expect(allHold([condition("stress kipping"), condition("age over 18")], situation).holds).toBe(false);
  });

  it("hands out the verdict on each", () => {
    const { verdicts } = allHold([condition("stress kipping"), condition("age over 18")], situation);
    expect(verdicts.map((verdict) => verdict.holds)).toEqual([true, false]);
  });
});

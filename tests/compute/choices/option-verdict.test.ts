import { describe, expect, it } from "vitest";
import {
  isClose,
  reasonFrom,
  weighOption,
  withoutLimits,
} from "../../../src/compute/choices/option-verdict.ts";
import { holds } from "../../../src/compute/conditions/holds.ts";
import { readCondition } from "../../../src/reading/conditions/read-condition.ts";

const situation = {
  numbers: { "load-share": 0.84, amount: 10 },
  facts: { "limit-joint": ["knee"], level: ["new"], "has-lift": ["no"] },
} as const;
const verdict = (text: string) => {
  const read = readCondition(text);
  if (!read.ok) throw new Error(read.refusal.problem);
  return holds(read.value, situation);
};

describe("a verdict as the plan shows it", () => {
  it.each([
    ["load-share at least 80%", { what: "load-share", value: 0.84, is: "at-least", threshold: 0.8 }],
    ["load-share under 80%", { what: "load-share", value: 0.84, is: "at-least", threshold: 0.8 }],
    ["amount over 12", { what: "amount", value: 10, is: "at-most", threshold: 12 }],
    ["amount at most 12", { what: "amount", value: 10, is: "at-most", threshold: 12 }],
    ["limit-joint knee", { what: "limit-joint", value: "knee", is: "holds" }],
    ["not limit-joint knee", { what: "limit-joint", value: "knee", is: "holds" }],
    ["not limit-joint hip", { what: "limit-joint", value: "hip", is: "does-not-hold" }],
    ["has-lift yes", { what: "has-lift", value: "yes", is: "does-not-hold" }],
  ])("%s", (text, reason) => {
    expect(reasonFrom(verdict(text))).toEqual(reason);
  });
});

describe("a close call", () => {
  it("lies within a share of the threshold, on either side", () => {
    expect(isClose(verdict("load-share at least 80%"), 0.05)).toBe(true);
    expect(isClose(verdict("load-share at least 80%"), 0.04)).toBe(false);
    expect(isClose(verdict("level new"), 1)).toBe(false);
    expect(isClose(verdict("age over 18"), 1)).toBe(false);
  });
});

describe("an option weighed", () => {
  it("keeps verdicts on stated limits apart", () => {
    const read = ["level new", "not limit-joint knee"].map((text) => readCondition(text));
    const when = read.flatMap((each) => (each.ok ? [each.value] : []));
    const option = { id: "a", name: "a", say: "A.", when, adds: [] };
    const { telling, onLimits, holds: all } = weighOption(option, situation);
    expect([telling.length, onLimits.length, all]).toEqual([1, 1, false]);
    expect(weighOption(option, withoutLimits(situation)).holds).toBe(true);
  });
});

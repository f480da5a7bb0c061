import { describe, expect, it } from "vitest";
import { sayCause } from "../../src/wording/cause.ts";

const HEAT = { of: "wbgt" } as const;
const AGE = { of: "age" } as const;
const ASTHMA = { of: "limit-condition", word: "asthma" } as const;
const KIPPING = { of: "stress", word: "kipping", movement: "pull-ups" } as const;

describe("what brought something up", () => {
  it.each([
    [[], ""],
    [[HEAT], "the heat expected at your start"],
    [[AGE, HEAT], "the heat expected at your start and your age"],
    [[ASTHMA], "what you stated: asthma"],
    [[{ of: "limit-joint", word: "knee" } as const], "the limit you stated at your knee"],
    [
      [KIPPING, { of: "times-usual", movement: "pull-ups" } as const],
      "more pull-ups than you have lately done",
    ],
    [[{ of: "gym-has", word: "pins" } as const], ""],
    [[KIPPING, HEAT, ASTHMA], "what you stated: asthma and the heat expected at your start"],
  ])("%j: %s", (causes, expected) => {
    expect(sayCause(causes)).toBe(expected);
  });

  it("is nothing where nothing is told", () => {
    expect(sayCause()).toBe("");
  });
});

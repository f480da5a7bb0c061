import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  COMPARISONS,
  FACTS,
  FACT_WORDS,
  METRICS,
  METRIC_UNITS,
  singlesOf,
} from "../../../src/models/condition.ts";
import { readCondition } from "../../../src/reading/conditions/read-condition.ts";

const valueOf = (text: string): unknown => {
  const read = readCondition(text);
  return read.ok ? read.value : read.refusal;
};

describe("a condition read from text", () => {
  it.each([
    ["load-share at least 80%", { kind: "number", metric: "load-share", is: "at-least", value: 0.8 }],
    ["load-share at least 82,5 %", { kind: "number", metric: "load-share", is: "at-least", value: 0.825 }],
    ["workout-minutes over 20", { kind: "number", metric: "workout-minutes", is: "over", value: 20 }],
    ["  wbgt   at   most  27.8 ", { kind: "number", metric: "wbgt", is: "at-most", value: 27.8 }],
    ["body-mass under 60 kg", { kind: "number", metric: "body-mass", is: "under", value: 60 }],
    // 200 lb x 0.45359237 kg by the international pound
    ["body-mass over 200 lb", { kind: "number", metric: "body-mass", is: "over", value: 90.718474 }],
    ["height over 185 cm", { kind: "number", metric: "height", is: "over", value: 1.85 }],
    ["limit-joint shoulder", { kind: "fact", fact: "limit-joint", word: "shoulder", holds: true }],
    ["not prefers butterfly", { kind: "fact", fact: "prefers", word: "butterfly", holds: false }],
    ["gym-has bumper plates", { kind: "fact", fact: "gym-has", word: "bumper plates", holds: true }],
    ["may-come clean and jerk", { kind: "fact", fact: "may-come", word: "clean and jerk", holds: true }],
    ["has-lift no", { kind: "fact", fact: "has-lift", word: "no", holds: true }],
  ])("%s", (text, condition) => {
    expect(valueOf(text)).toEqual(condition);
  });

  it("asks for one of several where they are joined by `or`", () => {
    expect(valueOf("age under 18 or limit-condition pregnancy or not level elite")).toEqual({
      kind: "any",
      of: [
        { kind: "number", metric: "age", is: "under", value: 18 },
        { kind: "fact", fact: "limit-condition", word: "pregnancy", holds: true },
        { kind: "fact", fact: "level", word: "elite", holds: false },
      ],
    });
  });

  it("hands out its single conditions either way", () => {
    const one = readCondition("stress kipping");
    const two = readCondition("stress kipping or stress overhead");
    expect(one.ok && singlesOf(one.value)).toHaveLength(1);
    expect(two.ok && singlesOf(two.value)).toHaveLength(2);
  });

  it("reads every number and every fact of the vocabulary in its own form", () => {
    const suffix = { share: "%", mass: " kg", length: " m", bare: "" };
    const numbers = fc.record({
      metric: fc.constantFrom(...METRICS),
      is: fc.constantFrom(...COMPARISONS),
      value: fc.integer({ min: 0, max: 500 }),
    });
    fc.assert(
      fc.property(numbers, ({ metric, is, value }) => {
        const unit = METRIC_UNITS[metric] ?? "bare";
        const text = `${metric} ${is.replace("-", " ")} ${value}${suffix[unit]}`;
        const expected = unit === "share" ? value / 100 : value;
        expect(valueOf(text)).toEqual({ kind: "number", metric, is, value: expected });
      }),
    );
    for (const fact of FACTS) {
      for (const word of FACT_WORDS[fact] ?? ["some name"]) {
        expect(valueOf(`${fact} ${word}`)).toEqual({ kind: "fact", fact, word, holds: true });
      }
    }
  });

  it("never throws, whatever is typed", () => {
    const words = fc.constantFrom(
      "not",
      "or",
      "and",
      "load-share",
      "at",
      "least",
      "80%",
      "stress",
      "kipping",
    );
    const texts = fc.oneof(
      fc.string(),
      fc.array(words).map((list) => list.join(" ")),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const read = readCondition(text);
        expect(read.ok || read.refusal.problem.length > 0).toBe(true);
      }),
    );
  });
});

const numbersAndFacts = [...METRICS, ...FACTS].join(", ");
const comparisons = "at least, over, at most, under";

describe("a condition that cannot be read tells why", () => {
  it.each([
    [
      "load-shere at least 80%",
      {
        found: "load-shere",
        problem: '"load-shere" is not a number or fact a condition can ask about',
        allowed: numbersAndFacts,
        choices: [...METRICS, ...FACTS],
        remedy: "Begin the condition with one of these names.",
        offset: 0,
      },
    ],
    [
      "age at least 18 or limit-joint sholder",
      {
        found: "sholder",
        problem: '"sholder" is not a word `limit-joint` can speak about',
        allowed: "neck, shoulder, elbow, wrist, hand, back, hip, knee, ankle, foot",
        choices: FACT_WORDS["limit-joint"],
        remedy: "Write `limit-joint` and one of these words.",
        offset: 31,
      },
    ],
    [
      "sex",
      {
        found: "",
        problem: "the word after `sex` is missing",
        allowed: "female, male",
        choices: ["female", "male"],
        remedy: "Write `sex` and one of these words.",
        offset: 3,
      },
    ],
    [
      "gym-has",
      {
        found: "",
        problem: "the name after `gym-has` is missing",
        allowed: "`gym-has` and a name",
        choices: [],
        remedy: "Write the name it asks about, such as `gym-has rack`.",
        offset: 7,
      },
    ],
    [
      "load-share at least 0.8",
      {
        found: "0.8",
        problem: "`load-share` is compared with a share in per cent, such as 80%",
        allowed: "a share in per cent, such as 80%",
        choices: [],
        remedy: "Write `load-share at least 80%`.",
        offset: 20,
      },
    ],
    [
      "body-mass over 80",
      {
        found: "80",
        problem: "`body-mass` is compared with a mass with its unit, such as 80 kg or 175 lb",
        allowed: "a mass with its unit, such as 80 kg or 175 lb",
        choices: [],
        remedy: "Write `body-mass over 80 kg`.",
        offset: 15,
      },
    ],
    [
      "height over 180",
      {
        found: "180",
        problem: "`height` is compared with a length with its unit, such as 1.80 m or 180 cm",
        allowed: "a length with its unit, such as 1.80 m or 180 cm",
        choices: [],
        remedy: "Write `height over 180 cm`.",
        offset: 12,
      },
    ],
    [
      "workout-minutes over 20 min",
      {
        found: "20 min",
        problem: "`workout-minutes` is compared with a number without a unit, such as 20",
        allowed: "a number without a unit, such as 20",
        choices: [],
        remedy: "Write `workout-minutes over 20`.",
        offset: 21,
      },
    ],
    [
      "wbgt over",
      {
        found: "",
        problem: "`wbgt` is compared with a number without a unit, such as 20",
        allowed: "a number without a unit, such as 20",
        choices: [],
        remedy: "Write `wbgt over 20`.",
        offset: 9,
      },
    ],
    [
      "load-share >= 80%",
      {
        found: ">=",
        problem: "`load-share` is a number, and it is not said how to compare it",
        allowed: comparisons,
        choices: ["at least", "over", "at most", "under"],
        remedy: "Write `load-share at least 80%`.",
        offset: 11,
      },
    ],
    [
      "age 18",
      {
        found: "18",
        problem: "`age` is a number, and it is not said how to compare it",
        allowed: comparisons,
        choices: ["at least", "over", "at most", "under"],
        remedy: "Write `age at least 18`.",
        offset: 4,
      },
    ],
    [
      "not load-share over 80%",
      {
        found: "not",
        problem: "a comparison of numbers takes no `not`",
        allowed: comparisons,
        choices: [],
        remedy: "Turn the comparison round: `load-share at most 80%`.",
        offset: 0,
      },
    ],
    [
      "not has-lift yes",
      {
        found: "not",
        problem: "`has-lift` is answered yes or no and takes no `not`",
        allowed: "has-lift yes, has-lift no",
        choices: [],
        remedy: "Write `has-lift no`.",
        offset: 0,
      },
    ],
    [
      "stress kipping and has-lift yes",
      {
        found: "and",
        problem: "conditions that must all hold are entries of a list and are not joined by `and`",
        allowed: "one condition in each entry of the list",
        choices: [],
        remedy: "Write two entries: `stress kipping` and `has-lift yes`.",
        offset: 15,
      },
    ],
    [
      "  ",
      {
        found: "",
        problem: "a condition is missing",
        allowed: numbersAndFacts,
        choices: [],
        remedy: "Write a condition such as `load-share at least 80%` or `limit-joint shoulder`.",
        offset: 0,
      },
    ],
  ])("%s", (text, refusal) => {
    expect(valueOf(text)).toEqual(refusal);
  });
});

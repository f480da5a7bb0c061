import { describe, expect, it } from "vitest";
import { chooseOptions, type ChooseInput } from "../../../src/compute/choices/choose-options.ts";
import type { Situation } from "../../../src/compute/conditions/situation.ts";
import type { Condition } from "../../../src/models/condition.ts";
import type { MovementOption } from "../../../src/models/movement.ts";
import { readCondition } from "../../../src/reading/conditions/read-condition.ts";
import type { Stress } from "../../../src/models/vocabulary.ts";
import { movement } from "../../support/sample-movements.ts";

const when = (...texts: readonly string[]): readonly Condition[] =>
  texts.map((text) => {
    const read = readCondition(text);
    if (!read.ok) throw new Error(read.refusal.problem);
    return read.value;
  });
const option = (
  id: string,
  conditions: readonly string[],
  more: Partial<MovementOption> = {},
): MovementOption => ({
  id,
  name: `the ${id} way`,
  say: `Do it the ${id} way.`,
  when: when(...conditions),
  switchWhen: `Leave the ${id} way when it slows.`,
  test: `Try the ${id} way twice.`,
  adds: [],
  ...more,
});

const butterfly = option("butterfly", ["unbroken at least 15", "not limit-joint shoulder"], {
  adds: ["kipping"],
});
const kipping = option("kipping", ["not limit-stress kipping"], { adds: ["kipping"] });
const strict = option("strict", []);

type Given = {
  readonly numbers?: Situation["numbers"];
  readonly facts?: Situation["facts"];
  readonly options?: readonly MovementOption[];
  readonly prefers?: string;
  readonly away?: Stress;
};
function choose(given: Given): ReturnType<typeof chooseOptions> {
  const hung = movement({
    id: "pull-up",
    kind: "gymnastics",
    choices: [
      { id: "style", question: "Which way?", options: given.options ?? [butterfly, kipping, strict] },
    ],
  });
  const facts = { "limit-joint": [], "limit-stress": [], "limit-condition": [], ...given.facts };
  const input: ChooseInput = {
    movements: [{ movement: hung, situation: { numbers: given.numbers ?? {}, facts } }],
    withholding: {
      stresses: new Map(given.away === undefined ? [] : [[given.away, { kind: "limit", joint: "shoulder" }]]),
    },
    prefers: given.prefers === undefined ? {} : { style: given.prefers },
  };
  return chooseOptions(input);
}
const only = (given: Given) => choose(given).choices[0];

describe("a choice of a movement", () => {
  it("is the first option whose conditions hold, with the number that decided", () => {
    expect(only({ numbers: { unbroken: 25 } })).toEqual({
      id: "style",
      parts: [],
      movement: "pull-up",
      movementName: "pull-ups",
      question: "Which way?",
      pick: { id: "butterfly", name: "the butterfly way", say: "Do it the butterfly way." },
      because: [{ what: "unbroken", value: 25, is: "at-least", threshold: 15 }],
      decidedBy: "numbers",
      switchWhen: "Leave the butterfly way when it slows.",
    });
  });

  it("tells each number once, by the threshold it comes nearest to", () => {
    const options = [
      option("squat", ["load-share at least 65%", "load-share at least 80%", "amount over 1"]),
      strict,
    ];
    expect(only({ options, numbers: { "load-share": 0.9, amount: 3 } })?.because).toEqual([
      { what: "load-share", value: 0.9, is: "at-least", threshold: 0.8 },
      { what: "amount", value: 3, is: "over", threshold: 1 },
    ]);
  });

  it("tells the number that kept the better option out", () => {
    expect(only({ numbers: { unbroken: 8 } })).toMatchObject({
      pick: { id: "kipping" },
      because: [{ what: "unbroken", value: 8, is: "under", threshold: 15 }],
      decidedBy: "numbers",
    });
  });

  it("names the runner-up only where it is close", () => {
    expect(only({ numbers: { unbroken: 25 } })).not.toHaveProperty("other");
    expect(only({ numbers: { unbroken: 15.5 } })?.other?.id).toBe("kipping");
  });

  it("is the usual way where nothing is known, and says what to try", () => {
    expect(only({})).toMatchObject({
      pick: { id: "kipping" },
      because: [],
      test: "Try the kipping way twice.",
    });
    expect(only({ options: [strict] })).toMatchObject({ decidedBy: "default", because: [] });
  });

  it("asks for a try in the warm-up when it is close, and not when it is clear", () => {
    // 5 % of 15 is 0.75: 14.5 and 15.5 are close, 14 and 16 are not
    expect(only({ numbers: { unbroken: 15.5 } })?.test).toBe("Try the butterfly way twice.");
    expect(only({ numbers: { unbroken: 14.5 } })?.test).toBe("Try the kipping way twice.");
    expect(only({ numbers: { unbroken: 16 } })).not.toHaveProperty("test");
    expect(only({ numbers: { unbroken: 14 } })).not.toHaveProperty("test");
  });

  it("asks for a try where a load is held against a best lift that is only guessed", () => {
    const options = [option("singles", ["load-share at least 70%"]), strict];
    const numbers = { "load-share": 0.9 };
    expect(only({ options, numbers, facts: { "best-known": ["no"] } })).toHaveProperty("test");
    expect(only({ options, numbers, facts: { "best-known": ["yes"] } })).not.toHaveProperty("test");
  });

  it("can be closer or clearer by the coach's own measure", () => {
    const hung = movement({
      id: "pull-up",
      kind: "gymnastics",
      choices: [{ id: "style", question: "Which way?", options: [butterfly, strict] }],
    });
    const { choices } = chooseOptions({
      movements: [{ movement: hung, situation: { numbers: { unbroken: 20 }, facts: { "limit-joint": [] } } }],
      withholding: { stresses: new Map() },
      prefers: {},
      overrides: { closeCall: 0.5 },
    });
    expect(choices[0]?.test).toBe("Try the butterfly way twice.");
  });
});

describe("a stated limit", () => {
  it("takes the options out that add what is kept away from, and tells what is withheld", () => {
    const { choices, withheld } = choose({
      numbers: { unbroken: 25 },
      facts: { "limit-stress": ["kipping"] },
      away: "kipping",
    });
    expect(choices[0]).toMatchObject({
      pick: { id: "strict" },
      because: [{ what: "limit-stress", value: "kipping", is: "holds" }],
      decidedBy: "limit",
    });
    expect(choices[0]).not.toHaveProperty("other");
    expect(withheld).toEqual([
      {
        what: "option",
        movement: "pull-up",
        of: "pull-ups",
        way: "the butterfly way",
        reason: { kind: "limit", joint: "shoulder" },
        instead: "the strict way",
      },
    ]);
  });

  it("decides through a condition too, without withholding anything", () => {
    const { choices, withheld } = choose({
      numbers: { unbroken: 25 },
      facts: { "limit-joint": ["shoulder"] },
    });
    expect(choices[0]).toMatchObject({
      pick: { id: "kipping" },
      because: [{ what: "limit-joint", value: "shoulder", is: "holds" }],
      decidedBy: "limit",
    });
    expect(withheld).toEqual([]);
  });

  it("leaves no choice where every option adds what is kept away from", () => {
    const { choices, withheld } = choose({ options: [kipping], away: "kipping" });
    expect(choices).toEqual([]);
    expect(withheld).toHaveLength(1);
    expect(withheld[0]).not.toHaveProperty("instead");
  });

  it("outweighs a preference", () => {
    expect(only({ prefers: "butterfly", numbers: { unbroken: 25 }, away: "kipping" })).toMatchObject({
      pick: { id: "strict" },
      decidedBy: "limit",
    });
  });
});

describe("a stated preference", () => {
  it("settles a close call, in either direction", () => {
    expect(only({ prefers: "butterfly", numbers: { unbroken: 14.6 } })).toMatchObject({
      pick: { id: "butterfly" },
      decidedBy: "preference",
      because: [{ what: "unbroken", value: 14.6, is: "under", threshold: 15 }],
      other: { id: "kipping" },
    });
    expect(only({ prefers: "kipping", numbers: { unbroken: 15.4 } })).toMatchObject({
      pick: { id: "kipping" },
      decidedBy: "preference",
    });
  });

  it("settles what no number speaks on", () => {
    expect(only({ prefers: "butterfly" })).toMatchObject({
      pick: { id: "butterfly" },
      decidedBy: "preference",
    });
    const options = [option("left", []), option("right", [])];
    expect(only({ options, prefers: "right" })).toMatchObject({
      pick: { id: "right" },
      decidedBy: "preference",
    });
    expect(only({ options, prefers: "left" })).toMatchObject({
      pick: { id: "left" },
      decidedBy: "preference",
    });
  });

  it("gives way to a clear number", () => {
    expect(only({ prefers: "butterfly", numbers: { unbroken: 5 } })).toMatchObject({
      pick: { id: "kipping" },
      decidedBy: "numbers",
    });
    expect(only({ prefers: "kipping", numbers: { unbroken: 30 } })).toMatchObject({
      pick: { id: "butterfly" },
      decidedBy: "numbers",
    });
  });

  it("of an option that is not offered changes nothing", () => {
    expect(only({ prefers: "sideways", numbers: { unbroken: 30 } })).toMatchObject({
      pick: { id: "butterfly" },
    });
  });
});

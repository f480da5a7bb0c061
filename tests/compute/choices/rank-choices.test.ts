import { describe, expect, it } from "vitest";
import { rankChoices, type RankInput } from "../../../src/compute/choices/rank-choices.ts";
import type { Plan } from "../../../src/models/plan/plan.ts";
import { movement } from "../../support/sample-movements.ts";

type Choice = Plan["choices"][number];
const choice = (id: string, on: string, more: Partial<Choice> = {}): Choice => ({
  id,
  movement: on,
  movementName: on,
  question: `${id}?`,
  parts: ["A"],
  pick: { id: "one", name: "one way", say: "Do it one way." },
  because: [],
  decidedBy: "numbers",
  ...more,
});

// Eight minutes of burpees, one of swings and one of the rope; a lift stands in a part of its own.
const parts: RankInput["parts"] = [
  {
    name: "A",
    pacing: {
      rows: [
        { kind: "work", movement: "burpee", start: 0, end: 480 },
        { kind: "rest", start: 480, end: 600 },
        { kind: "work", movement: "swing", start: 600, end: 660 },
        { kind: "work", movement: "rope", start: 660, end: 720 },
      ],
    },
  },
  { name: "B", lifting: { lifts: [{ movement: "clean" }] } },
];
const offers = (id: string, little: readonly string[] = []): ReturnType<typeof movement> =>
  movement({
    id,
    kind: "bodyweight",
    choices: little.map((each) => ({ id: each, question: "?", worth: "little", options: [] })),
  });
const movements = new Map(
  [offers("burpee", ["shoes"]), offers("swing", ["tape"]), offers("rope"), offers("clean", ["belt"])].map(
    (each) => [each.id, each],
  ),
);
const minorOf = (
  choices: readonly Choice[],
  overrides: Readonly<Record<string, number>> = {},
): readonly string[] =>
  rankChoices({ choices, movements, parts, overrides })
    .filter(({ minor }) => minor)
    .map(({ id }) => id);

describe("which choices a brief carries", () => {
  it("carries all where they are few", () => {
    expect(minorOf([choice("tape", "swing"), choice("rhythm", "rope")])).toEqual([]);
  });

  it("carries first what most of the time of the part hangs on", () => {
    // The burpees take eight of ten minutes: their footwork before anything of the rope.
    const all = [choice("rhythm", "rope"), choice("drive", "swing"), choice("footwork", "burpee")];
    expect(minorOf(all, { mainChoicesOfPart: 1 })).toEqual(["rhythm", "drive"]);
  });

  it("carries what moves seconds before what is worth little", () => {
    // 0.8 of the time at 0.3 is 0.24, under half of what footwork is worth; a rope at 0.1 stays behind both.
    const all = [choice("shoes", "burpee"), choice("footwork", "burpee"), choice("rhythm", "rope")];
    expect(minorOf(all, { mainChoicesOfPart: 2 })).toEqual(["rhythm"]);
    expect(minorOf(all, { mainChoicesOfPart: 1 })).toEqual(["shoes", "rhythm"]);
  });

  it("carries a close call before a clear one", () => {
    const all = [choice("drive", "swing"), choice("rhythm", "rope", { test: "Try both." })];
    expect(minorOf(all, { mainChoicesOfPart: 1 })).toEqual(["drive"]);
  });

  it("always carries what a stated limit decided", () => {
    const all = [choice("footwork", "burpee"), choice("drive", "swing", { decidedBy: "limit" })];
    expect(minorOf(all, { mainChoicesOfPart: 1 })).toEqual([]);
  });

  it("counts each part for itself and keeps the order of the work", () => {
    const all = [
      choice("footwork", "burpee"),
      choice("shoes", "burpee"),
      choice("catch", "clean", { parts: ["B"] }),
      choice("belt", "clean", { parts: ["B"] }),
    ];
    const ranked = rankChoices({ choices: all, movements, parts, overrides: { mainChoicesOfPart: 1 } });
    expect(ranked.map(({ id, minor }) => [id, minor ?? false])).toEqual([
      ["footwork", false],
      ["shoes", true],
      ["catch", false],
      ["belt", true],
    ]);
  });
});

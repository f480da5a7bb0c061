import { describe, expect, it } from "vitest";
import { mergeChoices } from "../../../src/compute/choices/merge-choices.ts";
import type { Plan } from "../../../src/models/plan/plan.ts";

type Choice = Plan["choices"][number];
const choice = (movement: string, more: Partial<Choice> = {}): Choice => ({
  id: "breaks",
  movement,
  movementName: movement === "press" ? "presses" : `${movement}s`,
  question: "In one go or in sets?",
  parts: ["A"],
  pick: { id: "sets", name: "in sets", say: "Stop where planned." },
  because: [],
  decidedBy: "numbers",
  ...more,
});

describe("choices put together", () => {
  it("tells one answer for two movements once, with both names", () => {
    const [only, ...none] = mergeChoices([choice("squat"), choice("press")]);
    expect(none).toEqual([]);
    expect(only?.alsoFor).toEqual([{ movement: "press", name: "presses" }]);
  });

  it("tells one answer for two parts once, with both parts", () => {
    const merged = mergeChoices([choice("squat"), choice("squat", { parts: ["B"] })]);
    expect(merged.map(({ parts }) => parts)).toEqual([["A", "B"]]);
  });

  it("says a reason, a change and a test once, where two choices say them alike", () => {
    const words = {
      reason: { say: "The plan takes them one at a time.", values: [] },
      switchWhen: "Make the sets smaller, not the breaks longer.",
      test: "Do three.",
    };
    const other = { id: "grip", pick: { id: "open", name: "open", say: "Hold it open." } };
    const [first, second] = mergeChoices([choice("squat", words), choice("press", { ...words, ...other })]);
    expect(first).toMatchObject(words);
    for (const key of Object.keys(words)) expect(second).not.toHaveProperty(key);
  });

  it("keeps a reason that has other numbers", () => {
    const because = (value: number): Choice["reason"] => ({
      say: "The plan has {amount} in one go.",
      values: [{ gap: "amount", value, guessed: false }],
    });
    const merged = mergeChoices([
      choice("squat", { reason: because(20) }),
      choice("press", { id: "grip", reason: because(12) }),
    ]);
    expect(merged.map(({ reason }) => reason?.values[0]?.value)).toEqual([20, 12]);
  });
});

import { describe, expect, it } from "vitest";
import {
  sayAmountRange,
  sayDay,
  sayExtent,
  sayLeaveOut,
  sayPieceExtent,
  sayWork,
} from "../../src/wording/after.ts";

const nb = (text: string): string => text.replaceAll("_", "\u00a0");
const grams = (low: number, high: number, perKilogram = false) =>
  ({ low, high, unit: "g", perKilogram }) as const;

describe("an amount of food", () => {
  it("is told no finer than the stands it comes from, and never with decimals", () => {
    expect(sayAmountRange(grams(64, 77))).toBe(nb("65–75_g"));
    // 0.25 to 0.3 g for each of 52 kg: 13 to 15.6
    expect(sayAmountRange(grams(13, 15.6))).toBe(nb("13–16_g"));
    // 5 to 7 g for each of 64 kg: 320 to 448
    expect(sayAmountRange({ low: 320, high: 448, unit: "g/day", perKilogram: false })).toBe(
      nb("300–450_g a day"),
    );
  });

  it("is one figure where both ends round to it", () => {
    expect(sayAmountRange(grams(20, 21))).toBe(nb("about_20_g"));
  });

  it("says what it is of, and then for how long", () => {
    expect(
      sayAmountRange({ low: 320, high: 448, unit: "g/day", of: "carbohydrate", perKilogram: false }),
    ).toBe(nb("300–450_g of carbohydrate a day"));
  });

  it("is for each kilogram where the body mass is not known", () => {
    expect(sayAmountRange(grams(0.25, 0.3, true))).toBe(nb("0.25–0.3_g for each kg of your body mass"));
  });
});

it("a step has an amount, or a length, or neither", () => {
  expect(sayExtent({ amount: grams(64, 77), minutes: 3 })).toBe(nb("65–75_g"));
  expect(sayExtent({ minutes: 10 })).toBe(nb("10_min"));
  expect(sayExtent({})).toBeUndefined();
});

it("work of the same day is sets by reps at a load", () => {
  const work = { movement: "clean-pull", name: "clean pull", plural: "clean pulls", sets: 4, reps: 3 };
  expect(sayWork(work, "kg")).toBe(nb("4_×_3 clean pulls"));
  const load = { mass: { value: 50, unit: "kg" as const }, kilograms: 50, pieces: 1 };
  expect(sayWork({ ...work, reps: 1, load }, "kg")).toBe(nb("4_×_1 clean pull at 50_kg"));
});

it("a piece says how long and how hard", () => {
  expect(sayPieceExtent({ minutes: 15, effort: 5 })).toBe(nb("15_min, effort 5 of_10"));
  expect(sayPieceExtent({})).toBe("");
});

it("the day says what it is for and the two reasons that weigh most", () => {
  expect(sayDay({ kind: "session", because: [{ what: "training", value: 15 }] })).toBe(
    nb("In this order, if your check is good: you train 15_h a week."),
  );
  expect(sayDay({ kind: "session", because: [{ what: "training-guessed", value: 9 }] })).toBe(
    nb(
      "In this order, if your check is good: about 9_h of training a week is usual at your level. If you train less, walk instead.",
    ),
  );
  expect(sayDay({ kind: "rest", because: [{ what: "ill" }, { what: "new" }, { what: "young" }] })).toBe(
    "Rest comes first, because you have been ill and you are new to this. Walk, eat and sleep; that is all of it.",
  );
});

it("two pieces are named to leave out first", () => {
  const piece = (id: string) => ({ id, title: id, say: "", check: "good" as const, work: [], source: "" });
  const pieces = ["a", "b", "c"].map(piece);
  expect(sayLeaveOut({ pieces, leaveOutFirst: ["c", "a", "b"] })).toBe(
    "Short of time? Leave out “c”, then “a”.",
  );
  expect(sayLeaveOut({ pieces, leaveOutFirst: [] })).toBeUndefined();
});

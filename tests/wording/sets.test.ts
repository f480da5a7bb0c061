import { expect, it } from "vitest";
import { sayHow, setsAsWritten, saySameSets, saySets, saySetsAndRests } from "../../src/wording/sets.ts";

const sets = (rests: readonly number[], ...amounts: readonly number[]) =>
  amounts.map((amount, index) => ({ amount, restAfter: rests[index] ?? 0 }));

it("sets stand in order; four and more equal ones as a product", () => {
  expect(saySets(sets([6], 7, 5))).toBe("7-5");
  expect(saySets(sets([6, 6, 6], 10, 10, 10, 10))).toBe("4×10");
  expect(saySets(sets([6, 6], 4, 4, 4))).toBe("4-4-4");
  expect(saySets(sets([], 16))).toBe("16");
});

it.each([
  [[12, 8, 6, 6, 6, 6], "12-8, 4×6"],
  [[3, 3, 3, 3, 2, 2, 2], "4×3, 3×2"],
  [[2, 2, 2, 1, 1], "3×2, 1-1"],
  [[8, 6, 4, 2], "8-6-4-2"],
  [[5, 5, 5], "5-5-5"],
])("sets of %j are said %s", (amounts, text) => {
  expect(saySets(sets([], ...amounts))).toBe(text);
});

it.each([
  [[6, 6], [5, 4, 3], "5-4-3, rest 6_s each"],
  // Nobody counts a second more or less.
  [[12.4, 12.6, 13.2], [8, 7, 6, 5], "8-7-6-5, rest 13_s each"],
  [[10, 6], [8, 4, 3], "8-4-3, rest 10_s then 6_s"],
  [[6, 9, 14], [8, 6, 4, 2], "8-6-4-2, rest 6_s to 14_s"],
])("rests of %j between sets are said once where alike", (rests, amounts, text) => {
  expect(saySetsAndRests(sets(rests, ...amounts))).toBe(text.replaceAll("_", "\u00a0"));
});

it("visits broken up alike are said together, with the rests of all of them", () => {
  expect(saySameSets([sets([9], 8, 7), sets([10], 8, 7)])).toBe("8-7, rest 10\u00a0s");
  expect(saySameSets([sets([9], 8, 7), sets([14], 8, 7)])).toBe("8-7, rest 9\u00a0s to 14\u00a0s");
});

it("a visit that is never put down has no sets to say", () => {
  expect(sayHow({ sets: sets([], 400), unit: "metres" })).toBeUndefined();
  expect(sayHow({ sets: sets([], 16), unit: "reps" })).toBe("unbroken");
  expect(sayHow({ sets: sets([8], 25, 25), unit: "metres" })).toBe("25-25, rest 8\u00a0s");
});

it("sets with rests read as a fragment", () => {
  expect(saySetsAndRests(sets([6], 7, 5))).toBe("7-5, rest 6\u00a0s");
  expect(saySetsAndRests(sets([6, 6], 5, 4, 3))).toBe("5-4-3, rest 6\u00a0s each");
  expect(saySetsAndRests(sets([], 16))).toBe("unbroken");
});

it("sets of a way in feet are said in whole feet that add up to it", () => {
  // 10 + 8 + 12.48 m = 30.48 m = 100 ft: 32.8 + 26.2 + 40.9 ft.
  const row = { sets: sets([], 10, 8, 12.48), writtenIn: "ft" as const };
  expect(setsAsWritten(row).map(({ amount }) => amount)).toEqual([33, 26, 41]);
});

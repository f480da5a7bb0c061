import { expect, it } from "vitest";
import { saySetRests, saySets, saySetsAndRests } from "../../src/wording/sets.ts";

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

it("equal rests are said once, different ones in order, none not at all", () => {
  expect(saySetRests(sets([6, 6], 5, 4, 3))).toBe("rest 6\u00a0s");
  expect(saySetRests(sets([10, 6], 8, 4, 3))).toBe("rest 10\u00a0s then 6\u00a0s");
  expect(saySetRests(sets([], 16))).toBeUndefined();
});

it("sets with rests read as a fragment", () => {
  expect(saySetsAndRests(sets([6], 7, 5))).toBe("7-5, rest 6\u00a0s");
  expect(saySetsAndRests(sets([6, 6], 5, 4, 3))).toBe("5-4-3, rest 6\u00a0s each");
  expect(saySetsAndRests(sets([], 16))).toBe("unbroken");
});

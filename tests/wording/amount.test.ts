import { expect, it } from "vitest";
import { sayAmount, sayRow } from "../../src/wording/amount.ts";

it.each([
  [{ amount: 12, unit: "reps" }, "12"],
  [{ amount: 30, unit: "calories" }, "30\u00a0cal"],
  [{ amount: 500, unit: "metres" }, "500\u00a0m"],
  [{ amount: 40, unit: "seconds" }, "40\u00a0s"],
] as const)("%j is said %s", (amount, text) => {
  expect(sayAmount(amount)).toBe(text);
});

it("a row says what is planned of what is asked for, and the sides", () => {
  expect(sayRow({ amount: 36, prescribed: 40, unit: "reps", name: "burpees" })).toBe("36 of 40 burpees");
  expect(sayRow({ amount: 18, unit: "reps", name: "deadlift", plural: "deadlifts" })).toBe("18 deadlifts");
  expect(sayRow({ amount: 1, unit: "reps", name: "deadlift", plural: "deadlifts" })).toBe("1 deadlift");
  expect(sayRow({ amount: 500, unit: "metres", name: "row", plural: "rows" })).toBe("500\u00a0m row");
  expect(sayRow({ amount: 10, unit: "reps", name: "lunges", sides: "each" })).toBe("10 lunges (5 each side)");
});

it("a distance is said in the unit it is written in", () => {
  expect(sayAmount({ amount: 60.96, unit: "metres", writtenIn: "ft" })).toBe("200\u00a0ft");
  expect(sayAmount({ amount: 1609.344, unit: "metres", writtenIn: "mile" })).toBe("1\u00a0mile");
  expect(sayAmount({ amount: 1500, unit: "metres", writtenIn: "km" })).toBe("1.5\u00a0km");
});

import { expect, it } from "vitest";
import { sayAfterMiss } from "../../src/wording/after-miss.ts";

const nb = (text: string): string => text.replaceAll("_", "\u00a0");
const load = {
  mass: { value: 60, unit: "kg" },
  kilograms: 60,
  pieces: 1,
  perSide: [{ plate: { value: 20, unit: "kg" }, count: 1 }],
} as const;
const lift = { kind: "lift", load, direction: "lower", restBefore: 110, clock: 200, chance: 0.83 } as const;

it("after a miss the next load and its clock are said in few words", () => {
  expect(sayAfterMiss(lift, 510)).toBe(nb("60_kg at 11:50"));
  expect(sayAfterMiss({ ...lift, direction: "same" }, 510)).toBe(nb("again at 11:50"));
});

it("after the last attempt there is nothing more to do", () => {
  expect(sayAfterMiss({ kind: "stop" }, 0)).toBe("done");
});

import { expect, it } from "vitest";
import { forEverybody } from "../../src/components/for-everybody.ts";

const stop = {
  id: "stop",
  title: "Stop",
  say: "Stop for chest pain.",
  weight: "stop",
  onSheet: true,
} as const;
const long = {
  ...stop,
  id: "long",
  say: "You will be working when the clock ends.",
  weight: "care",
} as const;
const plan = { cautions: [stop], setUp: [{ kind: "film", monitor: false } as const], standards: [] };

it("what one band alone is told is told to nobody else", () => {
  const slow = {
    ...plan,
    cautions: [long, stop],
    setUp: [{ kind: "plates", fixed: false } as const, ...plan.setUp],
  };
  expect(forEverybody([slow, plan])).toEqual(plan);
  expect(forEverybody([plan, slow])).toEqual(plan);
});

it("of no band nothing is said", () => {
  expect(forEverybody([])).toEqual({ cautions: [], setUp: [], standards: [] });
});

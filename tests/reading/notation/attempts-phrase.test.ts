import { expect, it } from "vitest";
import { readAttemptBounds } from "../../../src/reading/notation/attempts-phrase.ts";
import type { NotationFault } from "../../../src/reading/notation/notation-fault.ts";

const read = (text: string, isLifted = true) => {
  const faults: NotationFault[] = [];
  const source = { text, path: ["attempts"], isName: false };
  const bounds = readAttemptBounds(source, ["men", "women"], isLifted, faults);
  return faults.length > 0 ? faults.map(({ found, problem }) => `${found}: ${problem}`) : bounds;
};

it("what is set for attempts holds for each division", () => {
  expect(
    read("rising, open with 80/52,5 kg, up by 5 kg, rest at least 1:30, first lift after 2:00, at most 4"),
  ).toEqual({
    men: {
      rising: true,
      opener: { value: 80, unit: "kg" },
      jump: { value: 5, unit: "kg" },
      smallestRest: 90,
      firstRest: 120,
      attempts: 4,
    },
    women: {
      rising: true,
      opener: { value: 52.5, unit: "kg" },
      jump: { value: 5, unit: "kg" },
      smallestRest: 90,
      firstRest: 120,
      attempts: 4,
    },
  });
  expect(read("open at 185 lb")).toMatchObject({ women: { opener: { value: 185, unit: "lb" } } });
  expect(read("")).toBeUndefined();
});

it("what sets nothing is told once, with its words", () => {
  expect(read("rising, fast")).toEqual(["fast: this sets nothing for the attempts"]);
  expect(read("open with 80")).toEqual(["open with 80: this sets nothing for the attempts"]);
  expect(read("open with 80/60/40 kg")).toHaveLength(1);
  expect(read("at most 0")).toHaveLength(1);
  expect(read("first lift after a while")).toEqual([
    "first lift after a while: this sets nothing for the attempts",
  ]);
});

it("work that is not lifted for load has no attempts", () => {
  expect(read("rising", false)).toEqual(["rising: only a part that is lifted for load has attempts"]);
});

it("fixed steps need a load to open with", () => {
  expect(read("up by 5 kg")).toEqual(["up by 5 kg: fixed steps need a load to open with"]);
});

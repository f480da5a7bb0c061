import { expect, it } from "vitest";
import { sayLearned } from "../../src/wording/learned.ts";

it("what results taught is told in the order of its reach", () => {
  const said = sayLearned({
    results: 2,
    shared: -0.06,
    movements: [{ movement: "double-under", name: "double-under", share: -0.2 }],
    lifts: [{ movement: "snatch", name: "snatch", load: { value: 72.5, unit: "kg" }, reps: 1 }],
    startsTooFast: true,
  }).map((line) => line.replaceAll("\u00a0", " "));
  expect(said).toEqual([
    "Your 2 logged results say you are 6% faster than was known of you; paces follow where no test of yours says better.",
    "Beside that your double-under goes 20% faster than was known, from the clocks you logged.",
    "You made 72.5 kg in a competition: the snatch counts on it.",
    "You began too fast more than once: hold the first round to its ceiling, whatever it feels like.",
  ]);
});

it("one result is one", () => {
  expect(sayLearned({ results: 1, shared: 0.05, movements: [], lifts: [], startsTooFast: false })[0]).toMatch(
    /^Your 1.logged result says you are 5% slower/,
  );
});

import { expect, it } from "vitest";
import { mostRounds } from "../../../src/compute/pacing/most-rounds.ts";
import { readWorkout } from "../../../src/reading/read-workout.ts";
import { contentMovements } from "../../support/content-movements.ts";

const most = (entries: string): number => {
  const path = "content/workouts/a.mdx";
  const read = readWorkout({ path, text: `---\ntitle: A\n${entries}\n---\n` }, contentMovements);
  if (!read.ok) throw new Error(read.faults.map(({ problem }) => problem).join());
  const [part] = read.value.parts;
  if (!part) throw new Error("no part");
  return mostRounds(read.value, part, contentMovements);
};

it("counts the rounds of the division that has most of them, without what stands beside them", () => {
  expect(most("for time:\nwork:\n  - 400 m run\n  - 5/4 rounds:\n      - 10 burpee")).toBe(5);
  expect(most("for time:\nwork:\n  - 21-15-9:\n      - burpee\n      - pull-up")).toBe(3);
  expect(most("for time:\nwork:\n  - 40 burpee")).toBe(1);
});

it("is more than anybody does where rounds have no end, and no bound where work is cut up freely", () => {
  const rounds = most("amrap: 6:00\nwork:\n  - 10 burpee\n  - 10 pull-up");
  expect(rounds).toBeGreaterThan(10);
  expect(rounds).toBeLessThan(99);
  expect(most("for time:\nwork:\n  - any order:\n      - 40 burpee\n      - 30 pull-up")).toBe(Infinity);
});

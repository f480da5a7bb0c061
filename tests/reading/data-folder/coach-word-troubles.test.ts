import { expect, it } from "vitest";
import { sayFaults } from "../../../src/reading/say-fault.ts";
import { usableSources } from "../../../src/site/load-data.ts";
import { MOVEMENTS } from "../../fuzz/base-movements.ts";

function told(work: string, word: string): string {
  const text = `---\ntitle: Weir\n${work}\ncoach sets:\n  - {for: everyone, ${word}}\n---\n`;
  const own = [...MOVEMENTS, { path: "content/workouts/weir.mdx", text }];
  const { faults } = usableSources({ builtIn: [], own, faults: [] }, "2026-11-27");
  return sayFaults(faults).split("\n").slice(2).join("\n");
}
const ROUNDS = "for time:\nwork:\n  - 3 rounds:\n      - 13 cal row\n      - 9 thruster at 40/30 kg";

it("a word about lifts is told where nothing is lifted for load", () => {
  expect(told(ROUNDS, "heaviest: 60 kg")).toBe(`content/workouts/weir.mdx:9:31: Fault
  found    heaviest
  wrong    nothing is lifted for load in this workout
  allowed  \`target\`, \`first round\`, \`sets\`, \`rest between sets\`, \`pace\`, \`version\`, \`warm up\`, \`say\`
  to do    Leave it out.`);
  expect(told("max load: 6:00\nwork: [1 clean and jerk]", "heaviest: 60 kg")).toBe("");
});

it("a movement is called by its name", () => {
  expect(told(ROUNDS, "sets: {pull-up: 5}")).toBe(`content/workouts/weir.mdx:9:27: Fault
  found    pull-up
  wrong    no line of this workout has this movement
  allowed  row, thruster
  to do    Write a movement of the workout.`);
});

it("a part that is not there is told as such", () => {
  expect(told(ROUNDS, "first round: 2:00 in part z")).toBe(`content/workouts/weir.mdx:9:34: Fault
  found    in part z
  wrong    no part with rounds has this name
  allowed  in part a
  to do    Write one of them behind the time.`);
});

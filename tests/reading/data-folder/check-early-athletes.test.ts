import { expect, it } from "vitest";
import { checkEarlyAthletes } from "../../../src/reading/data-folder/check-early-athletes.ts";
import { readWorkout } from "../../../src/reading/read-workout.ts";
import { sayFault } from "../../../src/reading/say-fault.ts";
import { contentMovements } from "../../support/content-movements.ts";

const file = {
  path: "content/workouts/weir.mdx",
  text: `---
title: Weir
for time:
work: [10 burpee, 10 sit-up]
early:
  - athlete: Anna
    time: 1:20
---
`,
};

function told(athletes: readonly string[] | undefined): readonly string[] {
  const read = readWorkout(file, contentMovements);
  if (!read.ok) throw new Error(read.faults.map(sayFault).join("\n"));
  return checkEarlyAthletes(read.value, file, athletes).map(sayFault);
}

it("an athlete without a file is told with the place and the nearest name", () => {
  expect(told(["ana", "bo"])).toEqual([
    [
      "content/workouts/weir.mdx:6:14: Fault",
      "  found    anna",
      "  wrong    no athlete has a file of this name",
      "  allowed  the name of a file in athletes/, without its ending",
      "  nearest  ana",
      "  to do    Write `ana`.",
    ].join("\n"),
  ]);
});

it("an athlete with a file, however it is written, is no fault; nor is anybody where no athlete is read", () => {
  expect(told(["anna"])).toEqual([]);
  expect(told(undefined)).toEqual([]);
});

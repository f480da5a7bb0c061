import { expect, it } from "vitest";
import { unplannable } from "../../src/compute/unplannable.ts";
import { sayFaults } from "../../src/reading/say-fault.ts";
import { faultsOfPlans } from "../../src/cli/faults-of-plans.ts";
import { usableSources } from "../../src/site/load-data.ts";
import { MOVEMENTS } from "../fuzz/base-movements.ts";

const DAY = "2026-11-27";

/** A workout of one line, with a movement that is counted in metres and reps though nothing says how they go together. */
function dataOf(line: string) {
  const own = MOVEMENTS.map((file) =>
    file.path.endsWith("pull-up.mdx")
      ? { ...file, text: file.text.replace("counts: [reps]", "counts: [reps, metres]") }
      : file,
  );
  const text = `---\ntitle: Weir\nfor time:\nwork:\n  - ${line}\n---\n`;
  const { value, faults } = usableSources(
    { builtIn: [], own: [...own, { path: "content/workouts/weir.mdx", text }], faults: [] },
    DAY,
  );
  if (!value) throw new Error(sayFaults(faults));
  return value;
}

it("what can be planned for everybody is not told", () => {
  expect(unplannable(dataOf("20 pull-up"), DAY)).toEqual([]);
});

it("what the library knows no pace for is told for each division, and as one fault", () => {
  const data = dataOf("20 m pull-up");
  expect(
    unplannable(data, DAY).map(({ division, problem }) => [division, "part" in problem && problem.part]),
  ).toEqual([
    ["men", "a"],
    ["women", "a"],
  ]);
  expect(sayFaults(faultsOfPlans(data, DAY))).toBe(`1 fault in 1 file.

content/workouts/weir.mdx:2:1: Fault
  found    Weir: men, women
  wrong    part a would not be planned: No pace of the movement "pull-up" is known in metres: it is counted in reps, and nothing says how reps become metres.
  to do    Write the line in another unit, or say in the movement's file what is missing.`);
});

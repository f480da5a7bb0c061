import { expect, it } from "vitest";
import { nameFor, pluralOf } from "../../src/wording/movement-words.ts";
import { samplePlans } from "../support/sample-plan.ts";

const pacing = samplePlans.forTimeThenLift.parts[0]?.pacing;
if (!pacing) throw new Error("the sample has pacing");

it("several reps have a plural; one rep, metres and names without a plural have none", () => {
  const deadlift = { name: "deadlift", plural: "deadlifts", unit: "reps" } as const;
  expect([nameFor(deadlift, 2), nameFor(deadlift, 1)]).toEqual(["deadlifts", "deadlift"]);
  expect(nameFor({ name: "run", plural: "runs", unit: "metres" }, 400)).toBe("run");
  expect(nameFor({ name: "pull-ups", unit: "reps" }, 5)).toBe("pull-ups");
});

it("a movement of the part is found by its name, another stays as it is", () => {
  const rows = pacing.rows.map((row) => ({ ...row, name: "swing", plural: "swings" }));
  expect([pluralOf({ ...pacing, rows }, "swing"), pluralOf(pacing, "rope climb")]).toEqual([
    "swings",
    "rope climb",
  ]);
});

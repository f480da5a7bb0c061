import { describe, expect, it } from "vitest";
import { ladderFinishing } from "../../../src/compute/lifting/finish-table.ts";
import { taskAgain } from "../../../src/compute/lifting/lift-again.ts";
import type { LiftingInput } from "../../../src/compute/lifting/lifting-input.ts";
import { planLadder } from "../../../src/compute/lifting/plan-ladder.ts";
import { planLifting } from "../../../src/compute/lifting/plan-lifting.ts";
import { type LiftAgain, liftAgainField } from "../../../src/models/plan/lift-again.ts";
import type { Lifting } from "../../../src/models/plan/lifting.ts";
import { seconds } from "../../../src/models/quantity.ts";
import { liftResult, sampleAthlete } from "../../support/sample-lifter.ts";
import { liftingInput, liftPart } from "../../support/sample-lifting.ts";

/** A lift after nine minutes of legs, in what is left of sixteen. */
const afterWork = (best: number, more: Partial<LiftingInput> = {}): LiftingInput =>
  liftingInput({
    part: liftPart(
      { kind: "max-load", length: { kind: "until", time: seconds(960) }, order: "as-written" },
      { start: { kind: "after", part: "a", rest: seconds(0), restIs: "exactly" } },
    ),
    opens: { mean: 560, spread: 40 },
    before: { work: [{ muscle: "legs", intensity: 0.9, minutes: 9 }], secondsSince: 0 },
    athlete: sampleAthlete([liftResult("clean-and-jerk", best)]),
    ...more,
  });

function planned(input: LiftingInput): { readonly lifting: Lifting; readonly again: LiftAgain } {
  const made = planLifting(input);
  if (!made.ok) throw new Error(made.missing[0]?.kind);
  const again = made.value.lifts[0]?.again;
  if (!again) throw new Error("nothing to plan again from");
  // As it reaches the device: written, locked, opened and read.
  return { lifting: made.value, again: liftAgainField.parse(JSON.parse(JSON.stringify(again))) };
}

describe("a lift planned again from its numbers", () => {
  it.each([45, 62.5, 92.5, 100, 147.5])("has the attempts of the build, to the digit: best %s kg", (best) => {
    for (const input of [
      afterWork(best),
      liftingInput({ athlete: sampleAthlete([liftResult("clean-and-jerk", best)]) }),
    ]) {
      const { lifting, again } = planned(input);
      const { task, window, constants } = taskAgain(again);
      const { chosen, problem } = planLadder(task, window, constants);
      const attempts = lifting.lifts[0]?.attempts ?? [];
      expect(chosen.loads).toEqual(attempts.map(({ load }) => load.kilograms));
      expect(chosen.rungs.map(({ chance }) => chance)).toEqual(attempts.map(({ chance }) => chance));
      expect(problem.slots.slice(0, attempts.length).map(({ start }) => start)).toEqual(
        attempts.map(({ clock }) => clock),
      );
    }
  });

  it("agrees with each row of the table of finishes", () => {
    const { lifting, again } = planned(afterWork(100));
    const { task, window, constants } = taskAgain(again);
    const expected = planLadder(task, window, constants);
    expect(lifting.finishTable.length).toBeGreaterThan(1);
    for (const { finish, loads } of lifting.finishTable) {
      const ladder = ladderFinishing(task, window, expected, finish - 560, constants);
      expect([finish, ladder?.chosen.loads ?? []]).toEqual([finish, loads.map(({ value }) => value)]);
    }
  });

  it("opens no heavier where the work before was harder than planned, and no lighter where it was easier", () => {
    const { again } = planned(afterWork(100));
    const opener = (felt: "easier" | "as-planned" | "harder"): number => {
      const { task, window, constants } = taskAgain(again, felt);
      return planLadder(task, window, constants).chosen.loads[0];
    };
    expect(opener("harder")).toBeLessThan(opener("easier"));
    expect(opener("harder")).toBeLessThanOrEqual(opener("as-planned"));
    expect(opener("easier")).toBeGreaterThanOrEqual(opener("as-planned"));
  });

  it("takes nothing along of the athlete but the lift", () => {
    const text = JSON.stringify(planned(afterWork(100)).again);
    expect(text).not.toMatch(/ada|female|squat/i);
    expect(text.length).toBeLessThan(8000);
  });
});

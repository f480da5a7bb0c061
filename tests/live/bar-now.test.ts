import { describe, expect, it } from "vitest";
import { planLifting } from "../../src/compute/lifting/plan-lifting.ts";
import { barNow } from "../../src/live/bar-now.ts";
import { BODY_FEELINGS, type BodyFeeling } from "../../src/live/day-event.ts";
import type { LiftAgain } from "../../src/models/plan/lift-again.ts";
import { seconds } from "../../src/models/quantity.ts";
import { liftResult, sampleAthlete } from "../support/sample-lifter.ts";
import { liftingInput, liftPart } from "../support/sample-lifting.ts";

/** A lift after nine minutes of legs, in what is left of sixteen. */
function againOf(best: number): LiftAgain {
  const made = planLifting(
    liftingInput({
      part: liftPart(
        { kind: "max-load", length: { kind: "until", time: seconds(960) }, order: "as-written" },
        { start: { kind: "after", part: "a", rest: seconds(0), restIs: "exactly" } },
      ),
      opens: { mean: 560, spread: 40 },
      before: { work: [{ muscle: "legs", intensity: 0.9, minutes: 9 }], secondsSince: 0 },
      athlete: sampleAthlete([liftResult("clean-and-jerk", best)]),
    }),
  );
  const again = made.ok ? made.value.lifts[0]?.again : undefined;
  if (!again) throw new Error("nothing to plan again from");
  return again;
}

/** All loads of the day while everything is made, kilograms. */
function loadsOf(again: LiftAgain, felt: BodyFeeling, late: number): readonly number[] {
  const now = barNow(again, { late, felt, done: [], now: 0 });
  return now.kind === "stop"
    ? []
    : [now.load, ...now.then.map(({ load }) => load)].map((one) => one.kilograms);
}

const jumps = (loads: readonly number[]): readonly number[] =>
  loads.slice(1).map((load, at) => load - (loads[at] ?? 0));

describe("the lifts of the day after work that felt otherwise than planned", () => {
  it.each([45, 62.5, 85, 97.5, 100, 122.5, 147.5])(
    "are no heavier and jump no further where it was harder, no less where it was easier: best %s kg",
    (best) => {
      const again = againOf(best);
      for (const late of [-30, 0, 40]) {
        const [easier = [], planned = [], harder = []] = BODY_FEELINGS.map((felt) =>
          loadsOf(again, felt, late),
        );
        expect(harder.length).toBeLessThanOrEqual(planned.length);
        for (const [less, more] of [
          [harder, planned],
          [planned, easier],
        ] as const) {
          for (const [at, load] of less.entries()) expect(load).toBeLessThanOrEqual(more[at] ?? Infinity);
          const most = jumps(more);
          for (const [at, jump] of jumps(less).entries())
            expect(jump).toBeLessThanOrEqual((most[at] ?? Infinity) + 1e-6);
        }
      }
    },
  );
});

import { describe, expect, it } from "vitest";
import { attemptConstants } from "../../../src/compute/lifting/attempt-constants.ts";
import { windowedLiftsOf } from "../../../src/compute/lifting/lift-line.ts";
import { withIron } from "../../../src/compute/lifting/lifting-input.ts";
import { planRounds } from "../../../src/compute/lifting/round-lifting.ts";
import type { Lift } from "../../../src/models/plan/lifting.ts";
import { kiloGym } from "../../support/sample-gym.ts";
import { liftResult, sampleAthlete } from "../../support/sample-lifter.ts";
import { cleanAndJerk, liftingInput, liftPart, roundsCourse } from "../../support/sample-lifting.ts";

/** One clean and jerk every two minutes, the heaviest counts, with plates that step by 2.5 kg. */
function lifted(best: number, rounds: number): Lift {
  const course = roundsCourse(cleanAndJerk, 1, rounds, 120);
  const part = liftPart({ kind: "on-the-clock" }, { score: { kind: "load", restCounts: true } });
  const gym = { ...kiloGym, plates: kiloGym.plates.filter(({ plate }) => plate.value !== 0.5) };
  const athlete = sampleAthlete([liftResult("clean-and-jerk", best)]);
  const input = withIron(liftingInput({ course, part, gym, athlete }));
  const plan = planRounds(input, windowedLiftsOf(course), attemptConstants());
  if (!("lifts" in plan) || !plan.lifts[0]) throw new Error("not planned");
  return plan.lifts[0];
}
const loadsOf = ({ attempts }: Lift): readonly number[] => attempts.map(({ load }) => load.kilograms);

// Trade, written down first for a best of 130 kg in ten rounds: from 70 to 75 % by steps of about 5 kg to an opener of about 90 %,
// then 5 kg and less; the best itself two or three rounds before the end.
describe("a lift in every one of many rounds", () => {
  it("uses them all, from a build of even steps to a ladder over the last six", () => {
    const loads = loadsOf(lifted(130, 10));
    expect(loads).toHaveLength(10);
    expect(loads[0]).toBeGreaterThanOrEqual(0.68 * 130);
    expect(loads[0]).toBeLessThanOrEqual(0.76 * 130);
    for (const [at, load] of loads.slice(0, 5).entries()) {
      const step = (loads[at + 1] ?? 0) - load;
      expect(step).toBeGreaterThanOrEqual(2.5);
      expect(step).toBeLessThanOrEqual(7.5);
    }
    expect(loads[4]).toBeGreaterThanOrEqual(0.87 * 130);
    expect(loads[4]).toBeLessThanOrEqual(0.93 * 130);
    expect(loads[7]).toBe(130);
  });

  it("repeats a light load where plates allow no step, and ends with the last round", () => {
    const lift = lifted(45, 12);
    const loads = loadsOf(lift);
    expect(loads).toHaveLength(12);
    expect(lift.attempts.at(-1)?.clock).toBe(11 * 120);
    for (const [at, load] of loads.entries()) expect(load).toBeGreaterThanOrEqual(loads[at - 1] ?? 0);
  });

  it("of few rounds has no build: each is a row of the ladder", () => {
    const [opener, ...others] = loadsOf(lifted(130, 5));
    expect(others).toHaveLength(4);
    expect(opener).toBeGreaterThanOrEqual(0.87 * 130);
  });

  it("costs nothing for the light lifts of a build", () => {
    const chance = ({ attempts }: Lift, load: number): number =>
      attempts.find((one) => one.load.kilograms === load)?.chance ?? NaN;
    // The same opener after four light lifts as after none.
    const [few, many] = [lifted(130, 6), lifted(130, 10)];
    const opener = loadsOf(few)[0] ?? 0;
    expect(loadsOf(many)).toContain(opener);
    expect(chance(many, opener)).toBeGreaterThan(0.88);
  });
});

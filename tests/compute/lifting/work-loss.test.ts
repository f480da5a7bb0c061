import { describe, expect, it } from "vitest";
import { attemptConstants } from "../../../src/compute/lifting/attempt-constants.ts";
import { shareStillLost, workLoss, type MuscleWork } from "../../../src/compute/lifting/work-loss.ts";

const constants = attemptConstants();
const squat = { taxes: { legs: 1, "hips-and-back": 0.5, lungs: 0.4 } };
const legs: readonly MuscleWork[] = [{ muscle: "legs", intensity: 1, minutes: 9 }];
const arms: readonly MuscleWork[] = [{ muscle: "pull", intensity: 1, minutes: 9 }];
const after = (work: readonly MuscleWork[], secondsSince = 0) =>
  workLoss(squat, { work, secondsSince }, "usual", constants);

describe("strength lost to work before", () => {
  it("is none without any", () => {
    expect(workLoss(squat, undefined, "usual", constants).at(0)).toBe(0);
  });

  it("of the same muscles is more than of others", () => {
    expect(after(legs).at(60)).toBeGreaterThan(after(arms).at(60));
    expect(after(arms).at(60)).toBeGreaterThan(0);
  });

  it("by hand: legs alone of legs and half the hips, nine hard minutes, at the very end", () => {
    // Effort 1 x (1 - e^(-9/4)) = 0.8946; overlap 0.8946 / 1.5 = 0.5964.
    // 0.19 x (0.4 x 0.8946 + 0.6 x 0.5964) = 0.1360
    expect(after(legs).at(0)).toBeCloseTo(0.136, 3);
    expect(after(legs).overlap).toBeCloseTo(0.5964, 3);
  });

  it("grows with intensity and minutes", () => {
    const easier = after([{ muscle: "legs", intensity: 0.5, minutes: 9 }]);
    const shorter = after([{ muscle: "legs", intensity: 1, minutes: 2 }]);
    expect(easier.at(0)).toBeLessThan(after(legs).at(0));
    expect(shorter.at(0)).toBeLessThan(after(legs).at(0));
  });

  it("is regained with time, rest before the window counted, slower after the same muscles", () => {
    const loss = after(legs);
    expect([0, 60, 300, 1200].map(loss.at)).toEqual(
      [0, 60, 300, 1200].map(loss.at).toSorted((a, b) => b - a),
    );
    expect(after(legs, 120).at(0)).toBe(loss.at(120));
    expect(loss.at(900) / loss.at(0)).toBeGreaterThan(after(arms).at(900) / after(arms).at(0));
  });

  it("is regained sooner by those who recover fast", () => {
    const lossOf = (recovery: "slow" | "usual" | "fast"): number =>
      workLoss(squat, { work: legs, secondsSince: 0 }, recovery, constants).at(180);
    expect(lossOf("fast")).toBeLessThan(lossOf("usual"));
    expect(lossOf("usual")).toBeLessThan(lossOf("slow"));
  });

  it("lies where studies of jumps, bar speed and force put it: 5 to 11 % in the first minutes, 0 to 7 % at 15 min", () => {
    // Planning inference from Felippe 2020, Garcia-Fernandez 2021 and Mate-Munoz 2022 (abstracts); no lift was measured.
    const whole: readonly MuscleWork[] = [
      { muscle: "legs", intensity: 1, minutes: 9 },
      { muscle: "hips-and-back", intensity: 1, minutes: 9 },
    ];
    for (const minute of [1, 2, 3]) {
      expect(after(whole).at(60 * minute)).toBeGreaterThan(0.05);
      expect(after(whole).at(60 * minute)).toBeLessThan(0.11);
    }
    expect(after(whole).at(900)).toBeLessThan(0.07);
    expect(after(arms).at(1200)).toBeLessThan(0.01);
  });
});

describe("the share still lost", () => {
  // Phosphocreatine after a 30-s sprint: 19.7 % left at the end, 65.0 % after 90 s, 85.5 % after 360 s
  // (Bogdanis et al. 1995, abstract), so 0.436 and 0.181 of what was lost are still missing.
  it.each([
    [90, (100 - 65) / (100 - 19.7)],
    [360, (100 - 85.5) / (100 - 19.7)],
  ])("after %i s is that of phosphocreatine within 3 points", (seconds, missing) => {
    const { fastSeconds, slowSeconds, fastShare } = constants;
    expect(Math.abs(shareStillLost(seconds, fastSeconds, slowSeconds, fastShare) - missing)).toBeLessThan(
      0.03,
    );
  });
});

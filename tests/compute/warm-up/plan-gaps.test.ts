import { describe, expect, it } from "vitest";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { chooseBar } from "../../../src/compute/lifting/plates.ts";
import { WARM_UP_CONSTANTS } from "../../../src/compute/warm-up/constants.ts";
import { planGaps } from "../../../src/compute/warm-up/plan-gaps.ts";
import { gapField } from "../../../src/models/plan/around.ts";
import { kiloGym } from "../../support/sample-gym.ts";
import { samplePlans } from "../../support/sample-plan.ts";

const numbers = withOverrides(WARM_UP_CONSTANTS);
const [work, lifted] = samplePlans.forTimeThenLift.parts;
if (!work?.pacing || !lifted?.lifting) throw new Error("the sample is work, then a lift");
const [first, second, worked] = [work, lifted, work.pacing.duration];

/** The sample with its lift so many seconds after the work, or with the work once more in place of the lift. */
function gapsAfter(rest: number, again = false, noMaxLift = false) {
  const start = { kind: "clock", clock: worked + rest } as const;
  const next = again ? { ...first, name: "b", start } : { ...second, start };
  return planGaps(
    { parts: [first, next], gym: kiloGym, bar: chooseBar(kiloGym, "male"), withholding: { noMaxLift } },
    numbers,
  );
}

describe("a long gap between two parts", () => {
  it("gets a plan from ten minutes on, and none below", () => {
    expect(gapsAfter(480)).toEqual([]);
    expect(gapsAfter(1800)).toHaveLength(1);
  });

  it("is to come down, keep warm, move again, build again and rest, without a second left over", () => {
    const [gap] = gapsAfter(1800);
    expect(gapField.safeParse(gap).success).toBe(true);
    expect(gap?.steps.map(({ kind }) => kind)).toEqual([
      "come-down",
      "keep-warm",
      "move-again",
      "build",
      "rest",
    ]);
    let before = (gap?.at ?? 0) - (gap?.from ?? 0);
    for (const step of gap?.steps ?? []) {
      expect(step.before).toBeCloseTo(before, 6);
      before -= step.lasts;
    }
    expect(before).toBeCloseTo(0, 6);
  });

  it("is built in loads that rise and stay under the opener, the last set two and a half minutes before it", () => {
    const [gap] = gapsAfter(1800);
    const sets = gap?.steps.find(({ kind }) => kind === "build")?.sets ?? [];
    const loads = sets.map(({ load }) => load.kilograms);
    expect(loads).toEqual([...loads].sort((a, b) => a - b));
    expect(Math.max(...loads)).toBeLessThan(second.lifting?.lifts[0]?.attempts[0]?.load.kilograms ?? 0);
    expect(sets.at(-1)?.before).toBe(150);
  });

  it("before paced work is rehearsed at its pace; where no lift is allowed, none is built", () => {
    const [paced] = gapsAfter(1800, true);
    expect(paced?.lift).toBeUndefined();
    expect(paced?.steps.map(({ kind }) => kind).slice(-2)).toEqual(["rehearse", "rest"]);
    const [without] = gapsAfter(1800, false, true);
    expect(without?.steps.some(({ kind }) => kind === "build")).toBe(false);
  });
});

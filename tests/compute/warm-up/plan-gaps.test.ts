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

describe("a long rest inside a part", () => {
  const pacing = first.pacing as NonNullable<typeof first.pacing>;
  const [row] = pacing.rows;
  if (!row) throw new Error("the sample has rows");
  /** Work of a minute, so many seconds of rest, and work again, three times in all. */
  const rested = (rest: number) => {
    const rows = [0, 1, 2].flatMap((round) => {
      const start = round * (60 + rest);
      const work = { ...row, start, end: start + 60 };
      const wait = { ...row, kind: "rest" as const, name: "rest", start: start + 60, end: start + 60 + rest };
      return round < 2 ? [work, wait] : [work];
    });
    return planGaps(
      {
        parts: [{ ...first, pacing: { ...pacing, rows } }],
        gym: kiloGym,
        bar: chooseBar(kiloGym, "male"),
        withholding: { noMaxLift: false },
      },
      numbers,
    );
  };

  it("gets a plan of its own from ten minutes on, once for rests that are alike", () => {
    expect(rested(540)).toEqual([]);
    // Work of 60 s, rest of 12 minutes from 60 to 780, work to 840, rest again from 840.
    const gaps = rested(720);
    expect(gaps).toHaveLength(1);
    expect(gaps[0]).toMatchObject({ part: first.name, inside: true, from: 60, at: 780, again: [840] });
    expect(gapField.safeParse(gaps[0]).success).toBe(true);
    expect(gaps[0]?.steps.at(-1)?.kind).toBe("rest");
  });
});

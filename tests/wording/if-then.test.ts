import { describe, expect, it } from "vitest";
import { sayIfThen, sayIfThenPair, sayIfThenSentence } from "../../src/wording/if-then.ts";
import { samplePlans } from "../support/sample-plan.ts";

const nb = (text: string): string => text.replaceAll("_", "\u00a0");
const pacing = samplePlans.forTimeThenLift.parts[0]?.pacing;
const chipper = samplePlans.almostNothingKnown.parts[0]?.pacing;
if (!pacing || !chipper) throw new Error("the samples have pacing");
const base = { row: 8, round: 3, planned: 298, when: "later-than", clock: 308 } as const;

describe("a threshold and what to do beyond it", () => {
  it.each([
    [{ kind: "smaller-sets", movement: "pull-up", name: "pull-ups", amount: 3 }, "pull-ups in sets of 3"],
    [{ kind: "smaller-sets", movement: "pull-up", name: "pull-ups", amount: 1 }, "pull-ups in singles"],
    [{ kind: "slow-down", secondsPerRound: 4.4 }, "4_s slower a round"],
    [{ kind: "push", secondsPerRound: 3 }, "3_s faster a round"],
    [{ kind: "slow-down", secondsPerRound: 0.4 }, "keep the pace as planned"],
    [{ kind: "push", secondsPerRound: 0.2 }, "keep the pace as planned"],
    [{ kind: "hold" }, "keep to the planned rounds, do not push yet"],
    [{ kind: "skip-to-tie-break", row: 10 }, "straight to the pull-ups, where the tie is broken"],
    [{ kind: "skip-to-tie-break", row: 99 }, "straight to the tie-break"],
  ] as const)("%j is said %s", (action, text) => {
    expect(sayIfThen({ ...base, action }, pacing, { units: "kg" })).toEqual({
      when: nb("After round_3 past 5:08"),
      then: nb(text),
    });
  });

  it("names the movement where there is one round only", () => {
    const early = { ...base, row: 0, round: 1, when: "earlier-than", action: { kind: "hold" } } as const;
    expect(sayIfThen(early, chipper, { units: "kg" }).when).toBe("After the rowing before 5:08");
  });

  it("gives the pace of a later station, on the clock that is read", () => {
    const displayed = { kind: "calories-per-hour", value: 903 } as const;
    const action = { kind: "pace-at", row: 0, secondsPerUnit: 4, displayed } as const;
    const said = sayIfThen({ ...base, row: 0, round: 1, action }, chipper, { units: "kg" }, 60);
    expect(said).toEqual({ when: "After the rowing past 6:08", then: nb("the rowing at 900_cal/h") });
  });

  it("looks at what is done where the clock ends the round", () => {
    const fewer = {
      ...base,
      when: "fewer-than",
      score: 106,
      plannedScore: 111,
      projected: 327,
      action: { kind: "aim-at", scorePerRound: 104 },
    } as const;
    const inReps = { ...pacing, score: "reps" } as const;
    expect(sayIfThenSentence(fewer, inReps, { units: "kg" })).toBe(
      nb("After round_3 with under 106_reps (plan 111_reps): aim at 104 a round. Expect about 327_reps."),
    );
  });

  it("as a sentence gives the planned clock and the result to expect", () => {
    expect(
      sayIfThenSentence({ ...base, action: { kind: "hold" }, projected: 520 }, pacing, { units: "kg" }),
    ).toBe(
      nb(
        "After round_3 past 5:08 (plan 4:58): keep to the planned rounds, do not push yet. Expect about 8:40.",
      ),
    );
  });
});

it("where the reps of one movement add up, only these are counted, on paper too", () => {
  const { pacing } = samplePlans.forTimeThenLift.parts[0] ?? {};
  if (!pacing) throw new Error("the sample has pacing");
  const counted = { name: "thruster", plural: "thrusters" };
  const one = {
    row: 0,
    round: 1,
    planned: 90,
    clock: 90,
    score: 62,
    plannedScore: 65,
    counted,
    when: "fewer-than",
    action: { kind: "aim-at", scorePerRound: 13 },
  } as const;
  expect(sayIfThenSentence(one, { ...pacing, score: "time" }, { units: "kg" })).toContain(
    "with under 62\u00a0thrusters (plan 65\u00a0thrusters): aim at 13 a round.",
  );
  const pair = sayIfThenPair([one], { ...pacing, score: "time" }, { units: "kg" }, 0);
  expect(pair?.say).toBe("with under 62\u00a0thrusters\u00a0→ aim at 13 a round");
});

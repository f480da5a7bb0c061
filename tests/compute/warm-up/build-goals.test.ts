import { describe, expect, it } from "vitest";
import { buildGoals, type BuildGoalsInput } from "../../../src/compute/warm-up/build-goals.ts";
import { WARM_UP_CONSTANTS } from "../../../src/compute/warm-up/constants.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { kilograms } from "../../../src/models/quantity.ts";
import { athlete, type PartSketch, plannedParts } from "../../support/hand-made.ts";
import { sampleMovements } from "../../support/sample-movements.ts";

const lifted = { kind: "max-load", order: "as-written" } as const;
const numbers = withOverrides(WARM_UP_CONSTANTS);
const goals = (sketches: readonly PartSketch[], more: Partial<BuildGoalsInput> = {}) =>
  buildGoals(
    {
      athlete: athlete(),
      movements: sampleMovements,
      parts: plannedParts(sketches, { best: () => kilograms(80) }),
      best: () => ({ kilograms: kilograms(80), basis: "tested" }),
      noMaxLift: false,
      ...more,
    },
    numbers,
  );

describe("what a build serves", () => {
  it("is the lift for load", () => {
    const [goal] = goals([
      { lines: [{ movement: "thruster", amount: 100, kilograms: 60 }] },
      { clock: lifted, lines: [{ movement: "power-clean" }] },
    ]);
    // A regular of 75 kg cleans 0.9 x 75 = 67.5 kg; 80 kg is 1.19 times that, so not counted strong. 100 reps of 3 s come first: 300 s.
    expect(goal).toMatchObject({ movement: "power-clean", serves: "lift", best: 80, topReps: 1 });
    expect(goal?.top).toBeCloseTo(60, 9);
  });

  it("is two lifts at the most, each once", () => {
    const sketches = ["snatch", "clean-and-jerk", "snatch", "deadlift"].map((movement) => ({
      clock: lifted,
      lines: [{ movement }],
    }));
    expect(goals(sketches).map((goal) => goal.movement)).toEqual(["snatch", "clean-and-jerk"]);
  });

  it("is the load of the workout that is heaviest for the athlete, where nothing is lifted for load", () => {
    const sketches = [
      {
        lines: [
          { movement: "deadlift", amount: 20, kilograms: 60 },
          { movement: "snatch", amount: 20, kilograms: 40 },
        ],
      },
    ];
    // 60 of 140 kg is 43 %, 40 of 60 kg is 67 %
    const best = (id: string) => ({ kilograms: id === "snatch" ? 60 : 140, basis: "tested" as const });
    expect(goals(sketches, { best })).toMatchObject([
      {
        movement: "snatch",
        top: 40,
        topReps: 2,
        serves: "load",
        why: { kind: "load", reasons: [] },
      },
    ]);
  });

  it("ends with a single near a load over the band where the best is tested, and at the band where it is not", () => {
    const sketches = [{ lines: [{ movement: "deadlift", amount: 5, kilograms: 75 }] }];
    // 92 % of 75 kg is 69 kg, 86 % of the best of 80 kg is 68.8 kg; the band ends at 80 %, 64 kg.
    const estimated = () => ({ kilograms: kilograms(80), basis: "estimated" });
    expect(goals(sketches, { best: estimated })).toMatchObject([{ top: 64 }]);
    expect(goals(sketches, { noMaxLift: true })).toMatchObject([{ top: 64 }]);
    expect(goals(sketches)).toMatchObject([
      {
        top: 68.8,
        topReps: 1,
        why: { kind: "under-the-load", reasons: [] },
      },
    ]);
  });

  it("is not the lift where no maximum is planned", () => {
    const sketches = [
      { lines: [{ movement: "thruster", amount: 10, kilograms: 30 }] },
      { clock: lifted, lines: [{ movement: "power-clean" }] },
    ];
    expect(goals(sketches, { noMaxLift: true })).toMatchObject([{ movement: "thruster", serves: "load" }]);
  });

  it("is nothing without a bar", () => {
    expect(
      goals([
        {
          lines: [
            { movement: "pull-up", amount: 10 },
            { movement: "kettlebell-swing", kilograms: 24 },
          ],
        },
      ]),
    ).toEqual([]);
  });
});

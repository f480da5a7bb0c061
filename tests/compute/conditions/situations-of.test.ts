import { describe, expect, it } from "vitest";
import { situationsOf } from "../../../src/compute/conditions/situations-of.ts";
import { athlete, plannedParts, workout } from "../../support/hand-made.ts";
import { sampleMovements } from "../../support/sample-movements.ts";

describe("the situations of an athlete in a workout", () => {
  const sketches = [
    {
      lines: [
        { movement: "pull-up", amount: 10 },
        { movement: "row", amount: 500, unit: "metres" as const },
      ],
    },
  ];

  it("are the whole one and one for each movement done, in order", () => {
    const { situation, movements } = situationsOf({
      athlete: athlete(),
      workout: workout(sketches),
      movements: sampleMovements,
      date: "2026-11-26",
      parts: plannedParts(sketches),
      abilities: { best: () => undefined },
      usual: new Map([["pull-up", { amount: 5 }]]),
    });
    expect(movements.map((at) => at.movement.id)).toEqual(["pull-up", "row"]);
    expect(movements.map((at) => at.situation.facts["movement-kind"])).toEqual([["gymnastics"], ["erg"]]);
    expect(movements[0]?.situation.numbers["times-usual"]).toBe(2);
    expect(situation.numbers["times-usual"]).toBeUndefined();
  });
});

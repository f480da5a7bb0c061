import { describe, expect, it } from "vitest";
import { movementsOf, movementsOfPart } from "../../../src/compute/conditions/movements-of.ts";
import type { BlockStep, Part } from "../../../src/models/workout.ts";
import { workout } from "../../support/hand-made.ts";

describe("the movements of a workout", () => {
  const two = workout([
    { lines: [{ movement: "row" }, { movement: "pull-up" }] },
    { lines: [{ movement: "pull-up" }, { movement: "snatch" }] },
  ]);

  it("come once each, in the order they are met", () => {
    expect(movementsOf(two, "everyone")).toEqual(["row", "pull-up", "snatch"]);
  });

  it("are those of the athlete's division, inside blocks too, with every choice of a line", () => {
    const [part] = two.parts;
    const [row] = part?.work["everyone"] ?? [];
    if (part === undefined || row?.kind !== "effort") throw new Error("no part");
    const choice = {
      ...row,
      pieces: [{ ...row.pieces[0], movements: ["run", "row"], amount: { kind: "max", unit: "reps" } }],
    } as const;
    const block: BlockStep = {
      kind: "block",
      place: row.place,
      written: "3 rounds",
      passes: { kind: "rounds", count: 3 },
      inTurn: false,
      elimination: false,
      anyOrder: false,
      unbroken: false,
      tieBreak: false,
      steps: [choice],
    };
    const byDivision: Part = { ...part, work: { men: [row], women: [block] } };
    const mixed = { ...two, divisions: ["men", "women"], parts: [byDivision] };
    expect(movementsOf(mixed, "women")).toEqual(["run", "row"]);
    expect(movementsOf(mixed, "men")).toEqual(["row"]);
    expect(movementsOfPart(byDivision, "women")).toEqual(["run", "row"]);
    expect(movementsOf(mixed, "masters")).toEqual([]);
  });
});

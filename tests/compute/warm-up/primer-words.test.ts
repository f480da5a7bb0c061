import { describe, expect, it } from "vitest";
import { WARM_UP_CONSTANTS } from "../../../src/compute/warm-up/constants.ts";
import { primerWords, rehearsedEfforts } from "../../../src/compute/warm-up/primer-words.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { plannedParts } from "../../support/hand-made.ts";
import { sampleMovements } from "../../support/sample-movements.ts";

const numbers = withOverrides(WARM_UP_CONSTANTS);
const words = (
  id: string,
  amounts: Partial<Record<"amount" | "unbroken", number>>,
  cannot: readonly string[] = [],
) => {
  const movement = sampleMovements.get(id);
  if (movement === undefined) throw new Error(`no ${id}`);
  const situation = { numbers: amounts, facts: { cannot } };
  return primerWords("{amount} {movement}, then rest.", { movement, situation }, numbers);
};

describe("the words of a primer", () => {
  it.each([
    // 25 % of 16 is 4; of 6 it is 1.5, so one; of 50 it is 12.5, held at 5; a visit of 2 allows no more than 2
    ["pull-up", { amount: 10, unbroken: 16 }, "4 pull-ups, then rest."],
    ["pull-up", { amount: 10, unbroken: 6 }, "1 pull-up, then rest."],
    ["pull-up", { amount: 30, unbroken: 50 }, "5 pull-ups, then rest."],
    ["pull-up", { amount: 2, unbroken: 50 }, "2 pull-ups, then rest."],
  ])("%s %j: %s", (id, amounts, expected) => {
    expect(words(id, amounts)).toBe(expected);
  });

  it("are none for a movement that cannot be done yet", () => {
    expect(words("bar-muscle-up", { amount: 5 }, ["bar-muscle-up"])).toBeUndefined();
  });
});

describe("what is rehearsed", () => {
  it("is a share of the first set of the first movements: three, or two with a machine", () => {
    const parts = plannedParts([
      {
        rounds: 2,
        lines: [
          { movement: "row", amount: 500, unit: "metres" },
          { movement: "thruster", amount: 21 },
          { movement: "pull-up", amount: 3 },
          { movement: "burpee", amount: 10 },
        ],
      },
    ]);
    const efforts = rehearsedEfforts(parts, numbers);
    // A machine's pace takes its time to find, so it shares the 36 s with one movement alone.
    expect(efforts.map(({ name }) => name)).toEqual(["row", "thruster", "pull-up"]);
    for (const { amount, secondsPerUnit } of efforts) {
      expect(amount * secondsPerUnit).toBeLessThanOrEqual(30);
      expect(amount).toBeGreaterThanOrEqual(1);
    }
    const total = efforts.reduce((sum, each) => sum + each.amount * each.secondsPerUnit, 0);
    expect(total).toBeGreaterThanOrEqual(15);
    expect(total).toBeLessThanOrEqual(40);
  });

  it("is nothing where nothing is paced", () => {
    expect(rehearsedEfforts([], numbers)).toEqual([]);
  });
});

import { describe, expect, it } from "vitest";
import { equalRounds } from "../../src/wording/equal-rounds.ts";
import { samplePlans } from "../support/sample-plan.ts";

const pacing = samplePlans.twentyRounds.parts[0]?.pacing;
if (!pacing) throw new Error("no pacing");
const [model] = pacing.rows.filter(({ kind }) => kind === "work");
if (!model) throw new Error("no work");

/** Rounds of one row each: so many reps at so many seconds, so long a breath before them. */
const work = (rounds: readonly (readonly [amount: number, secondsPerUnit: number, breath: number])[]) => ({
  rounds: rounds.map((_, i) => ({ ...(pacing.rounds[0] as (typeof pacing.rounds)[number]), round: i + 1 })),
  rows: rounds.map(([amount, secondsPerUnit, breath], i) => ({
    ...model,
    ...{ round: i + 1, amount, secondsPerUnit, breath },
    sets: [{ amount, restAfter: 0 }],
  })),
});
const sizes = (rounds: Parameters<typeof work>[0]): readonly number[] =>
  equalRounds(work(rounds)).map((group) => group.length);

describe("rounds gone about alike", () => {
  it("stand together from three on, however little their rests and rhythms differ", () => {
    expect(
      sizes([
        [10, 2, 0],
        [10, 2, 5],
        [10, 2.05, 6],
        [10, 1.95, 4],
        [10, 2, 7],
      ]),
    ).toEqual([1, 4]);
  });

  it("stand alone where it is only two, or where one has other sets, a longer breath or another rhythm", () => {
    expect(
      sizes([
        [10, 2, 0],
        [10, 2, 0],
        [12, 2, 0],
      ]),
    ).toEqual([1, 1, 1]);
    expect(
      sizes([
        [10, 2, 0],
        [10, 2, 4],
        [10, 2, 0],
      ]),
    ).toEqual([1, 1, 1]);
    expect(
      sizes([
        [10, 2, 0],
        [10, 2.2, 0],
        [10, 2, 0],
      ]),
    ).toEqual([1, 1, 1]);
  });
});

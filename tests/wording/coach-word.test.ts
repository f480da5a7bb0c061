import { describe, expect, it } from "vitest";
import { sayCoachWord, sayDays } from "../../src/wording/coach-word.ts";
import { sayNotSet } from "../../src/wording/coach-word-not-set.ts";

const plain = (text: string): string => text.replaceAll("\u00a0", " ");

describe("what a coach's word means", () => {
  it("tells chances as days", () => {
    expect([0.98, 0.6, 0.2, 0.14, 0.05, 0.01].map((chance) => plain(sayDays(chance)))).toEqual([
      "nearly every day",
      "6 days in 10",
      "1 day in 5",
      "1 day in 7",
      "1 day in 20",
      "hardly any day",
    ]);
  });

  it("says target, first round and costs, a sentence each", () => {
    const said = sayCoachWord(
      {
        sets: ["target", "firstRound", "sets"],
        lifts: [],
        notSet: [],
        paced: [
          {
            part: "a",
            score: "time",
            target: 480,
            targetWithout: 500,
            aimed: { asked: 480, own: 500, chance: 0.2, ifTried: 512 },
            first: { round: 1, seconds: 100, planned: 96, own: 92 },
            costs: [
              { kind: "sets", name: "pull-up", sizes: [5, 5, 5], cost: 9.2, inSeconds: true },
              { kind: "first-round", cost: 0.3, inSeconds: true },
            ],
          },
        ],
      },
      "kg",
    );
    expect(said.map(plain)).toEqual([
      "Target set by your coach: 8:00 is 4 % faster than your numbers (8:20): 1 day in 5. A usual day begun at that pace ends about 8:32.",
      "Set by your coach: the first round not faster than 1:40; the numbers would do it in 1:36.",
      "Set by your coach: pull-up in 5-5-5 costs about 9 s and the slower first round costs no time.",
    ]);
  });

  it("asks about what cannot be", () => {
    const pace = { kind: "per-500-m", value: 100 } as const;
    expect(
      [
        sayNotSet(
          { kind: "sets-too-much", movement: "pull-up", name: "pull-up", round: 3, sizes: [8, 7] },
          "kg",
        ),
        sayNotSet(
          { kind: "pace-over-fastest", name: "row", asked: { ...pace, value: 80 }, fastest: pace },
          "kg",
        ),
        sayNotSet({ kind: "target-out-of-reach", asked: 360, score: "time", nearest: 400 }, "kg"),
      ].map(plain),
    ).toEqual([
      "Not set: pull-up in 8-7 is more than these muscles have left in round 3. Smaller sets, or longer rests?",
      "Not set: 1:20 per 500 m on row is faster than the fastest of these numbers, 1:40 per 500 m. Is there a better test?",
      "Not set: 6:00 is out of reach of these numbers, whose fastest comes to 6:40. Is a test out of date?",
    ]);
  });
});

import { describe, expect, it } from "vitest";
import { roundPaces } from "../../src/charts/round-paces.ts";
import { samplePlans } from "../support/sample-plan.ts";

const five = samplePlans.forTimeThenLift.parts[0]?.pacing;
if (!five) throw new Error("the sample has pacing");

/** Three rounds of 20, 10 and 5 reps that take 60, 40 and 15 s: 3, 4 and 3 seconds a rep. */
const ladder = {
  ...five,
  rounds: [
    { label: "20s", seconds: 60, end: 60, scoreDone: 20 },
    { label: "10s", seconds: 40, end: 100, scoreDone: 30 },
    { label: "5s", seconds: 15, end: 115, scoreDone: 35 },
  ].map((round, index) => ({
    ...round,
    round: index + 1,
    start: round.end - round.seconds,
    lastRow: index,
    days: { hopeful: round.seconds * 0.9, cautious: round.seconds * 1.1 },
  })),
  ceiling: { round: 1, seconds: 50 },
};

describe("the pace of rounds", () => {
  it("is their time where all are equal", () => {
    const { of, rounds } = roundPaces(five);
    expect(of).toBe("round");
    expect(rounds.map(({ value }) => value)).toEqual(five.rounds.map(({ seconds }) => seconds));
  });

  it("is seconds of a rep where they shrink, so that a slower one shows", () => {
    const { of, rounds, ceiling } = roundPaces(ladder);
    expect([of, ceiling]).toEqual(["rep", 2.5]);
    expect(rounds.map(({ value }) => value)).toEqual([3, 4, 3]);
    expect(rounds[1]).toMatchObject({ low: 3.6, high: 4.4 });
  });

  it("has the shape of early performances over the plan's own time", () => {
    // Seen: 80, 20 and 15 s, which is as long as the plan's 115 s; so 4, 2 and 3 seconds a rep.
    const shape = [80, 20, 15].map((seconds, index) => ({ round: index + 1, seconds, relative: 1 }));
    const seen = { ...ladder, earlySplits: { performances: 1, weight: 0.5, notIdentifiable: [], shape } };
    expect(roundPaces(seen).rounds.map(({ early }) => early)).toEqual([4, 2, 3]);
    const twice = { ...seen.earlySplits, shape: shape.map((one) => ({ ...one, seconds: one.seconds * 2 })) };
    expect(roundPaces({ ...seen, earlySplits: twice }).rounds.map(({ early }) => early)).toEqual([4, 2, 3]);
  });

  it("has none of them where a round was not seen", () => {
    const shape = [{ round: 1, seconds: 80, relative: 1 }];
    const seen = { ...ladder, earlySplits: { performances: 1, weight: 0.5, notIdentifiable: [], shape } };
    expect(roundPaces(seen).rounds.every(({ early }) => early === undefined)).toBe(true);
  });
});

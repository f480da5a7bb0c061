import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { EarlySplitsFit, SeenRound } from "../../../src/compute/early-splits/early-splits-fit.ts";
import { fitEarlySplits } from "../../../src/compute/early-splits/fit-early-splits.ts";
import { shapeFrom } from "../../../src/compute/early-splits/shape-from.ts";
import { pacePart } from "../../../src/compute/pacing/pace-part.ts";
import type { PaceShape } from "../../../src/compute/pacing/paced-part.ts";
import { metres } from "../../../src/models/quantity.ts";
import { plainCapacity } from "../../support/capacities.ts";
import { clocksOf, couplet, type Law, performancesBy, roundsBy, seenBy } from "../../support/early.ts";
import { near } from "../../support/near.ts";

const law: Law = { fixed: 12, perRep: 2.5, drift: 0.03, surge: 0 };
const round = (number: number, seconds: number, relative: number, error = 0.05): SeenRound => ({
  round: number,
  likeness: "1",
  seconds,
  relative,
  error,
  performances: 4,
});
const fitOf = (rounds: readonly SeenRound[], more: Partial<EarlySplitsFit> = {}): EarlySplitsFit => ({
  performances: 4,
  notIdentifiable: [],
  rounds,
  troubles: [],
  ...more,
});

describe("the shape that early performances lend", () => {
  it("is each round against the mean of its kind", () => {
    // Equal rounds of 57, 60 and 63 s: mean 60.
    const fit = fitEarlySplits([seenBy([57, 117, 180])], couplet([10, 10, 10]));
    expect(shapeFrom(fit, couplet([10, 10, 10])).relativeByRound).toEqual([
      expect.closeTo(0.95, 3),
      expect.closeTo(1, 3),
      expect.closeTo(1.05, 3),
    ]);
  });

  it("is even for anybody who keeps one pace, whatever the rounds hold", () => {
    const amounts = [10, 20, 5, 30, 15];
    const even = seenBy(clocksOf(roundsBy({ ...law, fixed: 0, drift: 0 }, amounts)));
    const { relativeByRound } = shapeFrom(
      fitEarlySplits([even, even, even], couplet(amounts)),
      couplet(amounts),
    );
    for (const relative of relativeByRound) expect(Math.abs(relative - 1)).toBeLessThan(0.02);
  });

  it("holds the last round seen for rounds nobody got to", () => {
    const fit = fitEarlySplits([seenBy([57, 117, 180])], couplet([10, 10, 10]));
    const { relativeByRound } = shapeFrom(fit, couplet([10, 10, 10, 10, 10]));
    expect(relativeByRound.slice(3)).toEqual([relativeByRound[2], relativeByRound[2]]);
  });

  it("stands against a plan, if one is given, so that nothing the plan foresees counts twice", () => {
    const seen = fitOf([round(1, 50, 0.91), round(2, 55, 1), round(3, 60, 1.09)]);
    const course = couplet([10, 10, 10]);
    const same = [100, 110, 120].map((seconds, index) => ({ round: index + 1, seconds }));
    expect(shapeFrom(seen, course, { planned: same }).relativeByRound).toEqual([near(1), near(1), near(1)]);
    // 50, 55 and 60 s against an even plan: over their mean of 55 s.
    const even = same.map((one) => ({ ...one, seconds: 100 }));
    expect(shapeFrom(seen, course, { planned: even }).relativeByRound).toEqual([
      near(50 / 55),
      near(1),
      near(60 / 55),
    ]);
  });

  it("shares a fixed cost out over the changes of station", () => {
    // A couplet has two changes a round from the second on.
    const told = fitOf([round(1, 50, 1), round(2, 50, 1)], { fixedPerRound: { value: 12, error: 1 } });
    expect(shapeFrom(told, couplet([10, 10])).transition).toBe(6);
    expect(shapeFrom(fitOf([round(1, 50, 1)]), couplet([10, 10])).transition).toBeUndefined();
  });
});

describe("a plan that takes over a shape", () => {
  const amounts = [10, 10, 10, 10, 10];
  const course = couplet(amounts);
  const planned = (shape?: PaceShape): readonly { readonly round: number; readonly seconds: number }[] => {
    const paced = pacePart({
      course,
      clock: { kind: "for-time" },
      score: { kind: "time", restCounts: true },
      capacity: plainCapacity({ "pull-up": { sustainable: 4 }, burpee: { sustainable: 4.75 } }),
      between: metres(3),
      loadBar: () => {
        throw new Error("nothing is loaded here");
      },
      seed: 1,
      ...(shape === undefined ? {} : { shape }),
    });
    if (paced.kind !== "paced") throw new Error(JSON.stringify(paced.missing));
    return paced.pacing.rounds;
  };
  const lastOverFirst = (rounds: readonly { readonly seconds: number }[]): number =>
    (rounds.at(-1)?.seconds ?? Number.NaN) / (rounds[0]?.seconds ?? Number.NaN);

  it.each([
    ["even", 0],
    ["slowing by 5 % a round", 0.05],
  ])("lies between its own pacing and what was seen: %s", (_name, drift) => {
    const own = planned();
    const seen = performancesBy({ ...law, drift }, amounts, 20, 0.01, 3);
    const shape = shapeFrom(fitEarlySplits(seen, course), course, { planned: own });
    const ends = [lastOverFirst(own), (1 + drift) ** 4].sort((a, b) => a - b) as [number, number];
    const blended = lastOverFirst(planned(shape));
    expect(blended).toBeGreaterThan(ends[0] + 0.01);
    expect(blended).toBeLessThan(ends[1] - 0.01);
  });
});

describe("the weight of a shape", () => {
  it("is as worked by hand", () => {
    // Four performances: half of 0.8; a doubt of 0.05, as large as shapes differ: half of that.
    expect(shapeFrom(fitOf([round(1, 50, 1), round(2, 50, 1)]), couplet([10, 10])).weight).toBeCloseTo(
      0.2,
      12,
    );
  });

  it("is nought where no two rounds can be held against each other", () => {
    expect(shapeFrom(fitOf([round(1, 50, 1)]), couplet([10])).weight).toBe(0);
    expect(shapeFrom(fitOf([], { performances: 0 }), couplet([10])).weight).toBe(0);
  });

  it("grows with performances, never beyond its most, and shrinks with doubt", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 200 }),
        fc.double({ min: 0.001, max: 0.5, noNaN: true }),
        (performances, error) => {
          const weight = (count: number, doubt: number): number =>
            shapeFrom(
              fitOf([round(1, 50, 1, doubt), round(2, 50, 1, doubt)], { performances: count }),
              couplet([10, 10]),
            ).weight;
          expect(weight(performances + 1, error)).toBeGreaterThan(weight(performances, error));
          expect(weight(performances, error * 1.1)).toBeLessThan(weight(performances, error));
          expect(weight(performances, error)).toBeLessThan(0.8);
        },
      ),
    );
  });

  it("is small for one performance and large for thirty", () => {
    const weight = (count: number): number =>
      shapeFrom(
        fitEarlySplits(performancesBy(law, [10, 10, 10, 10], count, 0.03, 3), couplet([10, 10, 10, 10])),
        couplet([10, 10, 10, 10]),
      ).weight;
    expect(weight(1)).toBeLessThan(0.16);
    expect(weight(30)).toBeGreaterThan(0.6);
  });

  it("is the coach's to set", () => {
    const fit = fitOf([round(1, 50, 1), round(2, 50, 1)]);
    expect(shapeFrom(fit, couplet([10, 10]), { overrides: { weightMost: 0 } }).weight).toBe(0);
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { EarlySplitsFit, Estimate } from "../../../src/compute/early-splits/early-splits-fit.ts";
import { fitEarlySplits } from "../../../src/compute/early-splits/fit-early-splits.ts";
import type { EarlyPerformance } from "../../../src/models/workout.ts";
import { makeCourse } from "../../support/courses.ts";
import { clocksOf, couplet, type Law, performancesBy, roundsBy, seenBy } from "../../support/early.ts";
import { burpee, pullUp, thruster } from "../../support/movements.ts";

const LAWS = ["fixedPerRound", "perRep", "driftPerRound", "finishSurge"] as const;
const law: Law = { fixed: 12, perRep: 2.5, drift: 0.02, surge: -0.05 };
const truth = { fixedPerRound: 12, perRep: 2.5, driftPerRound: 0.02, finishSurge: -0.05 };
const mixed = [10, 20, 5, 30, 15];
const exactly = (amounts: readonly number[], of = law): EarlyPerformance =>
  seenBy(clocksOf(roundsBy(of, amounts)));
const errors = (fit: EarlySplitsFit): readonly number[] =>
  LAWS.map((name) => fit[name]?.error ?? Number.POSITIVE_INFINITY);

describe("splits without noise", () => {
  it("of equal rounds give back a slowing of 2 %, its error as worked by hand", () => {
    // Five rounds of an endless course, 100 s x 1.02^i, clocks exact. Spread: (4 x 0.03^2 + 0) / (4 + 3) = 0.000514, three
    // degrees of freedom being left of five rounds by a level and a slope. Steps -2 to 2 have squares of 10:
    // sqrt(0.000514 / 10) = 0.00717 of the log, times 1.02.
    const course = couplet([10, 10, 10, 10, 10], { endless: true });
    const rounds = [0, 1, 2, 3, 4].map((i) => 100 * 1.02 ** i);
    const fit = fitEarlySplits([seenBy(clocksOf(rounds))], course, { overrides: { clockError: 0 } });
    expect(fit.driftPerRound?.value).toBeCloseTo(0.02, 5);
    expect(fit.driftPerRound?.error).toBeCloseTo(0.00731, 5);
    expect(fit.notIdentifiable).toEqual(["fixedPerRound", "perRep", "finishSurge"]);
  });

  it("of a mixed order of amounts give back every number", () => {
    const fit = fitEarlySplits([exactly(mixed), exactly(mixed), exactly(mixed)], couplet(mixed));
    expect(fit.notIdentifiable).toEqual([]);
    expect(fit.fixedPerRound?.value).toBeCloseTo(12, 1);
    expect(fit.perRep?.value).toBeCloseTo(2.5, 2);
    expect(fit.driftPerRound?.value).toBeCloseTo(0.02, 3);
    expect(fit.finishSurge?.value).toBeCloseTo(-0.05, 2);
  });

  it("give back any law, far inside the errors stated", () => {
    const amounts = [10, 20, 5, 30, 15, 8, 25];
    fc.assert(
      fc.property(
        fc.record({
          fixed: fc.double({ min: 1, max: 40, noNaN: true }),
          perRep: fc.double({ min: 1, max: 6, noNaN: true }),
          drift: fc.double({ min: -0.05, max: 0.1, noNaN: true }),
          surge: fc.double({ min: -0.15, max: 0.15, noNaN: true }),
        }),
        (of) => {
          const fit = fitEarlySplits([exactly(amounts, of), exactly(amounts, of)], couplet(amounts));
          const real = {
            fixedPerRound: of.fixed,
            perRep: of.perRep,
            driftPerRound: of.drift,
            finishSurge: of.surge,
          };
          for (const name of LAWS) {
            const { value, error } = fit[name] as Estimate;
            expect(Math.abs(value - real[name])).toBeLessThan(0.1 * error);
          }
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe("splits with noise", () => {
  it.each([
    ["mixed amounts, two seen", mixed, 2],
    ["a ladder of ten, three seen", [10, 9, 8, 7, 6, 5, 4, 3, 2, 1], 3],
    ["five equal rounds, three seen", [10, 10, 10, 10, 10], 3],
  ] as const)("have the truth within the stated error two times in three: %s", (_name, amounts, count) => {
    // 100 draws: of a normal law 68 lie within one error and 95 within two; three standard errors of these counts are 14 and 7.
    const fits = Array.from({ length: 100 }, (_, seed) =>
      fitEarlySplits(performancesBy(law, amounts, count, 0.03, seed), couplet(amounts)),
    );
    const drawn = (name: (typeof LAWS)[number]): readonly number[] =>
      fits.flatMap((fit) => {
        const told = fit[name];
        return told === undefined ? [] : [Math.abs(told.value - truth[name]) / told.error];
      });
    const equal = amounts.every((amount) => amount === amounts[0]);
    for (const name of equal
      ? (["driftPerRound"] as const)
      : (["fixedPerRound", "perRep", "driftPerRound"] as const)) {
      const off = drawn(name);
      expect(off.length).toBeGreaterThan(95);
      expect(off.filter((times) => times < 1).length / off.length).toBeGreaterThan(0.54);
      expect(off.filter((times) => times < 2).length / off.length).toBeGreaterThan(0.88);
    }
  });

  it("seen twice as often never widen an error", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(mixed, [10, 10, 10, 10], [8, 7, 6, 5, 4, 3, 2], [21, 15, 9]),
        fc.integer({ min: 1, max: 4 }),
        fc.double({ min: 0, max: 0.08, noNaN: true }),
        fc.integer({ min: 0, max: 1_000_000 }),
        (amounts, count, noise, seed) => {
          const seen = performancesBy(law, amounts, count, noise, seed);
          const once = fitEarlySplits(seen, couplet(amounts));
          const twice = fitEarlySplits([...seen, ...seen], couplet(amounts));
          errors(once).forEach((error, k) => {
            expect(errors(twice)[k]).toBeLessThanOrEqual(error * (1 + 1e-6));
          });
          once.rounds.forEach((round, k) => {
            expect(twice.rounds[k]?.error).toBeLessThanOrEqual(round.error * (1 + 1e-6));
          });
        },
      ),
      { numRuns: 60 },
    );
  });

  it("seen by ever more people tell ever more closely", () => {
    for (let seed = 0; seed < 10; seed += 1) {
      const all = performancesBy(law, mixed, 32, 0.03, seed);
      const byCount = [2, 8, 32].map((count) => errors(fitEarlySplits(all.slice(0, count), couplet(mixed))));
      LAWS.forEach((_, k) => {
        const [few, some, many] = byCount.map((one) => one[k] as number) as [number, number, number];
        expect(some).toBeLessThan(few);
        expect(many).toBeLessThan(some);
        expect(many).toBeLessThan(Number.POSITIVE_INFINITY);
      });
    }
  });

  it("that contradict one another claim a larger error than splits that agree", () => {
    const agree = fitEarlySplits([exactly(mixed), exactly(mixed)], couplet(mixed));
    const steep = exactly(mixed, { ...law, drift: 0.15 });
    const differ = fitEarlySplits([exactly(mixed), steep], couplet(mixed));
    expect(differ.driftPerRound?.error).toBeGreaterThan(agree.driftPerRound?.error ?? Number.NaN);
  });
});

describe("what splits cannot tell is named, not invented", () => {
  const many = (amounts: readonly number[]): EarlySplitsFit =>
    fitEarlySplits(performancesBy(law, amounts, 30, 0.03, 5), couplet(amounts));

  it("one round tells nothing", () => {
    expect(many([30])).toMatchObject({ performances: 30, notIdentifiable: [...LAWS] });
    expect(many([30]).driftPerRound).toBeUndefined();
  });

  it("two rounds do not tell a drift from a surge, however often they are seen", () => {
    expect(many([10, 10]).notIdentifiable).toEqual([...LAWS]);
    expect(many([20, 10]).notIdentifiable).toEqual([...LAWS]);
  });

  it("equal rounds do not tell a fixed cost from a cost per rep", () => {
    expect(many([10, 10, 10, 10, 10]).notIdentifiable).toEqual(["fixedPerRound", "perRep"]);
  });

  it("three rounds of a ladder hold fewer facts than the law has numbers", () => {
    expect(many([21, 15, 9]).notIdentifiable).toEqual([...LAWS]);
  });

  it("a short ladder of even steps hides a fixed cost behind the drift, a mixed one of as many rounds does not", () => {
    expect(many([18, 14, 10, 6]).notIdentifiable).toEqual(
      expect.arrayContaining(["fixedPerRound", "perRep"]),
    );
    expect(many([10, 25, 6, 20, 12]).notIdentifiable).toEqual([]);
  });

  it("work without end has no last round to differ", () => {
    const fit = fitEarlySplits(
      performancesBy(law, [10, 10, 10, 10, 10, 10], 5, 0.02, 1),
      couplet(
        Array.from({ length: 40 }, () => 10),
        { endless: true },
      ),
    );
    expect(fit.notIdentifiable).toEqual(["fixedPerRound", "perRep", "finishSurge"]);
  });

  it("rounds at other loads or of other movements are not held against one another", () => {
    const course = makeCourse([
      [{ move: burpee, amount: 30 }],
      [{ move: thruster, amount: 20, kg: 40 }],
      [{ move: thruster, amount: 20, kg: 50 }],
      [{ move: pullUp, amount: 20 }],
    ]);
    const fit = fitEarlySplits(
      [100, 110, 120, 130, 140].map((time) => seenBy(clocksOf([time, 80, 140, 90]))),
      course,
    );
    expect(fit.notIdentifiable).toEqual([...LAWS]);
    expect(fit.rounds.map(({ relative }) => relative)).toEqual([1, 1, 1, 1]);
  });

  it("work counted in other units has no cost of a rep, told or not", () => {
    const run = { ...burpee, id: "run", counts: ["metres"] as const };
    const course = makeCourse([400, 400, 400, 400].map((amount) => [{ move: run, amount }]));
    const fit = fitEarlySplits([seenBy([90, 182, 276, 372])], course);
    expect(fit.notIdentifiable).not.toContain("perRep");
    expect(fit.perRep).toBeUndefined();
  });
});

describe("the performances taken", () => {
  it("are those of the part; without any nothing is told", () => {
    const other = seenBy([60, 130], { part: "b" });
    expect(fitEarlySplits([other], couplet([10, 10]))).toEqual({
      performances: 0,
      notIdentifiable: [...LAWS],
      rounds: [],
      troubles: [],
    });
  });

  it("leave out one that cannot be read, and tell it", () => {
    const fit = fitEarlySplits([seenBy([60, 130, 200]), seenBy([60, 130])], couplet([10, 10]));
    expect(fit.performances).toBe(1);
    expect(fit.troubles).toMatchObject([
      { kind: "too-many-splits", performance: { who: "a made athlete" }, most: 2 },
    ]);
  });

  it("are read by the course of their own division", () => {
    // Her rounds hold half of his: the same clocks per rep, so both tell the same even pace.
    const his = couplet([20, 20, 20, 20]);
    const hers = couplet([10, 10, 10, 10]);
    const fit = fitEarlySplits(
      [seenBy([100, 200, 300, 400]), seenBy([50, 100, 150, 200], { division: "women" })],
      his,
      { courseOf: () => hers },
    );
    expect(fit.rounds.map(({ relative }) => relative)).toEqual(
      [1, 1, 1, 1].map((one) => expect.closeTo(one, 9) as number),
    );
    // Geometric mean of 100 s and 50 s.
    expect(fit.rounds[0]?.seconds).toBeCloseTo(Math.sqrt(100 * 50), 6);
  });

  it("of divisions with other loads and amounts lend one shape, and one cost of a rep", () => {
    const ladder = (kg: number, times: number) =>
      makeCourse([10, 20, 5, 30, 15].map((amount) => [{ move: thruster, amount: times * amount, kg }]));
    const his = clocksOf([10, 20, 5, 30, 15].map((amount) => 12 + 2 * (2 * amount)));
    const hers = clocksOf([10, 20, 5, 30, 15].map((amount) => 12 + 4 * amount));
    const fit = fitEarlySplits([seenBy(his), seenBy(hers, { division: "women" })], ladder(50, 2), {
      courseOf: () => ladder(35, 1),
    });
    expect(fit.rounds.map(({ round, performances }) => [round, performances])).toEqual(
      [1, 2, 3, 4, 5].map((round) => [round, 2]),
    );
    expect(fit.fixedPerRound?.value).toBeCloseTo(12, 1);
    // Geometric mean of 2 s a rep and 4 s a rep.
    expect(fit.perRep?.value).toBeCloseTo(Math.sqrt(2 * 4), 2);
  });

  it("that got less far count for the rounds they got to", () => {
    const fit = fitEarlySplits([seenBy([50, 100, 150, 200]), seenBy([60, 120])], couplet([10, 10, 10, 10]));
    expect(fit.rounds.map(({ performances }) => performances)).toEqual([2, 2, 1, 1]);
    expect(fit.rounds.map(({ relative }) => relative).every((one) => Math.abs(one - 1) < 0.02)).toBe(true);
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Capacity, MovementCapacity } from "../../../src/compute/motion/movement-capacity.ts";
import { pacePart } from "../../../src/compute/pacing/pace-part.ts";
import { pacingField } from "../../../src/models/plan/pacing.ts";
import { seconds } from "../../../src/models/quantity.ts";
import { plainCapacity } from "../../support/capacities.ts";
import { type Line, makeAmrap, makeCourse } from "../../support/courses.ts";
import { airSquat, burpee, clean, pullUp, row, run, thruster } from "../../support/movements.ts";
import { forReps, forTime, inputFor, paced } from "../../support/paced.ts";

const NO_PACE = { kind: "no-pace", movement: "burpee", unit: "calories", counted: "reps" } as const;
type Own = Partial<MovementCapacity> & { readonly sustainable: number };
const TASKS: Readonly<Record<string, Own>> = {
  burpee: { sustainable: 4.2, fastest: 2.3, kappa: 1.7, unbroken: 40 },
  "pull-up": { sustainable: 2.6, fastest: 1.3, kappa: 2.2, unbroken: 18, held: true },
  thruster: { sustainable: 3.9, fastest: 1.9, kappa: 2.6, unbroken: 22, held: true },
  clean: { sustainable: 5, fastest: 2.2, kappa: 2.6, unbroken: 9, held: true },
  "air-squat": { sustainable: 1.8, fastest: 1.05, kappa: 1.6, unbroken: 80 },
  row: { sustainable: 0.24, fastest: 0.18, kappa: 3 },
  run: { sustainable: 0.27, fastest: 0.16, kappa: 2 },
};

/** The same athlete with every time and set scaled. */
const athlete = (times = 1, sets = 1, more: Partial<Omit<Capacity, "of">> = {}): Capacity =>
  plainCapacity(
    Object.fromEntries(
      Object.entries(TASKS).map(([id, own]) => [
        id,
        {
          ...own,
          sustainable: own.sustainable * times,
          fastest: (own.fastest ?? 1) * times,
          unbroken: (own.unbroken ?? Infinity) * sets,
        },
      ]),
    ),
    { reserve: seconds(60), ...more },
  );

const MOVES = [burpee, pullUp, thruster, clean, airSquat, row, run] as const;
const amountFor = (id: string, size: number): number =>
  id === "row" || id === "run" ? size * 25 : id === "air-squat" ? size * 2 : size;

/** One to four rounds of one to three movements. */
const anyCourse = fc
  .record({
    rounds: fc.integer({ min: 1, max: 4 }),
    moves: fc.uniqueArray(fc.constantFrom(...MOVES), { minLength: 1, maxLength: 3 }),
    size: fc.integer({ min: 6, max: 24 }),
  })
  .map(({ rounds, moves, size }) =>
    makeCourse(
      Array.from({ length: rounds }, () =>
        moves.map((move): Line => ({ move, amount: amountFor(move.id, size) })),
      ),
    ),
  );

const couplet = makeCourse(
  [21, 15, 9].map((n) => [
    { move: thruster, amount: n, kg: 43 },
    { move: pullUp, amount: n },
  ]),
);
const triplet: readonly Line[] = [
  { move: pullUp, amount: 5 },
  { move: burpee, amount: 10 },
  { move: airSquat, amount: 15 },
];

describe("a paced part", () => {
  it("is a valid part of a plan", () => {
    for (const { pacing } of [
      paced(inputFor(couplet, forTime, athlete())),
      paced(inputFor(makeAmrap(triplet, 900), forReps, athlete())),
    ]) {
      expect(pacingField.safeParse(pacing).error).toBeUndefined();
    }
  });

  it("is the same for the same input and seed, and its range another for another seed", () => {
    const numbers = (seed: number) => {
      const { hasty, ...rest } = paced(inputFor(couplet, forTime, athlete(), { seed }));
      return { ...rest, hasty: hasty(1.1, 1 / 3) };
    };
    const one = numbers(7);
    expect(numbers(7)).toEqual(one);
    expect(numbers(8).pacing.rows).toEqual(one.pacing.rows);
    expect(numbers(8).days).not.toEqual(one.days);
  });

  it("says what is missing where a movement has no capacity", () => {
    const none = { ...athlete(), of: () => ({ missing: NO_PACE }) };
    expect(pacePart(inputFor(couplet, forTime, none))).toEqual({
      kind: "not-paced",
      missing: [NO_PACE],
    });
  });

  it("adds up: transitions, sets and rests give every clock, clocks rise, and the last is the duration", () => {
    fc.assert(
      fc.property(anyCourse, (course) => {
        const { pacing } = paced(inputFor(course, forTime, athlete()));
        let clock = 0;
        for (const row of pacing.rows) {
          expect(row.start).toBeCloseTo(clock, 6);
          if (row.kind === "rest") {
            clock = row.end;
            continue;
          }
          const sets = row.sets.reduce((sum, set) => sum + set.amount, 0);
          const rests = row.sets.reduce((sum, set) => sum + set.restAfter, 0);
          expect(sets).toBeCloseTo(row.amount, 6);
          clock = row.start + row.transition + row.amount * (row.secondsPerUnit ?? 0) + rests;
          expect(row.end).toBeCloseTo(clock, 6);
          expect(row.end).toBeGreaterThanOrEqual(row.start);
          clock = row.end;
        }
        expect(pacing.duration).toBeCloseTo(clock, 6);
        expect(pacing.result.target).toBeCloseTo(clock, 6);
      }),
      { numRuns: 40 },
    );
  });

  it("never spends more than there is, and prints as margin what is left", () => {
    fc.assert(
      fc.property(anyCourse, (course) => {
        const { pacing, after } = paced(inputFor(course, forTime, athlete()));
        for (const row of pacing.rows) expect(row.reserve).toBeGreaterThanOrEqual(0);
        const left = pacing.rows.at(-1)?.reserve ?? Number.NaN;
        expect(pacing.margin?.share).toBeCloseTo(left, 6);
        expect(pacing.margin?.seconds).toBeCloseTo(60 * left, 6);
        expect(after.reserve.fast + after.reserve.slow).toBeCloseTo(left, 6);
      }),
      { numRuns: 30 },
    );
  });

  it("keeps sets inside what is possible, none larger than the one before", () => {
    fc.assert(
      fc.property(anyCourse, (course) => {
        for (const row of paced(inputFor(course, forTime, athlete())).pacing.rows) {
          const sizes = row.sets.map((set) => set.amount);
          expect([...sizes].sort((a, b) => b - a)).toEqual(sizes);
          const best = TASKS[row.movement ?? ""]?.unbroken ?? Infinity;
          if (TASKS[row.movement ?? ""]?.held) expect(sizes[0]).toBeLessThanOrEqual(Math.ceil(best));
        }
      }),
      { numRuns: 30 },
    );
  });

  it("counts shares up to one, in reps, in time and in work", () => {
    const { rows, half } = paced(inputFor(couplet, forTime, athlete())).pacing;
    for (const share of ["shareOfReps", "shareOfTime", "shareOfWork"] as const) {
      expect(rows.map((row) => row[share])).toEqual([...rows.map((row) => row[share])].sort((a, b) => a - b));
      expect(rows.at(-1)?.[share]).toBeCloseTo(1, 6);
    }
    const before = rows[(half?.row ?? 0) - 1]?.shareOfWork ?? 0;
    expect(before).toBeLessThan(0.5);
    expect(rows[half?.row ?? 0]?.shareOfWork).toBeGreaterThanOrEqual(0.5);
  });

  it("puts the target inside its range, and the good day on the good side", () => {
    const time = paced(inputFor(couplet, forTime, athlete())).pacing.result;
    expect(time.hopeful).toBeLessThan(time.middle);
    expect(time.middle).toBeLessThan(time.cautious);
    expect(time.target).toBeGreaterThanOrEqual(time.hopeful);
    expect(time.target).toBeLessThanOrEqual(time.cautious);
    const reps = paced(inputFor(makeAmrap(triplet, 900), forReps, athlete())).pacing.result;
    expect(reps.hopeful).toBeGreaterThan(reps.middle);
    expect(reps.middle).toBeGreaterThan(reps.cautious);
  });
});

describe("who can do more", () => {
  // The plan is the best of a few numbers on simulated days, so it may miss its own best by a little: 0.5 %.
  const slower = 1.005;
  const time = (capacity: Capacity, more = {}): number =>
    paced(inputFor(couplet, forTime, capacity, more)).pacing.result.target;

  it("is never planned slower: quicker reps, a larger reserve, larger sets, a faster recovery", () => {
    const now = time(athlete());
    expect(time(athlete(0.95))).toBeLessThan(now);
    expect(time(athlete(1, 1, { reserve: seconds(75) }))).toBeLessThan(now * slower);
    expect(time(athlete(1, 1.4))).toBeLessThan(now * slower);
    expect(time(athlete(1, 1, { recoverySpeed: 1.3 }))).toBeLessThan(now * slower);
  });

  it("does at least as many reps in the same time", () => {
    const reps = (capacity: Capacity): number =>
      paced(inputFor(makeAmrap(triplet, 720), forReps, capacity)).pacing.result.target;
    fc.assert(
      fc.property(fc.double({ min: 0.8, max: 1.2, noNaN: true }), (times) => {
        expect(reps(athlete(times * 0.96))).toBeGreaterThanOrEqual(reps(athlete(times)));
      }),
      { numRuns: 12 },
    );
  });

  it("is never faster over a longer way between the stations", () => {
    const near = paced(inputFor(couplet, forTime, athlete())).pacing.duration;
    const far = paced({ ...inputFor(couplet, forTime, athlete()), between: 15 as never }).pacing.duration;
    // Five more changes of station over 10 m are 36 s more of walking, part of which rests.
    expect(far).toBeGreaterThan(near + 15);
  });

  it("breaks differently: fewer sets of the same work, so bigger ones, for bigger best sets", () => {
    const rows = (capacity: Capacity) => paced(inputFor(couplet, forTime, capacity)).pacing.rows;
    const sets = (capacity: Capacity) => rows(capacity).reduce((sum, row) => sum + row.sets.length, 0);
    expect(sets(athlete(1, 1.6))).toBeLessThan(sets(athlete(1, 0.7)));
  });
});

describe("formats", () => {
  it("a cap that is not made: says where it ends and asks for as much as possible", () => {
    const capped = makeCourse(
      [21, 15, 9].map((n) => [
        { move: thruster, amount: n, kg: 43 },
        { move: pullUp, amount: n },
      ]),
      { ends: seconds(200) },
    );
    const { pacing } = paced(inputFor(capped, forTime, athlete()));
    expect(pacing).toMatchObject({ score: "reps", ending: "stopped-by-cap", duration: 200, cap: 200 });
    expect(pacing.result.target).toBe(pacing.rows.at(-1)?.scoreDone);
    expect(pacing.whenStopped).toMatchObject({
      at: 200,
      advice: "most-reps",
      scoreDone: pacing.result.target,
    });
    expect(pacing.chanceOfFinishing).toBe(0);
    // Of 90 reps in all.
    expect(pacing.result.target).toBeLessThan(90);
  });

  it("a cap that costs seconds for missing reps: stays a time", () => {
    const course = makeCourse([[{ move: clean, amount: 60, kg: 61 }]], {
      ends: seconds(240),
      secondsPerMissing: seconds(1),
    });
    const { pacing } = paced(inputFor(course, forTime, athlete()));
    expect(pacing.score).toBe("time");
    expect(pacing.result.target).toBe(240 + 60 - (pacing.rows.at(-1)?.scoreDone ?? 0));
  });

  it("a cap that is made: says how likely it is", () => {
    const easy = paced(inputFor(makeCourse([[{ move: burpee, amount: 50 }]], { ends: seconds(600) }), forTime, athlete())); // prettier-ignore
    expect(easy.pacing).toMatchObject({ ending: "finishes", chanceOfFinishing: 1, score: "time" });
  });

  it("an AMRAP: rounds and reps of whole reps, the part round last", () => {
    const score = { kind: "rounds-and-reps", restCounts: true } as const;
    const { pacing } = paced(inputFor(makeAmrap(triplet, 600), score, athlete()));
    expect(pacing).toMatchObject({ ending: "fills-the-time", perRound: 30, duration: 600 });
    const { rounds = 0, reps = 0 } = pacing.roundsAndReps ?? {};
    expect(rounds * 30 + reps).toBe(pacing.result.target);
    expect(Number.isInteger(pacing.result.target)).toBe(true);
    expect(pacing.rows.at(-1)?.end).toBeLessThanOrEqual(600 + 1e-6);
  });

  it("as much as possible in windows: each fills its time", () => {
    const window = { kind: "for", time: seconds(60) } as const;
    const course = makeCourse(
      [1, 2, 3].map(() => [
        { move: airSquat, amount: window },
        { move: row, amount: window, unit: "metres" as const },
        { rest: { kind: "exactly", time: seconds(60) } },
      ]),
    );
    const { pacing } = paced(inputFor(course, forReps, athlete()));
    const work = pacing.rows.filter((row) => row.kind === "work");
    expect(work.map((row) => Math.round(row.end * 1000))).toEqual(
      [60, 120, 240, 300, 420, 480].map((end) => end * 1000),
    );
    expect(pacing.intervals?.length).toBe(3);
    expect(pacing.intervals?.[0]?.restLeft).toBeCloseTo(60, 6);
  });

  it("every minute until it cannot be done: says in which minute it ends", () => {
    const minutes = Array.from({ length: 40 }, (_, i): readonly Line[] => [
      {
        move: pullUp,
        amount: i + 1,
        more: { deadline: { clock: seconds(60 * (i + 1)), onMiss: "part-ends" } },
      },
      { rest: { kind: "until", clock: seconds(60 * (i + 1)) } },
    ]);
    const course = makeCourse(minutes, { endless: true });
    const { pacing } = paced(inputFor(course, forReps, athlete()));
    expect(pacing.ending).toBe("eliminated");
    const last = pacing.rows.at(-1);
    expect(last?.deadline).toBe(60 * (last?.round ?? 0));
    expect(last?.amount).toBeLessThan(last?.round ?? 0);
    // Eighteen in one set when fresh: more than ten a minute can be repeated, and not for ever.
    expect(last?.round).toBeGreaterThan(10);
    expect(last?.round).toBeLessThan(30);
  });

  it("intervals of which the slowest counts: nearly even, the reserve spent over all of them", () => {
    const course = makeCourse(
      [1, 2, 3, 4].map((round) => [
        { move: row, amount: 400, unit: "metres" as const },
        { move: burpee, amount: 12 },
        { rest: { kind: "until", clock: seconds(240 * round) } },
      ]),
    );
    const score = { kind: "slowest-interval", of: "time", restCounts: true } as const;
    const { pacing } = paced(inputFor(course, score, athlete()));
    const times = pacing.rounds.map((round) => round.seconds);
    expect(Math.max(...times) / Math.min(...times)).toBeLessThan(1.04);
    expect(pacing.result.target).toBeCloseTo(Math.max(...times), 6);
  });

  it("a movement the athlete cannot do: stands before it", () => {
    const unable = plainCapacity({ ...TASKS, clean: { sustainable: 5, possible: false } });
    const course = makeAmrap([{ move: burpee, amount: 10 }, { move: clean, amount: 5 }], 300); // prettier-ignore
    const { pacing } = paced(inputFor(course, forReps, unable));
    expect(pacing.result.target).toBe(10);
    expect(pacing.ending).toBe("stopped-by-cap");
  });

  it("work that may be cut up freely: cut finely where muscles limit, so that it is quicker than as written", () => {
    const lines = (group: boolean): readonly Line[] =>
      ([[pullUp, 60], [airSquat, 180]] as const).map(([move, amount]) => ({
        move,
        amount,
        ...(group ? { more: { freeGroup: 1 } } : {}),
      })); // prettier-ignore
    const limited = athlete(1, 0.4);
    const free = paced(inputFor(makeCourse([lines(true)]), forTime, limited)).pacing;
    const written = paced(inputFor(makeCourse([lines(false)]), forTime, limited)).pacing;
    expect(free.duration).toBeLessThan(written.duration);
    expect(free.rounds.length).toBeGreaterThan(1);
  });

  it("a part after another: starts with what is left of the body", () => {
    const first = paced(inputFor(couplet, forTime, athlete()));
    const after = (rest: number) =>
      paced(inputFor(couplet, forTime, athlete(), { before: { state: first.after, rest: seconds(rest) } }))
        .pacing.duration;
    expect(after(60)).toBeGreaterThan(first.pacing.duration);
    expect(after(3600)).toBeLessThan(after(60));
    expect(after(36000)).toBeCloseTo(first.pacing.duration, 1);
  });

  it("early performances: their shape moves the rounds by its weight", () => {
    const rounds = makeCourse([1, 2, 3].map(() => [{ move: burpee, amount: 20 }])); // prettier-ignore
    const share = (weight: number): number => {
      const shape = { weight, relativeByRound: [0.9, 1, 1.1] };
      const { rounds: paces } = paced(inputFor(rounds, forTime, athlete(), { shape })).pacing;
      return (paces[2]?.seconds ?? 0) / (paces[0]?.seconds ?? 1);
    };
    expect(share(0.5)).toBeGreaterThan(share(0));
    expect(share(1)).toBeGreaterThan(share(0.5));
  });
});

describe("landmarks", () => {
  const { pacing } = paced(inputFor(makeCourse([1, 2, 3, 4, 5].map(() => triplet)), forTime, athlete()));

  it("the first round has a ceiling a little faster than planned", () => {
    expect(pacing.ceiling?.round).toBe(1);
    expect(pacing.ceiling?.seconds).toBeLessThan(pacing.rounds[0]?.seconds ?? 0);
    expect(pacing.ceiling?.seconds).toBeGreaterThan(0.6 * (pacing.rounds[0]?.seconds ?? 0));
  });

  it("there is a round where it gets hard, and two thresholds before it", () => {
    expect(pacing.hard?.round).toBeGreaterThan(1);
    expect(pacing.ifThen.map(({ when }) => when)).toEqual(["later-than", "earlier-than"]);
    const [later, earlier] = pacing.ifThen;
    expect(later?.clock).toBe((later?.planned ?? 0) + 10);
    expect(earlier?.clock).toBe((earlier?.planned ?? 0) - 10);
    expect(later?.round).toBeLessThan(pacing.hard?.round ?? 0);
    expect(later?.projected).toBeGreaterThan(pacing.result.target);
    expect(earlier?.projected).toBeLessThan(pacing.result.target);
  });

  it("work of one round has a start by its stations, and a check that changes something", () => {
    const stations = [40, 25, 40, 25, 40].flatMap((amount) => triplet.map((one) => ({ ...one, amount })));
    const long = paced(inputFor(makeCourse([stations]), forTime, athlete())).pacing;
    const start = long.rows.find(({ index }) => index === long.ceiling?.row);
    expect(start?.shareOfWork).toBeGreaterThan(0.15);
    expect(start?.shareOfWork).toBeLessThan(0.5);
    expect(long.ceiling?.seconds).toBeLessThan(start?.end ?? 0);
    expect(long.ceiling?.seconds).toBeGreaterThan(0.7 * (start?.end ?? 0));
    const [behind, ahead] = long.ifThen;
    expect(behind?.when).toBe("later-than");
    expect(["smaller-sets", "pace-at"]).toContain(behind?.action.kind);
    expect(behind?.projected).toBeGreaterThan(long.result.target);
    expect(ahead?.projected).toBeLessThan(long.result.target);
  });

  it("there is a movement that limits and another to breathe on", () => {
    expect(pacing.roles.limiter).toBe("burpee");
    expect(pacing.roles.breather).not.toBe("burpee");
  });

  it("checkpoints are the ends of rounds, at most eight, the last among them", () => {
    expect(pacing.checkpoints).toEqual(pacing.rounds.map(({ lastRow }) => lastRow));
    const many = paced(
      inputFor(makeCourse(Array.from({ length: 20 }, () => triplet)), forTime, athlete()),
    ).pacing;
    expect(many.checkpoints.length).toBeLessThanOrEqual(8);
    expect(many.checkpoints.at(-1)).toBe(many.rows.length - 1);
  });

  it("every round has its good and its bad day", () => {
    for (const { days, seconds: planned } of pacing.rounds) {
      expect(days?.hopeful).toBeLessThanOrEqual(planned * 1.01);
      expect(days?.cautious).toBeGreaterThanOrEqual(planned * 0.99);
    }
  });
});

describe("the range", () => {
  const width = (error: number, basis: "tested" | "level"): number => {
    const capacity = plainCapacity({ burpee: { sustainable: 4.2, kappa: 1.7, error, basis } });
    const { result } = paced(
      inputFor(makeCourse([[{ move: burpee, amount: 100 }]]), forTime, capacity),
    ).pacing;
    return (result.cautious - result.hopeful) / result.target;
  };

  it("is wider with less data", () => {
    expect(width(0.13, "level")).toBeGreaterThan(1.5 * width(0.03, "tested"));
  });

  it("of a tested athlete is that of two results of a repeated test: a CV of 3.9 to 7.3 %", () => {
    // Engel et al. 2019, twelve-minute conditioning test. From the 10th to the 90th percentile are 2.56 standard deviations: 0.10 to 0.19.
    expect(width(0.03, "tested")).toBeGreaterThan(0.08);
    expect(width(0.03, "tested")).toBeLessThan(0.19);
  });

  it("names the one test that would narrow it most", () => {
    const capacity = plainCapacity({
      burpee: { sustainable: 4.2, error: 0.03 },
      "pull-up": { sustainable: 2.6, error: 0.15, held: true, unbroken: 20 },
    });
    const course = makeCourse([1, 2, 3].map(() => [{ move: burpee, amount: 15 }, { move: pullUp, amount: 15 }])); // prettier-ignore
    const { sharpen, basis } = paced(inputFor(course, forTime, capacity));
    expect(sharpen?.movement).toBe("pull-up");
    expect(sharpen?.test).toEqual({ kind: "most-reps", minutes: 5, names: "pull ups" });
    expect(sharpen?.narrowsBy).toBeGreaterThan(0.1);
    expect(basis.map(({ movement, kind }) => [movement, kind])).toEqual([
      ["burpee", "tested"],
      ["pull-up", "tested"],
    ]);
  });

  it("names none where everything is tested", () => {
    const capacity = plainCapacity({ burpee: { sustainable: 4.2, error: 0.03 } });
    expect(
      paced(inputFor(makeCourse([[{ move: burpee, amount: 50 }]]), forTime, capacity)).sharpen,
    ).toBeUndefined();
  });
});

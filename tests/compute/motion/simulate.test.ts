import { describe, expect, it } from "vitest";
import type { Capacity } from "../../../src/compute/motion/movement-capacity.ts";
import { compileTrack } from "../../../src/compute/pacing/compile-track.ts";
import { rulesFor } from "../../../src/compute/motion/rules.ts";
import { singleTrack } from "../../../src/compute/search/single-track.ts";
import type { Track } from "../../../src/compute/motion/track.ts";
import { tasksOf } from "../../../src/compute/motion/track-task.ts";
import type { Course } from "../../../src/models/course.ts";
import { metres, seconds } from "../../../src/models/quantity.ts";
import { plainCapacity } from "../../support/capacities.ts";
import { type Line, makeAmrap, makeCourse } from "../../support/courses.ts";
import { burpee, pullUp, run } from "../../support/movements.ts";
import { forReps, forTime } from "../../support/paced.ts";
import { runAt } from "../../support/stretch.ts";

const steady = { driftRegular: 0, durabilityRegular: 0, mixedCost: 0 };
const rulesWith = (reserve: number, overrides: Record<string, number> = steady) =>
  rulesFor({ level: "regular", reserve: seconds(reserve), recoverySpeed: 1 }, overrides);

const capacity: Capacity = plainCapacity(
  {
    burpee: { sustainable: 4, fastest: 2, kappa: 1.5 },
    "pull-up": { sustainable: 2, fastest: 1, kappa: 2 },
    run: { sustainable: 0.25, fastest: 0.15, kappa: 2 },
  },
  { reserve: seconds(60) },
);

function trackOf(course: Course, rules = rulesWith(60), score = forTime): Track {
  const track = compileTrack(
    course,
    score,
    { taskOf: tasksOf(capacity, undefined), rules, floor: { between: metres(0) } },
    600,
  );
  if ("missing" in track) throw new Error(JSON.stringify(track.missing));
  return track;
}

describe("an effort above the critical rate", () => {
  // Critical power 250 W and W' 20 kJ are a reserve of 80 s. At 350 W a second costs 1.4: t = W' / (P - CP) = 200 s; at 300 W 400 s.
  it.each([
    [350, 200],
    [300, 400],
  ])("at %i W empties a reserve of 20 kJ over 250 W in %i s", (watts, limit) => {
    const rules = rulesWith(80);
    const at = (horizon: number): number => {
      const { state } = runAt(singleTrack(1, 1, 0.01), rules, 250 / watts, { horizon });
      return (state.fast + state.slow) / 80;
    };
    expect(at(limit - 2)).toBeGreaterThan(0);
    expect(at(limit - 0.01)).toBeCloseTo(0, 3);
    expect(at(limit / 2)).toBeCloseTo(0.5, 6);
  });

  it("costs the rate to the power of the movement", () => {
    // Twice the sustainable rate at kappa 1.5 costs 2^1.5 = 2.828 a second, so 10 s drain 18.28 of 60 s.
    const { state } = runAt(singleTrack(1.5, 1, 0.01), rulesWith(60), 0.5, { horizon: 10 });
    expect(60 - state.fast - state.slow).toBeCloseTo(18.284, 2);
    expect(state.worked).toBeCloseTo(20, 6);
  });

  it("costs more as the reserve empties, by the drift", () => {
    // At the sustainable rate with drift 0.5 a second costs 1 + 0.5 u and u' = 0.5 u / 60: from u = 0 nothing is ever drained.
    const rules = rulesWith(60, { ...steady, driftRegular: 0.5 });
    const still = runAt(singleTrack(1, 1, 0.01), rules, 1, { horizon: 300 }).state;
    expect(still.fast + still.slow).toBeCloseTo(60, 6);
    // At 1.2 times it costs 1.2 (1 + 0.5 u): u' = (0.2 + 0.6 u) / 60, so u(60 s) = (e^0.6 - 1) / 3 = 0.274.
    const { state } = runAt(singleTrack(1, 1, 0.01), rules, 1 / 1.2, { horizon: 60 });
    expect(1 - (state.fast + state.slow) / 60).toBeCloseTo((Math.exp(0.6) - 1) / 3, 2);
  });

  it("is bounded by the fastest cycle", () => {
    const { state } = runAt(singleTrack(1, 1, 0.8), rulesWith(600), 0.1, { horizon: 100 });
    expect(state.worked).toBeCloseTo(125, 6);
  });
});

describe("an empty reserve", () => {
  it("forces a slow stretch until some of it is back, and a careful effort after it", () => {
    // 2 a second empty 60 s after 60 s (120 sustainable seconds done). Then 0.6 a second until 12 % is back, then 0.95.
    const rules = rulesWith(60);
    const emptied = runAt(singleTrack(1, 1, 0.01), rules, 0.5, { horizon: 60 }).state;
    expect(emptied.worked).toBeCloseTo(120, 4);
    const soon = runAt(singleTrack(1, 1, 0.01), rules, 0.5, { horizon: 64 }).state;
    expect(soon.worked - emptied.worked).toBeCloseTo(0.6 * 4, 1);
    expect(soon.slowing).toBe(true);
    const later = runAt(singleTrack(1, 1, 0.01), rules, 0.5, { horizon: 300 }).state;
    const latest = runAt(singleTrack(1, 1, 0.01), rules, 0.5, { horizon: 400 }).state;
    expect(latest.blown).toBe(true);
    expect(latest.worked - later.worked).toBeCloseTo(95, 4);
    expect(latest.least).toBe(0);
  });

  it("may go into debt only while an effort is searched", () => {
    const { state } = runAt(singleTrack(1, 1, 0.01), rulesWith(60), 0.5, { horizon: 90, mayOwe: true });
    expect((state.fast + state.slow) / 60).toBeCloseTo(-0.5, 3);
  });
});

describe("work past twenty minutes", () => {
  it("takes longer by a power of the work done", () => {
    // Past 1200 sustainable seconds each takes (w / 1200)^0.1; from 1200 to 2400 that is 1200 x (2^1.1 - 1) / 1.1 = 1247.6 s.
    const rules = rulesWith(60, { ...steady, durabilityRegular: 0.1 });
    const track = { ...singleTrack(1, 1, 0.01), kind: new Uint8Array([0]), amount: new Float64Array([2400]) };
    // The planned pace is so slow that the critical rate of the tired athlete is never passed.
    const { state } = runAt(track, rules, 1, {
      by: "effort",
      cost: new Float64Array([1]),
      lift: new Float64Array([1]),
    });
    expect(state.clock).toBeCloseTo(1200 + (1200 * (2 ** 1.1 - 1)) / 1.1, 0);
  });
});

describe("rests", () => {
  const two = (between: Line): readonly (readonly Line[])[] => [
    [{ move: burpee, amount: 10 }, between, { move: burpee, amount: 10 }],
  ];

  it("last as long as they are said to, until a clock, or as long as the work", () => {
    const pace = 4;
    const clocks = [
      two({ rest: { kind: "exactly", time: seconds(30) } }),
      two({ rest: { kind: "until", clock: seconds(100) } }),
      two({ rest: { kind: "as-long-as-work", times: 2 } }),
    ].map((rounds) => runAt(trackOf(makeCourse(rounds)), rulesWith(60), pace).state.clock);
    // 40 s of work each: 40 + 30 + 40; 100 + 40; 40 + 80 + 40.
    expect(clocks).toEqual([110, 140, 160].map((clock): unknown => expect.closeTo(clock, 6)));
  });

  it("that do not count are told apart from the clock", () => {
    const course = makeCourse(two({ rest: { kind: "exactly", time: seconds(30) }, counted: false }));
    const { state } = runAt(trackOf(course), rulesWith(60), 4);
    expect([state.clock, state.uncounted]).toEqual([expect.closeTo(110, 6), 30]);
  });

  it("of everybody break the work off and let it go on", () => {
    const course = makeCourse([[{ move: burpee, amount: 20 }]], {
      pauses: [{ from: seconds(30), to: seconds(90) }],
    });
    // Seven of 4 s until 0:28, the eighth is broken off at 0:30 and done anew: 90 s and thirteen more.
    expect(runAt(trackOf(course), rulesWith(60), 4).state.clock).toBeCloseTo(142, 6);
  });

  it("of everybody break a hold off, and what was held when each of them began is kept", () => {
    const course = makeCourse([[{ move: burpee, amount: 120, unit: "seconds" }]], {
      pauses: [
        { from: seconds(30), to: seconds(50) },
        { from: seconds(90), to: seconds(100) },
      ],
    });
    const { state, bench } = runAt(trackOf(course), rulesWith(60), 1);
    // 30 s until the first pause, 40 s more until the second; the hold of 120 s and 30 s of pauses end at 150 s.
    expect([...bench.log.atPause]).toEqual([30, 70].map((held): unknown => expect.closeTo(held, 6)));
    expect(state.clock).toBeCloseTo(150, 6);
  });
});

describe("clocks", () => {
  it("stop an AMRAP in the middle of a round", () => {
    const course = makeAmrap(
      [
        { move: burpee, amount: 5 },
        { move: pullUp, amount: 5 },
      ],
      100,
    );
    const track = trackOf(course, rulesWith(60, { ...steady, transitionRegular: 0 }));
    const paces = Array.from({ length: track.length }, (_, i) => (i % 2 === 0 ? 4 : 2));
    const { state } = runAt(track, rulesWith(60), paces, { horizon: 100 });
    expect(state.stopped).toBe("horizon");
    // A round takes 20 + 10 s: three rounds in 90 s are 30 reps, and 10 s of the fourth are 2.5 more.
    expect(state.score).toBeCloseTo(32.5, 6);
  });

  it("give a window its time, the way to the station included", () => {
    const window = { kind: "for", time: seconds(60) } as const;
    const rounds: Line[][] = [
      [
        { move: burpee, amount: window },
        { move: pullUp, amount: window },
      ],
    ];
    const rules = rulesWith(60, { ...steady, transitionRegular: 1 });
    const track = trackOf(makeCourse(rounds), rules, forReps);
    track.transition[1] = 10;
    const { state, bench } = runAt(track, rules, [4, 2]);
    expect(state.clock).toBeCloseTo(120, 6);
    expect([...bench.log.done]).toEqual([expect.closeTo(15, 6), expect.closeTo(25, 6)]);
  });

  it("end the part at a deadline that is missed, or leave the rest of the interval undone", () => {
    const deadline = (onMiss: "part-ends" | "work-is-left"): Line => ({
      move: burpee,
      amount: 20,
      more: { deadline: { clock: seconds(60), onMiss } },
    });
    const next: Line = { move: pullUp, amount: 10 };
    const ended = runAt(trackOf(makeCourse([[deadline("part-ends"), next]])), rulesWith(60), [4, 2]);
    expect([ended.state.stopped, ended.state.clock, ended.state.score]).toEqual([
      "deadline",
      60,
      expect.closeTo(15, 6),
    ]);
    const left = runAt(trackOf(makeCourse([[deadline("work-is-left"), next]])), rulesWith(60), [4, 2]);
    expect([left.state.stopped, left.state.score]).toEqual(["no", expect.closeTo(25, 6)]);
  });

  it("pass over the rest of a group once its amounts add up to the total", () => {
    const some = (amount: number): Line => ({
      move: burpee,
      amount,
      more: { accumulates: { group: 1, total: 12 } },
    });
    const rounds = [1, 2, 3, 4].map(
      () => [some(5), { rest: { kind: "exactly", time: seconds(10) } }] as Line[],
    );
    const course = makeCourse([...rounds, [{ move: pullUp, amount: 3 }]]);
    const { state, bench } = runAt(trackOf(course), rulesWith(60), [4, 0, 4, 0, 4, 0, 4, 0, 2]);
    expect([...bench.log.done].filter((_, i) => i % 2 === 0)).toEqual(
      [5, 5, 2, 0, 3].map((done): unknown => expect.closeTo(done, 6)),
    );
    expect(state.score).toBeCloseTo(15, 6);
  });
});

describe("an interval whose rest grows with haste", () => {
  it("is done at the critical rate when that is in time, and faster when it is not", () => {
    const every = (amount: number): Line[][] => [
      [{ move: run, amount }, { rest: { kind: "until", clock: seconds(120) } }],
      [{ move: run, amount: 10 }],
    ];
    const fixed = { kind: "reps", restCounts: true } as const;
    const rules = rulesWith(60);
    // 300 m at 0.25 s are 75 s. 460 m are 115 s, but 8 % of the interval are to be left: (1 - 0.08) x 120 = 110.4 s.
    const easy = runAt(trackOf(makeCourse(every(300)), rules, fixed), rules, 0.25);
    expect(easy.bench.log.ended[0]).toBeCloseTo(75, 6);
    const tight = runAt(trackOf(makeCourse(every(460)), rules, fixed), rules, 0.25);
    expect(tight.bench.log.ended[0]).toBeCloseTo(110.4, 6);
  });
});

import { earlyFault } from "../../../src/wording/early-fault.ts";
import { describe, expect, it } from "vitest";
import { readRounds } from "../../../src/compute/early-splits/read-rounds.ts";
import type { Course } from "../../../src/models/course.ts";
import { seconds } from "../../../src/models/quantity.ts";
import { sayFault } from "../../../src/reading/say-fault.ts";
import type { EarlyPerformance } from "../../../src/models/workout.ts";
import { type Line, makeCourse } from "../../support/courses.ts";
import { couplet, seenBy } from "../../support/early.ts";
import { burpee, pullUp } from "../../support/movements.ts";

const byRound = (performance: EarlyPerformance, course: Course): readonly (readonly [number, number])[] => {
  const read = readRounds(performance, course);
  if (!read.ok) throw new Error(sayFault(earlyFault(read.trouble)));
  return [...read.seconds];
};
const work: readonly Line[] = [
  { move: pullUp, amount: 10 },
  { move: burpee, amount: 10 },
];
const rest = (of: Extract<Line, { rest: unknown }>["rest"]): Line => ({ rest: of });
const minute = rest({ kind: "exactly", time: seconds(60) });

describe("the rounds of a performance", () => {
  it("are the steps of the clock from round to round", () => {
    expect(byRound(seenBy([70, 150, 240]), couplet([10, 10, 10]))).toEqual([
      [1, 70],
      [2, 80],
      [3, 90],
    ]);
  });

  it("are made of their lines, and one left off in the middle is not told", () => {
    const lines = seenBy([30, 70, 105, 150, 190], { after: "line" });
    expect(byRound(lines, couplet([10, 10, 10]))).toEqual([
      [1, 70],
      [2, 80],
    ]);
  });

  it("take the pieces of a complex as one line", () => {
    const complex = makeCourse([
      [
        { move: pullUp, amount: 1, more: { joinedToNext: true, line: 1 } },
        { move: burpee, amount: 1, more: { line: 1 } },
      ],
      [{ move: burpee, amount: 5, more: { line: 2 } }],
    ]);
    expect(byRound(seenBy([8, 30], { after: "line" }), complex)).toEqual([
      [1, 8],
      [2, 22],
    ]);
  });

  it("leave out rests between them", () => {
    // 70 s, a minute's rest to 130, 80 s.
    expect(byRound(seenBy([70, 210]), makeCourse([[...work, minute], work]))).toEqual([
      [1, 70],
      [2, 80],
    ]);
  });

  it("leave out what is left of an interval, which may be nothing", () => {
    // Second round from 2:00, third late from 4:05 instead of 4:00.
    const every = (clock: number): Line => rest({ kind: "until", clock: seconds(clock) });
    const course = makeCourse([[...work, every(120)], [...work, every(240)], work]);
    expect(byRound(seenBy([100, 245, 340]), course)).toEqual([
      [1, 100],
      [2, 125],
      [3, 95],
    ]);
  });

  it("leave out a rest as long as the work before it, as far as that is known", () => {
    const asLong = rest({ kind: "as-long-as-work", times: 1 });
    // 70 s of work, rest to 140, 80 s of work, rest to 300, 90 s.
    expect(byRound(seenBy([70, 220, 390]), makeCourse([[...work, asLong], [...work, asLong], work]))).toEqual(
      [
        [1, 70],
        [2, 80],
        [3, 90],
      ],
    );
    // A fixed rest inside the second round hides how long the work since it was.
    const split: readonly Line[] = [{ move: pullUp, amount: 10 }, minute, { move: burpee, amount: 10 }];
    expect(
      byRound(seenBy([70, 300, 480]), makeCourse([[...work, asLong], [...split, asLong], work])),
    ).toEqual([
      [1, 70],
      [2, 100],
    ]);
  });

  it("are unknown after a rest of at least so long, and inside one of unknown start", () => {
    const open = rest({ kind: "at-least", time: seconds(60) });
    expect(byRound(seenBy([70, 250, 330]), makeCourse([[...work, open], work, work]))).toEqual([
      [1, 70],
      [3, 80],
    ]);
    const inside: readonly Line[] = [
      { move: pullUp, amount: 10 },
      rest({ kind: "until", clock: seconds(60) }),
      { move: burpee, amount: 10 },
    ];
    expect(byRound(seenBy([110, 180]), makeCourse([inside, work]))).toEqual([[2, 70]]);
    expect(byRound(seenBy([40, 110], { after: "line" }), makeCourse([inside]))).toEqual([[1, 90]]);
  });

  it("leave out pauses of the clock in which nobody works", () => {
    const course = couplet([10, 10], { pauses: [{ from: seconds(120), to: seconds(180) }] });
    expect(byRound(seenBy([100, 240]), course)).toEqual([
      [1, 100],
      [2, 80],
    ]);
  });
});

describe("a performance that cannot be read", () => {
  const told = (performance: EarlyPerformance, course: Course): string => {
    const read = readRounds(performance, course);
    return read.ok ? "" : sayFault(earlyFault(read.trouble));
  };

  it("has more clocks than rounds", () => {
    expect(told(seenBy([30, 70, 105]), couplet([10, 10]))).toBe(
      [
        "content/workouts/made.mdx:12:5: Fault",
        "  found    3 splits",
        '  wrong    part workout has 2 rounds, fewer than the splits of "a made athlete"',
        "  allowed  at most 2",
        "  to do    Write one clock for the end of each round, or `after: line` if they were read after every line.",
      ].join("\n"),
    );
  });

  it("has more clocks than lines", () => {
    expect(told(seenBy([30, 70], { after: "line" }), makeCourse([[{ move: burpee, amount: 10 }]]))).toBe(
      [
        "content/workouts/made.mdx:12:5: Fault",
        "  found    2 splits",
        '  wrong    part workout has 1 line, fewer than the splits of "a made athlete"',
        "  allowed  at most 1",
        "  to do    Leave out the clocks at the end of rests, and count the pieces of a complex as one line.",
      ].join("\n"),
    );
  });

  it("has a clock before the work could begin", () => {
    expect(told(seenBy([70, 125]), makeCourse([[...work, minute], work]))).toBe(
      [
        "content/workouts/made.mdx:12:5: Fault",
        "  found    2:05",
        '  wrong    part workout of "a made athlete": the rest before this work ends at 2:10, so nothing can be done by then',
        "  allowed  a clock after 2:10",
        "  to do    Write the clock of the part, which runs on through rests, at the end of the work.",
      ].join("\n"),
    );
  });
});

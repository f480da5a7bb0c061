import { describe, expect, it } from "vitest";
import type { MovementCapacity } from "../../../src/compute/motion/movement-capacity.ts";
import { compileTrack } from "../../../src/compute/pacing/compile-track.ts";
import { rulesFor } from "../../../src/compute/motion/rules.ts";
import type { Track } from "../../../src/compute/motion/track.ts";
import { tasksOf } from "../../../src/compute/motion/track-task.ts";
import type { Course } from "../../../src/models/course.ts";
import { metres, seconds } from "../../../src/models/quantity.ts";
import type { Score } from "../../../src/models/workout.ts";
import { plainCapacity } from "../../support/capacities.ts";
import { makeCourse } from "../../support/courses.ts";
import { burpee, pullUp, row } from "../../support/movements.ts";
import { forTime } from "../../support/paced.ts";

const NO_PACE = { kind: "no-pace", movement: "burpee", unit: "calories", counted: "reps" } as const;
const capacity = plainCapacity({
  burpee: { sustainable: 4, fastest: 2 },
  "pull-up": { sustainable: 2, fastest: 1, unbroken: 15 },
  row: { sustainable: 0.24 },
});

function compile(course: Course, score: Score = forTime, expected = 600, of = capacity): Track {
  const rules = rulesFor(of);
  const track = compileTrack(
    course,
    score,
    { taskOf: tasksOf(of, course.worn), rules, floor: { between: metres(5) } },
    expected,
  );
  if ("missing" in track) throw new Error(JSON.stringify(track.missing));
  return track;
}

const until = (clock: number) => ({ rest: { kind: "until", clock: seconds(clock) } }) as const;

describe("a compiled track", () => {
  it("holds one entry per item with the numbers of its task", () => {
    const track = compile(makeCourse([[{ move: burpee, amount: 10 }, until(60), { move: pullUp, amount: 5 }]])); // prettier-ignore
    expect([...track.amount]).toEqual([10, 0, 5]);
    expect([...track.task]).toEqual([0, -1, 1]);
    expect([...track.least]).toEqual([2, 0, 1]);
    // A step is a rep, at most six sustainable seconds, or three where there are no reps.
    expect(compile(makeCourse([[{ move: row, amount: 500 }]])).rep[0]).toBe(3);
  });

  it("makes work of several movements dearer, a single movement not", () => {
    expect(compile(makeCourse([[{ move: burpee, amount: 10 }]])).perUnit[0]).toBe(4);
    // 40 s of burpees and 40 s of pull-ups, two ordered pairs of half and half: 1 + 0.4 x 0.5 x (1 - e^(-600/600)) = 1.126.
    const couplet = makeCourse([[{ move: burpee, amount: 10 }, { move: pullUp, amount: 20 }]]); // prettier-ignore
    const factor = 1 + 0.4 * 0.5 * (1 - Math.exp(-1));
    expect(compile(couplet).perUnit[0]).toBeCloseTo(4 * factor, 9);
    // A sprint hardly shows it: 60 s give 1 + 0.2 x 0.095.
    expect(compile(couplet, forTime, 60).perUnit[0]).toBeCloseTo(4 * (1 + 0.2 * (1 - Math.exp(-0.1))), 9);
    // A machine mixes 0.32 times as much: 96 s of rowing and 40 s of burpees.
    const rowing = makeCourse([[{ move: burpee, amount: 10 }, { move: row, amount: 400 }]]); // prettier-ignore
    const little = 1 + 0.4 * ((2 * 40 * 96) / 136 ** 2) * 0.32 * (1 - Math.exp(-1));
    expect(compile(rowing).perUnit[0]).toBeCloseTo(4 * little, 9);
    // Speed there costs effort to the power 1.6: dearer by a factor is slower by that root of it.
    expect(compile(rowing).perUnit[1]).toBeCloseTo(0.24 * little ** (1 / 1.6), 9);
  });

  it("takes the athlete's own pace for the length of the part", () => {
    const byDuration: MovementCapacity["byDuration"] = { seconds: [100, 500], factors: [0.9, 1.1] };
    const own = plainCapacity({ burpee: { sustainable: 4, byDuration } });
    const course = makeCourse([[{ move: burpee, amount: 10 }]]);
    // Half way between the two lengths the factor is 1.
    expect(compile(course, forTime, 300, own).perUnit[0]).toBeCloseTo(4, 9);
    expect(compile(course, forTime, 9000, own).perUnit[0]).toBeCloseTo(4.4, 9);
  });

  it("parts the work at rests worth the name, not at a breath", () => {
    const rest = (time: number) => ({ rest: { kind: "exactly", time: seconds(time) } }) as const;
    const course = (time: number) =>
      makeCourse([[{ move: burpee, amount: 10 }, rest(time), { move: burpee, amount: 10 }]]);
    expect(compile(course(60)).sections).toBe(2);
    expect(compile(course(10)).sections).toBe(1);
  });

  it("knows by when an interval's work should be done where finishing sooner wins nothing", () => {
    const course = makeCourse([
      [{ move: burpee, amount: 10 }, { move: pullUp, amount: 5 }, until(120)],
      [
        { move: burpee, amount: 10 },
        { move: pullUp, amount: 5 },
      ],
    ]);
    const track = compile(course, { kind: "reps", restCounts: true });
    // 8 % of the interval are left over; after the burpees 5 pull-ups and the way to them remain.
    expect(track.needBy[0]).toBeCloseTo(110.4, 9);
    expect(track.workAfter[0]).toBeCloseTo(5 * (track.perUnit[1] ?? 0), 9);
    expect(track.transitionsAfter[0]).toBeCloseTo(track.transition[1] ?? 0, 9);
    // The last interval ends the work, so there haste pays.
    expect(track.needBy[3]).toBe(Infinity);
  });

  it("paces intervals freely where their times are the score", () => {
    const rounds = [[{ move: burpee, amount: 10 }, until(120)], [{ move: burpee, amount: 10 }]] as const;
    const slowest: Score = { kind: "slowest-interval", of: "time", restCounts: true };
    expect(compile(makeCourse(rounds), slowest).needBy[0]).toBe(Infinity);
    expect(compile(makeCourse(rounds), { kind: "time", restCounts: false }).needBy[0]).toBe(Infinity);
  });

  it("puts the rests between the visits of a group into the group", () => {
    const some = { move: burpee, amount: 5, more: { accumulates: { group: 3, total: 12 } } };
    const track = compile(makeCourse([[some, until(60), some, until(120), { move: pullUp, amount: 3 }]]));
    expect([...track.group]).toEqual([3, 3, 3, -1, -1]);
  });

  it("tells everything that is missing at once", () => {
    const none = { ...capacity, of: () => ({ missing: NO_PACE }) };
    const rules = rulesFor(none);
    const course = makeCourse([[{ move: burpee, amount: 1 }, { move: pullUp, amount: 1 }]]); // prettier-ignore
    const track = compileTrack(
      course,
      forTime,
      { taskOf: tasksOf(none, undefined), rules, floor: { between: metres(5) } },
      600,
    );
    expect(track).toEqual({ missing: [NO_PACE] });
  });
});

describe("a choice of movements", () => {
  const course = makeCourse([[{ move: burpee, amount: 10, more: { alternatives: [pullUp] } }]]);

  it("goes to the one that takes the athlete least", () => {
    expect(compile(course).tasks[0]?.movement.id).toBe("pull-up");
  });

  it("never goes to one the athlete cannot do", () => {
    const unable = plainCapacity({
      burpee: { sustainable: 4 },
      "pull-up": { sustainable: 2, possible: false },
    });
    expect(compile(course, forTime, 600, unable).tasks[0]?.movement.id).toBe("burpee");
  });
});

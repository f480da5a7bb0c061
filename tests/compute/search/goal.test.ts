import { describe, expect, it } from "vitest";
import { compileTrack } from "../../../src/compute/pacing/compile-track.ts";
import { goalOf, intervalsOf } from "../../../src/compute/search/goal.ts";
import { lossOf } from "../../../src/compute/search/loss.ts";
import { rulesFor } from "../../../src/compute/motion/rules.ts";
import type { Track } from "../../../src/compute/motion/track.ts";
import { tasksOf } from "../../../src/compute/motion/track-task.ts";
import { metres, seconds } from "../../../src/models/quantity.ts";
import type { Score } from "../../../src/models/workout.ts";
import { plainCapacity } from "../../support/capacities.ts";
import { makeCourse } from "../../support/courses.ts";
import { burpee } from "../../support/movements.ts";
import { runAt } from "../../support/stretch.ts";

const capacity = plainCapacity({ burpee: { sustainable: 4, fastest: 2 } }, { reserve: seconds(500) });
const rules = rulesFor(capacity, { driftRegular: 0 });
// Speed is scored, so the paces given are kept.
const free: Score = { kind: "slowest-interval", of: "time", restCounts: true };

/** Three rounds of ten burpees, started every minute. */
const rounds = [1, 2, 3].map((round) => [
  { move: burpee, amount: 10 },
  { rest: { kind: "until", clock: seconds(60 * round) } },
]) as Parameters<typeof makeCourse>[0];

function track(score: Score = free): Track {
  const compiled = compileTrack(
    makeCourse(rounds),
    score,
    { taskOf: tasksOf(capacity, undefined), rules, floor: { between: metres(0) } },
    180,
  );
  if ("missing" in compiled) throw new Error("missing");
  return compiled;
}

describe("the goal of a score", () => {
  it.each([
    ["time", { kind: "time", restCounts: true }],
    ["reps", { kind: "score" }],
    ["rounds-and-reps", { kind: "score" }],
    ["calories", { kind: "score" }],
    ["lowest-interval", { kind: "interval", of: "score", which: "worst" }],
    ["slowest-interval", { kind: "interval", of: "time", which: "worst" }],
    ["highest-interval", { kind: "interval", of: "score", which: "best" }],
    ["sum-of-lowest", { kind: "interval", of: "score", which: "sum-of-worst" }],
    ["intervals-completed", { kind: "survive" }],
  ] as const)("%s is understood", (kind, goal) => {
    expect(goalOf({ kind, of: "reps", restCounts: true })).toEqual(goal);
  });

  it("takes the fastest interval where times are scored", () => {
    expect(goalOf({ kind: "highest-interval", of: "time", restCounts: true })).toEqual({
      kind: "interval",
      of: "time",
      which: "best",
    });
  });
});

describe("intervals of a run", () => {
  it("tell score, time of the work and end of each", () => {
    const way = track();
    const { state, bench } = runAt(way, rules, [4, 0, 3, 0, 5, 0]);
    const intervals = intervalsOf(way, bench.log, state.at);
    expect(intervals.map(({ score }) => Math.round(score))).toEqual([10, 10, 10]);
    expect(intervals.map(({ time }) => Math.round(time))).toEqual([40, 30, 50]);
    expect(intervals.every(({ complete }) => complete)).toBe(true);
    expect(intervals.map(({ ends }) => Math.round(ends))).toEqual([40, 90, 170]);
  });
});

describe("how bad a run is", () => {
  it("is the slowest interval, the fastest one, or all the work by the score's goal", () => {
    const way = track();
    const { state, bench } = runAt(way, rules, [4, 0, 3, 0, 5, 0]);
    const loss = (score: Score): number => lossOf(goalOf(score), way, state, bench.log);
    expect(loss(free)).toBeCloseTo(50, 6);
    expect(loss({ kind: "highest-interval", of: "time", restCounts: true })).toBeCloseTo(30, 6);
    expect(loss({ kind: "lowest-interval", of: "reps", restCounts: true })).toBeCloseTo(-10, 6);
    expect(loss({ kind: "reps", restCounts: true })).toBeCloseTo(-30, 6);
    expect(loss({ kind: "intervals-completed", restCounts: true })).toBeCloseTo(-3, 6);
    // The clock ends at 180 s; of it 120 s are work.
    expect(loss({ kind: "time", restCounts: true })).toBeCloseTo(180, 6);
    expect(loss({ kind: "time", restCounts: false })).toBeCloseTo(120, 6);
  });

  it("counts what an interval left undone as if it had gone on at the sustainable rate", () => {
    const deadlines = rounds.map((lines, i) => [
      { ...lines[0], more: { deadline: { clock: seconds(60 * i + 30), onMiss: "work-is-left" } } },
      lines[1],
    ]) as Parameters<typeof makeCourse>[0];
    const compiled = compileTrack(
      makeCourse(deadlines),
      free,
      { taskOf: tasksOf(capacity, undefined), rules, floor: { between: metres(0) } },
      180,
    );
    if ("missing" in compiled) throw new Error("missing");
    const { state, bench } = runAt(compiled, rules, [4, 0, 4, 0, 4, 0]);
    // 7.5 reps in 30 s, 2.5 left at 4 s: 40 s.
    expect(lossOf(goalOf(free), compiled, state, bench.log)).toBeCloseTo(40, 6);
    expect(lossOf({ kind: "survive" }, compiled, state, bench.log)).toBeCloseTo(-0.75, 6);
  });
});

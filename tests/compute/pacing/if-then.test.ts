import { describe, expect, it } from "vitest";
import { seconds } from "../../../src/models/quantity.ts";
import { type Line, makeCourse } from "../../support/courses.ts";
import { amrapOf, demoBand, demoMovement, forTime, pacedAtDemo } from "../../support/pace-demo.ts";

const band = demoBand("competitor-men");
const some = (id: string, amount: number, kg?: number): Line => ({
  move: demoMovement(id),
  amount,
  ...(kg === undefined ? {} : { kg }),
});
const during = (id: string, kg?: number): Line => ({
  move: demoMovement(id),
  amount: { kind: "for", time: seconds(60) },
  ...(kg === undefined ? {} : { kg }),
});

describe("thresholds and the ceiling of the first round", () => {
  it("are on the clock where the athlete ends a round", () => {
    const round = [some("row", 30), some("burpee", 25)];
    const { ifThen, ceiling } = pacedAtDemo(band, makeCourse([round, round, round, round, round]), forTime);
    expect(ifThen.map(({ when }) => when)).toEqual(["later-than", "earlier-than"]);
    expect(ceiling?.score).toBeUndefined();
    // Under eight minutes nobody who is ahead is told to hold: there is no time for it to pay.
    const short = [some("row", 15), some("burpee", 12)];
    const early = pacedAtDemo(band, makeCourse([short, short, short, short, short]), forTime).ifThen;
    expect(early.map(({ when }) => when)).toEqual(["later-than"]);
  });

  it("are on what is done where the clock ends every round", () => {
    const rest: Line = { rest: { kind: "exactly", time: seconds(60) } };
    const round = [during("box-jump"), during("push-press", 35), rest];
    const course = makeCourse([round, round, round, round]);
    const { ifThen, ceiling, rounds } = pacedAtDemo(band, course, amrapOf(720));
    const [fewer, more] = ifThen;
    expect(ifThen.map(({ when }) => when)).toEqual(["fewer-than", "more-than"]);
    const there = rounds.find(({ round: number }) => number === fewer?.round);
    expect(fewer?.plannedScore).toBe(there?.scoreDone);
    expect(fewer?.score).toBeLessThan(there?.scoreDone ?? 0);
    expect(more?.score).toBeGreaterThan(there?.scoreDone ?? 0);
    expect(fewer?.projected).toBeLessThan(more?.projected ?? 0);
    // The clock of a round of two minutes' work cannot change, so the ceiling is an amount.
    expect(ceiling?.seconds).toBeCloseTo(120, 6);
    expect(ceiling?.score).toBeGreaterThanOrEqual(rounds[0]?.scoreDone ?? Infinity);
  });

  it("are none in minutes that fill up: the first is a trifle, and a few seconds early on change nothing", () => {
    const minutes = Array.from({ length: 40 }, (_, i): readonly Line[] => [
      {
        move: demoMovement("pull-up"),
        amount: i + 1,
        more: { deadline: { clock: seconds(60 * (i + 1)), onMiss: "part-ends" } },
      },
      { rest: { kind: "until", clock: seconds(60 * (i + 1)) } },
    ]);
    const { ifThen, ceiling, rounds } = pacedAtDemo(band, makeCourse(minutes), amrapOf(2400));
    expect(rounds.length).toBeGreaterThan(10);
    expect([ceiling, ifThen]).toEqual([undefined, []]);
  });

  it("are none where the result is the same either way", () => {
    // Three minutes of five burpees each: a day a little worse or better does just the same.
    const easy = Array.from({ length: 3 }, (_, i): readonly Line[] => [
      some("burpee", 5),
      { rest: { kind: "until", clock: seconds(60 * (i + 1)) } },
    ]);
    const course = makeCourse(easy);
    expect(pacedAtDemo(band, course, amrapOf(180)).ifThen).toEqual([]);
  });
});

describe("work out of reach", () => {
  it("is named with its load where the plan comes to it, from the start too", () => {
    const heavy = makeCourse([[some("row", 10), some("clean", 5, 220), some("row", 10)]]);
    const { outOfReach, whenStopped, rows } = pacedAtDemo(band, heavy, forTime);
    expect(outOfReach.map(({ name, load }) => [name, Math.round(load?.kilograms ?? 0)])).toEqual([
      ["clean", 220],
    ]);
    expect(whenStopped).toMatchObject({ atWall: true, row: 0 });
    expect(rows).toHaveLength(1);
    const first = pacedAtDemo(band, makeCourse([[some("clean", 5, 220)]]), forTime);
    expect(first.whenStopped).toMatchObject({ atWall: true, scoreDone: 0 });
    expect(first.rows).toEqual([]);
  });
});

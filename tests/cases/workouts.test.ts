import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Workout } from "../../src/models/workout.ts";
import { courseOf, effortsIn, sayCourse, sayItem, soundWorkout } from "../support/workout-notation.ts";

// Thirty workouts as they are really set in gyms, qualifiers and events; only their facts. Every expectation was counted
// by hand from the work as its event describes it.
const folder = new URL("workouts/", import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith(".mdx"));
const workouts = new Map(files.map((name) => [name.slice(0, -4), read(name)]));

function read(name: string): Workout {
  const text = readFileSync(new URL(name, folder), "utf8");
  return soundWorkout(text.replace(/^---\n/, "").replace(/\n---\n$/, ""));
}

function workout(id: string): Workout {
  const found = workouts.get(id);
  if (found === undefined) throw new Error(`there is no case ${id}`);
  return found;
}

/** Work that ends: how many visits, how many score units in all. */
const finite: readonly (readonly [string, string, number, number])[] = [
  ["w01", "men", 6, 90], // (21 + 15 + 9) x 2
  ["w02", "women", 1, 30],
  ["w04", "men", 5, 602], // 100 + 200 + 300, each run counting 1
  ["w05", "women", 9, 102], // 3 x (1 + 21 + 12)
  ["w07", "men", 10, 500], // 10 x 50
  ["w08", "women", 10, 300], // 2 x (50 + 40 + 30 + 20 + 10)
  ["w10", "scaled women 55+", 20, 180], // 10 x (8 + 10)
  ["w11", "men", 10, 225], // 150 + 5 x 15
  ["w13", "women", 36, 216], // 3 x (12 + 12 + 12 + 12 + 12 + 12)
  ["w16", "pro women", 16, 115], // 100 shots and 15 distances
  ["w17", "men", 12, 180], // 4 x (21 + 15 + 9)
  ["w18", "women", 9, 216], // 84 + 72 + 60
  ["w19", "men", 12, 132], // 6 x (10 + 12)
  ["w21", "men", 4, 4],
  ["w22", "women", 4, 4],
];

/** Work without end: the score of one round, and the first items of what is listed. */
const endless: readonly (readonly [string, string, number | undefined, readonly string[]])[] = [
  ["w03", "men", 30, ["5 pull-up", "10 push-up", "15 air-squat", "5 pull-up"]],
  ["w09", "women", 38, ["19 wall-ball-shot 14 lb", "19 calories row (19)", "19 wall-ball-shot 14 lb"]],
  [
    "w12",
    "men",
    136, // 2 x (10 + 16 + 8) twice
    [
      "15.24 metres front-rack-dumbbell-walking-lunge 2 x 50 lb (10)",
      "16 toes-to-bar",
      "8 dumbbell-power-clean 2 x 50 lb",
    ],
  ],
  ["w24", "women", undefined, ["3 clean-and-jerk 95 lb", "3 toes-to-bar", "6 clean-and-jerk 95 lb"]],
  ["w25", "men", 200, ["60 calories row (60)", "50 toes-to-bar", "40 wall-ball-shot 20 lb"]],
  ["w27", "men", undefined, ["1 pull-up", "rest until 60", "2 pull-up", "rest until 120"]],
];

describe("thirty workouts as they are really set", () => {
  it("are all here", () => {
    expect(files).toHaveLength(30);
  });

  it.each(finite)("%s for %s has its visits and its reps", (id, division, visits, total) => {
    const course = courseOf(workout(id), { division });
    expect(effortsIn(course)).toHaveLength(visits);
    expect(course.totalScore).toBe(total);
    expect(course.endless).toBe(false);
  });

  it.each(endless)("%s for %s goes on and on", (id, division, perRound, first) => {
    const course = courseOf(workout(id), { division });
    expect(course.endless).toBe(true);
    expect(course.totalScore).toBeUndefined();
    expect(course.perRound).toBe(perRound);
    expect(sayCourse(course).slice(0, first.length)).toEqual(first);
  });

  it("w04 lets the middle be cut up freely, and the vest be worn throughout", () => {
    const course = courseOf(workout("w04"), { division: "women" });
    expect(effortsIn(course).map((effort) => effort.freeGroup)).toEqual([undefined, 1, 1, 1, undefined]);
    expect(course.worn?.written).toEqual({ value: 14, unit: "lb" });
    expect(effortsIn(course)[0]?.written).toEqual({ value: 1, unit: "mile" });
  });

  it("w06 gives five stations a minute each, three times, and ends at 17:00", () => {
    const course = courseOf(workout("w06"), { division: "women" });
    expect(sayCourse(course).slice(3, 8)).toEqual([
      "max push-press 55 lb until 240 (1)",
      "max calories row until 300 (1)",
      "rest 60",
      "max wall-ball-shot 14 lb until 420 (1)",
      "max sumo-deadlift-high-pull 55 lb until 480 (1)",
    ]);
    expect(effortsIn(course)).toHaveLength(15);
    expect(course.ends).toBe(1020);
  });

  it("w10 has its own bar for each of ten divisions", () => {
    const loads = workout("w10").divisions.map((division) => {
      const [first] = effortsIn(courseOf(workout("w10"), { division }));
      return first?.load?.written.value;
    });
    expect(loads).toEqual([95, 65, 65, 45, 65, 45, 65, 45, 45, 35]);
  });

  it("w11 takes a tie-break time after every set of snatches", () => {
    const efforts = effortsIn(courseOf(workout("w11")));
    expect(efforts.map((effort) => effort.tieBreak)).toEqual(Array.from({ length: 10 }, (_, i) => i % 2 === 0));
  });

  it("w13 has a deadline for each window, and the loads rise with the windows", () => {
    const efforts = effortsIn(courseOf(workout("w13"), { division: "men" }));
    const deadlines = efforts.map((effort) => effort.deadline?.clock);
    expect([...new Set(deadlines)]).toEqual([480, 720, 960, 1200, 1440]);
    expect(efforts.every((effort) => effort.deadline?.onMiss === "part-ends")).toBe(true);
    const snatches = efforts.filter((effort) => effort.movement.id === "squat-snatch");
    expect(snatches.map((effort) => effort.load?.written.value)).toEqual(
      [95, 135, 185, 225, 245, 265].flatMap((pounds) => [pounds, pounds, pounds]),
    );
    expect(snatches.map(({ scores }) => scores)).toEqual(
      [6, 5, 4, 3, 2, 1].flatMap((reps) => [reps, reps, reps]),
    );
  });

  it("w14 ends in as many of the heaviest as fit", () => {
    const course = courseOf(workout("w14"), { division: "women" });
    expect(sayCourse(course).slice(-2)).toEqual(["10 burpee-to-target", "max snatch 120 lb (1)"]);
    expect(course.ends).toBe(1020);
  });

  it("w15 opens the bar at 9:00 and closes it at 15:00, wherever the first part ended", () => {
    const [first, second] = workout("w15").parts;
    expect(first?.score.kind).toBe("reps");
    expect(second).toMatchObject({
      start: { kind: "clock", at: 540 },
      score: { kind: "load" },
      loading: "help-allowed",
      lateLift: "counts",
    });
    const course = courseOf(workout("w15"), { part: "b" });
    expect(course.ends).toBe(360);
    expect(sayCourse(course)).toEqual(["1 clean-and-jerk any load (0)"]);
    expect(effortsIn(course)[0]?.lift).toEqual({});
  });

  it("w16 has a load for each of four divisions, and a target for women and men of all", () => {
    const efforts = effortsIn(courseOf(workout("w16"), { division: "pro women" }));
    expect(sayItem(efforts[11] ?? neverHere())).toBe("200 metres farmers-carry 2 x 24 kg (1)");
    expect(efforts.at(-1)?.load?.written).toEqual({ value: 6, unit: "kg" });
    expect(efforts.at(-1)?.height).toBe(2.7);
  });

  it("w17 does one arm and then the other, with both masses kept", () => {
    const efforts = effortsIn(courseOf(workout("w17"), { division: "women" }));
    expect(efforts.map((effort) => effort.sides).slice(0, 4)).toEqual(["one", undefined, "one", undefined]);
    expect(efforts[2]?.load).toMatchObject({
      written: { value: 35, unit: "lb" },
      alternative: { value: 15, unit: "kg" },
    });
    expect(efforts.map((effort) => effort.tieBreak).filter(Boolean)).toHaveLength(3);
  });

  it("w19 ends at 9:00 for who has not done the first half, and rests on the running clock", () => {
    const course = courseOf(workout("w19"));
    const efforts = effortsIn(course);
    expect(efforts.map((effort) => effort.deadline?.clock)).toEqual([
      ...Array.from({ length: 6 }, () => 540),
      ...Array.from({ length: 6 }, () => undefined),
    ]);
    expect(efforts.findIndex((effort) => effort.tieBreak)).toBe(5);
    expect(course.items[6]).toMatchObject({ kind: "rest", rest: { kind: "exactly", time: 180 }, counted: true });
    expect(efforts.map((effort) => effort.pass.section)).toEqual([1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2]);
  });

  it("w20 lifts a complex without letting go, as often as it likes in 7:00", () => {
    const efforts = effortsIn(courseOf(workout("w20")));
    expect(efforts.map((effort) => effort.joinedToNext)).toEqual([true, true, false]);
    expect(efforts.every((effort) => effort.unbroken && effort.lift !== undefined)).toBe(true);
    expect(workout("w20").parts[0]).toMatchObject({ loading: "alone", openingBar: "loaded" });
  });

  it("w21 and w22 rest between, not after the last", () => {
    expect(sayCourse(courseOf(workout("w21")))).toEqual([
      "400 metres run (1)",
      "rest 60",
      "400 metres run (1)",
      "rest 60",
      "400 metres run (1)",
      "rest 60",
      "400 metres run (1)",
    ]);
    const rows = effortsIn(courseOf(workout("w22"))).map(({ amount }) => amount);
    expect(rows).toEqual([250, 500, 750, 1000].map((amount) => ({ kind: "counted", amount })));
  });

  it("w23 counts calories only, and every clean must be done inside its two minutes", () => {
    const course = courseOf(workout("w23"), { division: "women" });
    expect(sayCourse(course).slice(0, 4)).toEqual([
      "8 clean 155 lb (0)",
      "max calories row until 120 (1)",
      "7 clean 155 lb (0)",
      "max calories row until 240 (1)",
    ]);
    expect(effortsIn(course)).toHaveLength(16);
    expect(effortsIn(course)[2]?.deadline).toEqual({ clock: 240, onMiss: "part-ends" });
    expect(course.ends).toBe(960);
  });

  it("w26 allows three attempts at each of three lifts", () => {
    const course = courseOf(workout("w26"));
    expect(effortsIn(course).map((effort) => [effort.movement.id, effort.lift?.attempts])).toEqual([
      ["back-squat", 3],
      ["shoulder-press", 3],
      ["deadlift", 3],
    ]);
    expect(course.ends).toBeUndefined();
  });

  it("w27 lists more pull-ups in a minute than anybody can do", () => {
    const course = courseOf(workout("w27"));
    const amounts = effortsIn(course).map(({ pass }) => pass.ladder ?? 0);
    expect(Math.max(...amounts)).toBeGreaterThan(60);
    expect(effortsIn(course)[9]?.deadline).toEqual({ clock: 600, onMiss: "part-ends" });
  });

  it("w28 has five stations of eight intervals, the second beginning at 5:00", () => {
    const course = courseOf(workout("w28"));
    const efforts = effortsIn(course);
    expect(efforts).toHaveLength(40);
    expect(efforts[8]).toMatchObject({
      amount: { kind: "until", clock: 320 },
      pass: { section: 2, roundOfSection: 1, roundsOfSection: 8 },
    });
    // 5 stations of 4:00 and 4 changes of 1:00, without the last 0:10
    expect(course.ends).toBe(1430);
  });

  it("w29 starts the second part two minutes after the first, and adds a second for each missing rep", () => {
    const { parts, total } = workout("w29");
    expect(parts[1]?.start).toEqual({ kind: "after", part: "a", rest: 120, restIs: "exactly" });
    expect(total).toEqual(["a", "b"]);
    const course = courseOf(workout("w29"), { part: "b" });
    expect(course).toMatchObject({ totalScore: 21, ends: 240, secondsPerMissing: 1 });
  });

  it("w30 begins with an empty bar and has three attempts", () => {
    expect(workout("w30").parts[0]?.openingBar).toBe("empty");
    expect(effortsIn(courseOf(workout("w30")))[0]?.lift).toEqual({ attempts: 3 });
  });
});

function neverHere(): never {
  throw new Error("there is no such effort");
}

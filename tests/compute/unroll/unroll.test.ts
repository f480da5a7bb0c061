import { describe, expect, it } from "vitest";
import { unroll } from "../../../src/compute/unroll/unroll.ts";
import { seconds } from "../../../src/models/quantity.ts";
import { contentMovements } from "../../support/content-movements.ts";
import { courseOf, effortsIn, sayCourse, soundWorkout } from "../../support/workout-notation.ts";

const passesOf = (text: string) => courseOf(soundWorkout(text)).items.map((item) => item.pass);

describe("the rounds of a part", () => {
  it("are the passes of a block, numbered from 1", () => {
    const passes = passesOf("for time:\nwork:\n  - 21-15-9:\n      - burpee\n      - pull-up");
    expect(passes.map(({ round, of, ladder }) => [round, of, ladder])).toEqual([
      [1, 3, 21],
      [1, 3, 21],
      [2, 3, 15],
      [2, 3, 15],
      [3, 3, 9],
      [3, 3, 9],
    ]);
    expect(passes.every((pass) => pass.section === undefined)).toBe(true);
  });

  it("are one where lines just follow one another", () => {
    expect(
      passesOf("for time:\nwork: [10 burpee, 20 pull-up, 30 air squat]").map(({ round, of }) => [round, of]),
    ).toEqual([
      [1, 1],
      [1, 1],
      [1, 1],
    ]);
  });

  it("are those of the innermost block", () => {
    const passes = passesOf(
      "for time:\nwork:\n  - 2 rounds:\n      - 2 rounds:\n          - 10 burpee\n      - 20 pull-up",
    );
    // burpees twice, then the pull-ups beside them as a round of their own; and again
    expect(passes.map(({ round }) => round)).toEqual([1, 2, 3, 4, 5, 6]);
  });

  it("stand in sections where a part has several, loose lines making one", () => {
    const passes = passesOf(
      "for time:\nwork:\n  - 50 air squat\n  - 50 sit-up\n  - 2 rounds:\n      - 10 burpee\n  - 30 pull-up",
    );
    expect(
      passes.map(({ round, section, roundOfSection, roundsOfSection }) => [
        round,
        section,
        roundOfSection,
        roundsOfSection,
      ]),
    ).toEqual([
      [1, 1, 1, 1],
      [1, 1, 1, 1],
      [2, 2, 1, 2],
      [3, 2, 2, 2],
      [4, 3, 1, 1],
    ]);
  });

  it("of an AMRAP have no last", () => {
    expect(passesOf("amrap: 5:00\nwork: [10 burpee]")[0]).toEqual({ round: 1, roundOfSection: 1 });
  });

  it("inside a window are those of the window, whose own rounds show only on the day", () => {
    const passes = passesOf(
      "on the clock: as written\nwork:\n  - 2 rounds, amrap 1:00, rest 1:00 between:\n      - 10 burpee",
    );
    const rounds = new Set(passes.map((pass) => `${pass.round} ${pass.roundOfSection}`));
    expect([...rounds]).toEqual(["1 1", "2 2"]);
  });

  it("begin anew with each window that stands on its own", () => {
    const passes = passesOf(
      "on the clock: as written\nwork:\n  - amrap 1:00:\n      - 10 burpee\n  - rest 1:00\n  - amrap 1:00:\n      - 10 air squat",
    );
    const tags = new Set(passes.map((pass) => `${pass.round} ${pass.section ?? 0} ${pass.roundOfSection}`));
    expect([...tags]).toEqual(["1 1 1", "2 2 1"]);
  });

  it("are the intervals where each holds rounds without end", () => {
    const passes = passesOf(
      "on the clock: as written\nwork:\n  - every 2:00, 2 rounds:\n      - 200 m run\n      - repeat:\n          - 5 burpee",
    );
    expect([...new Set(passes.map((pass) => `${pass.round} ${pass.roundOfSection}`))]).toEqual([
      "1 1",
      "2 2",
    ]);
  });
});

describe("what a visit counts", () => {
  const scores = (text: string): readonly number[] =>
    effortsIn(courseOf(soundWorkout(text))).map((effort) => effort.scores);

  it("is its reps or calories, both sides, and one for a distance or hold", () => {
    expect(scores("for time:\nwork: [10 burpee, 20 cal row, 400 m run, 0:30 plank]")).toEqual([10, 20, 1, 1]);
    expect(scores('for time:\nwork: ["10 kettlebell snatch at 24 kg, each side"]')).toEqual([20]);
  });

  it("is what the line says", () => {
    expect(
      scores('for time:\nwork: ["400 m run, counts 16", "50 ft walking lunge, counts 1 per 5 ft"]'),
    ).toEqual([16, 10]);
    expect(scores('for time:\nwork: ["52 ft walking lunge, counts 1 per 5 ft"]')).toEqual([10]);
  });

  it("stands with the last movement of a complex where the line says it", () => {
    const complex = "1 deadlift + 1 hang power clean at 60 kg";
    expect(scores(`for time:\nwork:\n  - ${complex}`)).toEqual([1, 1]);
    expect(scores(`for time:\nwork:\n  - ${complex}, counts 1`)).toEqual([0, 1]);
  });

  it("is nothing before the first round of what is scored in rounds", () => {
    expect(scores("amrap: 5:00\nwork:\n  - 50 burpee\n  - repeat:\n      - 10 pull-up").slice(0, 2)).toEqual([
      0, 10,
    ]);
  });

  it("is only what is scored: calories, or metres", () => {
    expect(scores("amrap: 5:00\nscore: calories\nwork: [10 burpee, max calories row]")).toEqual([0, 1]);
    expect(scores("amrap: 5:00\nscore: metres\nwork: [10 burpee, max metres row]")).toEqual([0, 1]);
  });
});

describe("loads", () => {
  const loads = (text: string, athlete = {}) =>
    effortsIn(courseOf(soundWorkout(text), athlete)).map((effort) => effort.load);

  it("are as written, and in kilograms with all pieces together", () => {
    const [load] = loads("for time:\nwork: [10 dumbbell thruster at 2 x 50/35 lb]");
    expect(load).toMatchObject({ written: { value: 50, unit: "lb" }, pieces: 2 });
    // 2 x 50 x 0.45359237, by the exact pound
    expect(load?.total).toBeCloseTo(45.359237, 9);
  });

  it("as shares follow the lift they are of", () => {
    expect(loads("for time:\nwork: [10 front squat at 70% of clean]", { best: 110 })[0]).toMatchObject({
      total: 77,
      share: { share: 0.7, of: "clean" },
    });
  });

  it("as shares of body mass stay out where it is not known", () => {
    expect(loads("for time:\nwork: [10 deadlift at 1.5 body mass]")[0]).toBeUndefined();
    expect(loads("for time:\nwork: [10 deadlift at 1.5 body mass]", { bodyMass: 80 })[0]?.total).toBe(120);
  });

  it("that step go up with the rounds, and never under nothing", () => {
    const text = "for time:\nwork:\n  - 3 rounds:\n      - 1 snatch at 40 kg down by 25 kg";
    expect(loads(text).map((load) => load?.total)).toEqual([40, 15, 0]);
  });
});

describe("a part", () => {
  it("whose clock is that of the workout gets its own", () => {
    const workout = soundWorkout(
      "parts:\n  - amrap: 9:00\n    work: [10 burpee]\n  - starts: at 10:00\n    for time: cap until 20:00\n    work:\n      - by 15:00:\n          - 30 burpee\n      - rest until 16:00\n      - 30 burpee",
    );
    const course = courseOf(workout, { part: "b" });
    expect(course.ends).toBe(600);
    expect(sayCourse(course)).toEqual(["30 burpee", "rest until 360", "30 burpee"]);
    expect(effortsIn(course)[0]?.deadline).toEqual({ clock: 300, onMiss: "part-ends" });
  });

  it("keeps away from what the athlete should not do, where there is a choice", () => {
    const workout = soundWorkout("for time:\nwork: [10 pull-up or ring row]");
    const [first] = effortsIn(courseOf(workout));
    expect([first?.movement.id, first?.alternatives.map(({ id }) => id)]).toEqual(["pull-up", ["ring-row"]]);
    const [other] = effortsIn(courseOf(workout, { avoid: "pull-up" }));
    expect([other?.movement.id, other?.alternatives.map(({ id }) => id)]).toEqual(["ring-row", ["pull-up"]]);
  });

  it("numbers the lines done, a complex being one", () => {
    const text =
      "for time:\nwork:\n  - 2 rounds:\n      - 1 deadlift + 1 hang power clean at 60 kg\n      - 10 burpee";
    expect(effortsIn(courseOf(soundWorkout(text))).map(({ line }) => line)).toEqual([1, 1, 2, 3, 3, 4]);
  });

  it("marks the tie-break at the end of each pass", () => {
    const text = "for time:\nwork:\n  - 2 rounds, tie-break:\n      - 10 burpee\n      - 10 pull-up";
    expect(effortsIn(courseOf(soundWorkout(text))).map(({ tieBreak }) => tieBreak)).toEqual([
      false,
      true,
      false,
      true,
    ]);
  });

  it("has as minimum the reps, or the rounds in reps", () => {
    const course = courseOf(
      soundWorkout("amrap: 5:00\nminimum work: 2 rounds\nwork: [10 burpee, 5 pull-up]"),
    );
    expect(course.minimumScore).toBe(30);
    const chipper = courseOf(
      soundWorkout("for time: cap 5:00\nminimum work: 1 round\nwork:\n  - 3 rounds:\n      - 10 burpee"),
    );
    expect(chipper.minimumScore).toBe(10);
  });

  it("of a division that does not exist is not unrolled", () => {
    const workout = soundWorkout("title: Weir\nfor time:\nwork: [10 burpee]");
    const [part] = workout.parts;
    if (part === undefined) throw new Error("there is a part");
    const context = {
      division: "teens",
      movements: contentMovements,
      bestLift: () => undefined,
      startClock: seconds(0),
    };
    expect(() => unroll(workout, part, context)).toThrow(new RangeError('"Weir" has no division "teens"'));
  });
});

import { describe, expect, it } from "vitest";
import { readWorkout } from "../../src/reading/read-workout.ts";
import { contentMovements } from "../support/content-movements.ts";
import { checkWorkout, soundWorkout } from "../support/workout-notation.ts";

const plain = "for time:\nwork:\n  - 10 burpee";

describe("a workout", () => {
  it("takes its id from the name of its file, and has what is usual where nothing is said", () => {
    const checked = checkWorkout(`title: Weir\n${plain}`, "content/workouts/deep-weir.mdx");
    if (!checked.ok) throw new Error("it is sound");
    expect(checked.value).toMatchObject({
      id: "deep-weir",
      title: "Weir",
      divisions: ["men", "women"],
      standards: [],
      equipment: [],
      fields: [],
      early: [],
      objective: "expected-lift",
    });
    expect(checked.value).not.toHaveProperty("total");
    expect(checked.value.parts).toHaveLength(1);
    expect(checked.value.parts[0]).toMatchObject({
      name: "a",
      start: { kind: "clock", at: 0 },
      clock: { kind: "for-time" },
      score: { kind: "time", restCounts: true },
      openingBar: "loaded",
      lateLift: "does-not-count",
    });
  });

  it("keeps everything that is said", () => {
    const workout = soundWorkout(
      [
        "title: Weir",
        "summary: Short and wet.",
        "competition: water-week",
        "field: weir-field",
        "standards: [Knee to the floor]",
        "equipment: rower, barbell",
        "between stations: 5 m",
        "objective: chance of 100 kg",
        "max load: 6:00, 3 attempts",
        "minimum work: 1 round",
        "tie-break: the earlier lift",
        "loading: help allowed",
        "opening bar: empty",
        "late lift: counts",
        "work:",
        "  - 1 snatch",
      ].join("\n"),
    );
    expect(workout).toMatchObject({
      summary: "Short and wet.",
      competition: "water-week",
      fields: [{ files: { men: "weir-field", women: "weir-field" } }],
      standards: ["Knee to the floor"],
      equipment: ["rower", "barbell"],
      floor: { between: { value: 5, unit: "m" } },
      objective: "chance-of-load",
      objectiveLoad: { value: 100, unit: "kg" },
    });
    expect(workout.parts[0]).toMatchObject({
      clock: { kind: "max-load", length: { kind: "for", time: 360 }, attempts: 3 },
      minimumWork: { amount: 1, of: "rounds", written: "1 round" },
      tieBreakNote: "the earlier lift",
      loading: "help-allowed",
      openingBar: "empty",
      lateLift: "counts",
    });
  });

  it("names its parts a, b, c where they have no names, and adds scores up by any spelling of the names", () => {
    const workout = soundWorkout(
      "parts:\n  - for time:\n    work: [10 burpee]\n  - name: Row\n    starts: at least 2:00 after A\n    for time:\n    work: [500 m row]\ntotal: A + row",
    );
    expect(workout.parts.map((part) => part.name)).toEqual(["a", "Row"]);
    expect(workout.parts[1]?.start).toEqual({ kind: "after", part: "a", rest: 120, restIs: "at-least" });
    expect(workout.total).toEqual(["a", "Row"]);
  });

  it("keeps the work of each division, and the work as it was typed", () => {
    const workout = soundWorkout(
      "for time:\nwork:\n  - 3 rounds:\n      - 10 thruster at 43/29 kg\n      - rest 1:00",
    );
    const [part] = workout.parts;
    expect(Object.keys(part?.work ?? {})).toEqual(["men", "women"]);
    expect(part?.prescription).toEqual(["3 rounds:", "  10 thruster at 43/29 kg", "  rest 1:00"]);
  });

  it("points at the line of each step", () => {
    const workout = soundWorkout("title: Weir\nfor time:\nwork:\n  - 3 rounds:\n      - 10 burpee");
    const [block] = workout.parts[0]?.work["men"] ?? [];
    expect(block?.place).toEqual({ file: "content/workouts/test.mdx", line: 5, column: 5 });
    const [line] = block?.kind === "block" ? block.steps : [];
    expect(line?.place).toMatchObject({ line: 6, column: 9 });
  });

  it("reads what was seen of others", () => {
    const workout = soundWorkout(
      `${plain}\nearly:\n  - who: first heat\n    division: Men\n    after: round\n    splits: [0:41, 1:15.5]`,
    );
    expect(workout.early).toMatchObject([
      { who: "first heat", division: "men", part: "a", after: "round", splits: [41, 75.5] },
    ]);
  });

  it("tells a wrong line once, however many divisions read it and however often it is done", () => {
    const problemsOf = (yaml: string): readonly string[] => {
      const checked = readWorkout(
        { path: "w.mdx", text: `---\ntitle: Weir\n${yaml}\n---\n` },
        contentMovements,
      );
      return checked.ok ? [] : checked.faults.map(({ problem, found }) => `${found}: ${problem}`);
    };
    expect(problemsOf("for time:\nwork:\n  - 10 burpe\n  - 10 thrustr at 43/29 kg")).toEqual([
      'burpe: no movement is called "burpe"',
      'thrustr: no movement is called "thrustr"',
    ]);
    expect(
      problemsOf("on the clock: 17:00\nwork:\n  - 3 rounds:\n      - max burpee in 1:00\n      - rest"),
    ).toEqual(["rest: how long this rest is stands nowhere"]);
    expect(problemsOf("for time:\nwearing: 9/6 vest\nwork:\n  - 10 burpee")).toEqual([
      "9: a load needs its unit",
      "6: a load needs its unit",
    ]);
  });

  it("asks for a title", () => {
    const checked = readWorkout({ path: "w.mdx", text: `---\n${plain}\n---\n` }, contentMovements);
    expect(checked.ok ? [] : checked.faults.map((fault) => fault.problem)).toEqual(["`title` is missing"]);
  });

  it("is told as far as it goes when the file itself is broken", () => {
    const checked = readWorkout({ path: "w.mdx", text: "title: Weir" }, contentMovements);
    expect(checked.ok ? [] : checked.faults.map((fault) => fault.problem)).toEqual([
      "the file does not begin with a line of three hyphens",
    ]);
    const tab = checkWorkout("for time:\nwork:\n\t- 10 burpee");
    expect(tab.ok).toBe(false);
  });

  it("reads one line or one block without a list", () => {
    expect(soundWorkout("for time:\nwork: 30 burpee").parts[0]?.work["men"]).toHaveLength(1);
    expect(soundWorkout("for time:\nwork:\n  3 rounds: 10 burpee").parts[0]?.work["men"]).toHaveLength(1);
  });
});

describe("words of one's own", () => {
  it("stand for loads, heights, amounts, movements and whole lines", () => {
    const workout = soundWorkout(
      [
        "by division:",
        "  bar: {men: 43 kg, women: 29 kg}",
        "  box height: {men: 60 cm, women: 50 cm}",
        "  many: {men: 20, women: 15}",
        "  skill: {men: bar muscle-up, women: chest-to-bar pull-up}",
        "  finish: {men: 5 rope climb, women: nothing}",
        "for time:",
        "work:",
        "  - many thruster at bar",
        "  - many box jump to box height",
        "  - 10 skill",
        "  - finish",
      ].join("\n"),
    );
    const lines = workout.parts[0]?.work["women"] ?? [];
    expect(lines).toHaveLength(3);
    expect(lines).toMatchObject([
      {
        written: "many thruster at bar",
        pieces: [{ amount: { amount: { value: { value: 15 } } } }],
        load: { value: { mass: { value: 29, unit: "kg" } } },
      },
      { height: { value: { value: 50, unit: "cm" } } },
      { pieces: [{ movements: ["chest-to-bar-pull-up"] }] },
    ]);
    expect(workout.parts[0]?.work["men"]).toHaveLength(4);
  });

  it("leave movements alone whose names hold them", () => {
    const workout = soundWorkout(
      "by division:\n  bar: {men: 43 kg, women: 29 kg}\nfor time:\nwork:\n  - 10 bar muscle-up\n  - 10 thruster at bar",
    );
    expect(workout.parts[0]?.work["men"]).toMatchObject([
      { pieces: [{ movements: ["bar-muscle-up"] }] },
      { load: { value: { mass: { value: 43 } } } },
    ]);
  });

  it("speak for all divisions whose names hold them, the closest name first, and for others", () => {
    const workout = soundWorkout(
      [
        "divisions: [men, women, masters men, masters women, teens]",
        "by division:",
        "  bar: {men: 61 kg, women: 43 kg, masters women: 35 kg, others: 30 kg}",
        "for time:",
        "work:",
        "  - 10 power clean at bar",
      ].join("\n"),
    );
    const loads = workout.divisions.map((division) => {
      const [line] = workout.parts[0]?.work[division] ?? [];
      const load = line?.kind === "effort" && line.load?.kind === "same" ? line.load.value : undefined;
      return load?.kind === "mass" ? load.mass.value : undefined;
    });
    expect(loads).toEqual([61, 43, 61, 35, 30]);
  });

  it("are pointed at where they are wrong, not where they are used", () => {
    const checked = checkWorkout(
      "title: Weir\nby division:\n  bar: {men: 43, women: 29 kg}\nfor time:\nwork:\n  - 10 thruster at bar",
    );
    expect(checked.ok ? [] : checked.faults).toMatchObject([
      { place: { line: 4, column: 14 }, found: "43", problem: "a load needs its unit" },
    ]);
  });
});

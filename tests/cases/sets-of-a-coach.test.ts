import { describe, expect, it } from "vitest";
import { pacePart } from "../../src/compute/pacing/pace-part.ts";
import type { Athlete } from "../../src/models/athlete.ts";
import type { Level } from "../../src/models/vocabulary.ts";
import { problemOf } from "../experiments/fields/field-problem.ts";
import { demoData } from "../support/demo-data.ts";
import { soundWorkout } from "../support/workout-notation.ts";

/**
 * What a coach of experience would write on a whiteboard, from the trade and written down before the plans were looked at. `best` are best
 * sets, `lifts` best lifts in kilograms; `breaks` how often the movement is put down in a visit (the first, or the one named), `rest` the
 * longest rest and breath before the first rep that would be printed, seconds.
 */
type Situation = {
  readonly who: `${Level} ${"man" | "woman"}`;
  readonly best?: Readonly<Record<string, number>>;
  readonly lifts?: Readonly<Record<string, number>>;
  readonly work: string;
  readonly movement: string;
  readonly visit?: number;
  readonly breaks: number;
  readonly rest: number;
};

const SITUATIONS: readonly Situation[] = [
  // Gymnastics on the bar.
  {
    who: "elite woman",
    best: { "chest-to-bar pull-up": 32, "double-under": 150 },
    lifts: { "front-squat": 110 },
    work: "amrap: 13:00\nwork:\n  - 36 double-under\n  - 12 front rack lunge at 35 kg\n  - 7 chest-to-bar pull-up",
    movement: "chest-to-bar-pull-up",
    visit: 3,
    breaks: 0,
    rest: 8,
  },
  {
    who: "regular man",
    best: { "toes-to-bar": 15 },
    work: "amrap: 12:00\nwork:\n  - 10 toes-to-bar\n  - 14 wall-ball shot at 20 lb to 10 ft\n  - 220 m run",
    movement: "toes-to-bar",
    breaks: 1,
    rest: 8,
  },
  {
    who: "new man",
    best: { "pull-up": 5 },
    work: "for time:\nwork:\n  - 5 rounds:\n      - 10 pull-up\n      - 22 air squat",
    movement: "pull-up",
    breaks: 4,
    rest: 15,
  },
  {
    who: "competitor man",
    best: { "pull-up": 38 },
    work: "for time:\nwork:\n  - 4 rounds:\n      - 17 pull-up\n      - 320 m run",
    movement: "pull-up",
    breaks: 0,
    rest: 8,
  },
  {
    who: "elite man",
    best: { "bar-muscle-up": 20 },
    work: "for time:\nwork:\n  - 32 bar muscle-up\n  - 700 m run",
    movement: "bar-muscle-up",
    breaks: 4,
    rest: 25,
  },
  {
    who: "competitor woman",
    best: { "ring-muscle-up": 9 },
    work: "for time:\nwork:\n  - 5 rounds:\n      - 6 ring muscle-up\n      - 420 m run",
    movement: "ring-muscle-up",
    breaks: 1,
    rest: 12,
  },
  {
    who: "elite woman",
    best: { "toes-to-bar": 35 },
    work: "for time:\nwork:\n  - 40 cal row\n  - 36 toes-to-bar\n  - 34 burpee",
    movement: "toes-to-bar",
    breaks: 2,
    rest: 10,
  },
  {
    who: "regular woman",
    best: { "pull-up": 8 },
    work: "amrap: 15:00\nwork:\n  - 6 pull-up\n  - 14 goblet squat at 16 kg\n  - 160 m run",
    movement: "pull-up",
    breaks: 1,
    rest: 8,
  },
  // Pressing with the body.
  {
    who: "regular man",
    best: { "handstand-push-up": 10 },
    work: "for time:\nwork:\n  - 500 m row\n  - 21 handstand push-up",
    movement: "handstand-push-up",
    breaks: 4,
    rest: 20,
  },
  {
    who: "competitor man",
    best: { "handstand-push-up": 22 },
    work: "for time:\nwork:\n  - 18-14-10:\n      - handstand push-up\n      - kettlebell swing at 24 kg",
    movement: "handstand-push-up",
    breaks: 1,
    rest: 12,
  },
  {
    who: "new woman",
    best: { "push-up": 15 },
    work: "for time:\nwork:\n  - 4 rounds:\n      - 18 push-up\n      - 260 m run",
    movement: "push-up",
    breaks: 2,
    rest: 12,
  },
  // Rope and ball.
  {
    who: "new woman",
    best: { "double-under": 20 },
    work: "for time:\nwork:\n  - 4 rounds:\n      - 40 double-under\n      - 16 sit-up",
    movement: "double-under",
    breaks: 3,
    rest: 12,
  },
  {
    who: "regular man",
    best: { "double-under": 55 },
    work: "amrap: 10:00\nwork:\n  - 44 double-under\n  - 12 burpee",
    movement: "double-under",
    breaks: 1,
    rest: 10,
  },
  {
    who: "competitor man",
    best: { "double-under": 140 },
    work: "amrap: 10:00\nwork:\n  - 44 double-under\n  - 12 burpee",
    movement: "double-under",
    breaks: 0,
    rest: 8,
  },
  {
    who: "regular woman",
    best: { "wall-ball-shot": 32 },
    work: "for time:\nwork:\n  - 50 wall-ball shot at 14 lb to 9 ft\n  - 900 m run",
    movement: "wall-ball-shot",
    breaks: 2,
    rest: 12,
  },
  {
    who: "elite man",
    best: { "wall-ball-shot": 85 },
    work: "for time:\nwork:\n  - 48 wall-ball shot at 20 lb to 10 ft\n  - 32 box jump at 24 in",
    movement: "wall-ball-shot",
    breaks: 0,
    rest: 8,
  },
  {
    who: "new woman",
    best: { "wall-ball-shot": 15 },
    work: "for time:\nwork:\n  - 40 wall-ball shot at 14 lb to 9 ft\n  - 40 sit-up",
    movement: "wall-ball-shot",
    breaks: 4,
    rest: 15,
  },
  // Light and middling bars.
  {
    who: "competitor man",
    lifts: { "clean-and-jerk": 130, "front-squat": 150 },
    work: "for time:\nwork:\n  - 3 rounds:\n      - 16 thruster at 43 kg\n      - 260 m run",
    movement: "thruster",
    breaks: 0,
    rest: 8,
  },
  {
    who: "regular man",
    lifts: { "clean-and-jerk": 90, "front-squat": 105 },
    work: "for time:\nwork:\n  - 3 rounds:\n      - 20 thruster at 43 kg\n      - 260 m run",
    movement: "thruster",
    breaks: 1,
    rest: 10,
  },
  {
    who: "new man",
    lifts: { "clean-and-jerk": 60, "front-squat": 70 },
    work: "for time:\nwork:\n  - 3 rounds:\n      - 20 thruster at 43 kg\n      - 260 m run",
    movement: "thruster",
    breaks: 4,
    rest: 20,
  },
  {
    who: "competitor man",
    lifts: { "power-clean": 115 },
    work: "for time:\nwork:\n  - 5 rounds:\n      - 12 power clean at 70 kg\n      - 210 m row",
    movement: "power-clean",
    breaks: 2,
    rest: 12,
  },
  {
    who: "competitor man",
    lifts: { deadlift: 200 },
    best: { "toes-to-bar": 30 },
    work: "for time:\nwork:\n  - 20-15-10:\n      - deadlift at 102 kg\n      - cal ski",
    movement: "deadlift",
    breaks: 1,
    rest: 8,
  },
  {
    who: "regular man",
    lifts: { deadlift: 150 },
    work: "for time:\nwork:\n  - 20 deadlift at 100 kg\n  - 420 m run\n  - 20 deadlift at 100 kg",
    movement: "deadlift",
    breaks: 2,
    rest: 15,
  },
  {
    who: "competitor woman",
    lifts: { "front-squat": 95 },
    work: "for time:\nwork:\n  - 5 rounds:\n      - 10 front squat at 60 kg\n      - 20 cal row",
    movement: "front-squat",
    breaks: 1,
    rest: 12,
  },
  {
    who: "regular man",
    lifts: { "overhead-squat": 80 },
    work: "for time:\nwork:\n  - 4 rounds:\n      - 14 overhead squat at 43 kg\n      - 18 cal air bike",
    movement: "overhead-squat",
    breaks: 1,
    rest: 12,
  },
  // Heavy bars: single after single.
  {
    who: "regular man",
    lifts: { "power-snatch": 70 },
    work: "for time:\nwork:\n  - 10 power snatch at 61 kg\n  - 40 cal row",
    movement: "power-snatch",
    breaks: 9,
    rest: 25,
  },
  {
    who: "competitor woman",
    lifts: { "clean-and-jerk": 85 },
    work: "for time:\nwork:\n  - 24 clean and jerk at 60 kg\n  - 48 sit-up",
    movement: "clean-and-jerk",
    breaks: 23,
    rest: 12,
  },
  {
    who: "regular man",
    lifts: { deadlift: 118 },
    work: "for time:\nwork:\n  - 600 m run\n  - 18 deadlift at 110 kg\n  - 600 m run",
    movement: "deadlift",
    breaks: 17,
    rest: 25,
  },
  // What is not put down.
  {
    who: "regular woman",
    work: "amrap: 12:00\nwork:\n  - 16 kettlebell swing at 16 kg\n  - 12 box jump at 20 in\n  - 220 m run",
    movement: "kettlebell-swing",
    breaks: 0,
    rest: 8,
  },
  {
    who: "regular man",
    work: "for time:\nwork:\n  - 4 rounds:\n      - 20 alternating dumbbell snatch at 22.5 kg\n      - 16 burpee",
    movement: "alternating-dumbbell-snatch",
    breaks: 0,
    rest: 8,
  },
];

const data = demoData();

function athleteOf({ who, best = {}, lifts = {} }: Situation): Athlete {
  const [level, sex] = who.split(" ") as [Level, "man" | "woman"];
  const band = data.bands.find(
    ({ profile }) => profile.level === level && profile.sex === (sex === "man" ? "male" : "female"),
  );
  if (band === undefined) throw new Error(`no band of ${who}`);
  return {
    ...band.profile,
    unbroken: Object.entries(best).map(([name, reps]) => ({ movement: name.replaceAll(" ", "-"), reps })),
    lifts: Object.entries(lifts).map(([movement, value]) => ({
      movement,
      load: { value, unit: "kg" },
      reps: 1,
      inReserve: 0,
      date: "2026-10-20",
      approximate: false,
    })),
  };
}

/** How often the movement is put down in the visit, and the longest rest and breath there. */
function printed(situation: Situation): { readonly said: string; readonly breaks: number; readonly rest: number } {
  const paced = pacePart(problemOf(athleteOf(situation), soundWorkout(situation.work), data));
  if (paced.kind !== "paced") throw new Error(JSON.stringify(paced.missing));
  const { rows } = paced.pacing;
  const visits = rows.filter(({ movement }) => movement === situation.movement);
  const row = visits[(situation.visit ?? 1) - 1];
  if (row === undefined) throw new Error(`no ${situation.movement}`);
  const before = rows[row.index - 1];
  const stand = before?.why === "stand" ? before.end - before.start : 0;
  const rests = row.sets.map(({ restAfter }) => restAfter);
  return {
    said: `${row.sets.map(({ amount }) => amount).join("-")} / ${rests.join(" ")} / ${stand || (row.breath ?? 0)}`,
    breaks: row.sets.length - 1,
    rest: Math.max(stand, row.breath ?? 0, ...rests),
  };
}

/** Within one break; of many singles within a tenth of them. */
const isNear = (breaks: number, wanted: number): boolean =>
  Math.abs(breaks - wanted) <= Math.max(1, wanted / 10);

// The counts are those the planner reached when the thirty were first tried: what it may not fall behind, not what a coach would want.
describe("sets against what a coach would write", () => {
  const all = SITUATIONS.map((situation) => ({ situation, found: printed(situation) }));

  it("thirty situations were written down", () => {
    expect(SITUATIONS).toHaveLength(30);
  });

  it("within one break in at least 22 of 30", () => {
    const off = all.flatMap(({ situation: { who, movement, breaks }, found }) =>
      isNear(found.breaks, breaks) ? [] : [`${who}, ${movement}: ${breaks} breaks wanted, ${found.said}`],
    );
    expect(off.length > 8 ? off : []).toEqual([]);
  });

  it("rests no more than two seconds longer in at least 22 of 30", () => {
    const off = all.flatMap(({ situation: { who, movement, rest }, found }) =>
      found.rest <= rest + 2 ? [] : [`${who}, ${movement}: ${rest} s at most, ${found.said}`],
    );
    expect(off.length > 8 ? off : []).toEqual([]);
  });
});

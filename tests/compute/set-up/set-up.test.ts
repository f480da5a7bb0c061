import { describe, expect, it } from "vitest";
import { setUpOf, type SetUpInput } from "../../../src/compute/set-up/set-up.ts";
import type { Competition } from "../../../src/models/competition.ts";
import { athlete, type PartSketch, workout } from "../../support/hand-made.ts";
import { kiloGym } from "../../support/sample-gym.ts";
import { saySetUp } from "../../../src/wording/set-up.ts";
import { situationsFor } from "../../support/situations-for.ts";

const competition: Competition = {
  id: "c",
  name: "C",
  zone: "Europe/Oslo",
  opens: "2026-11-20T08:00",
  closes: "2026-11-30T20:00",
  counts: "best",
  ties: [],
  mayCome: [],
  rules: [],
  loading: "help-allowed",
};
const lines = (sketches: readonly PartSketch[], more: Partial<SetUpInput> = {}): readonly string[] => {
  const { movements, parts } = situationsFor(athlete(), sketches);
  const told = setUpOf({
    workout: workout(sketches),
    movements: movements.map((at) => at.movement),
    parts,
    gym: kiloGym,
    choices: [],
    ...more,
  });
  return told.map((line) => saySetUp(line, "kg").replaceAll("\u00a0", " "));
};
const mixed: readonly PartSketch[] = [
  {
    lines: [
      { movement: "thruster", amount: 10, kilograms: 30 },
      { movement: "pull-up", amount: 10 },
      { movement: "row", amount: 500, unit: "metres" },
      { movement: "kettlebell-swing", amount: 20 },
    ],
  },
];

describe("what to set out", () => {
  it("is the equipment of the movements, the floor, the plates, the machine and the chalk", () => {
    expect(lines(mixed)).toEqual([
      "Set out, in the order of use: bar, plates and collars; rower; kettlebell.",
      "Stations about 3 m apart; walk the way once.",
      "The bar loaded and closed before the start; a second person adds up the plates.",
      "Monitor reset and turned to the unit that counts.",
      "Chalk and tape where you pass by, not only where you start.",
    ]);
  });

  it("is what the workout lists, at the distance it prescribes", () => {
    const listed = workout(mixed, {
      equipment: ["one bar", "a rig"],
      floor: { between: { value: 10, unit: "ft" } },
    });
    const told = lines(mixed, { workout: listed });
    expect(told).toContain("Set out, in the order of use: one bar; a rig.");
    expect(told).toContain("Stations 10 ft apart as prescribed; show the tape on the film.");
  });

  it("adds the film and who may load in a competition", () => {
    const rising = [...mixed, { lines: [{ movement: "thruster", amount: 5, kilograms: 40 }] }];
    const told = lines(rising, { competition });
    expect(told).toContain(
      "Plates beside the bar in loading order; a second person adds them up after every change.",
    );
    expect(told).toContain("Helpers may load: agree with two of them who stands where.");
    expect(told).toContain(
      "Film in one piece: clock, whole body, monitor and floor marks in the picture; plates, heights and distances once before the start.",
    );
    const alone = workout(rising);
    const parts = alone.parts.map((part) => ({ ...part, loading: "alone" as const }));
    expect(lines(rising, { competition, workout: { ...alone, parts } })).toContain(
      "You load alone: nobody touches the bar after the start.",
    );
  });

  it("marks the tie-break moment and the score sheet", () => {
    const sketches: readonly PartSketch[] = [
      {
        rounds: 2,
        lines: [
          { movement: "air-squat", amount: 5 },
          { movement: "burpee", amount: 5 },
        ],
      },
    ];
    const { movements, parts } = situationsFor(athlete(), sketches);
    const marked = parts.map((part) => ({
      ...part,
      ...(part.pacing && {
        pacing: {
          ...part.pacing,
          rounds: [1, 2].map((round) => ({
            round,
            label: String(round),
            start: 0,
            end: 1,
            seconds: 1,
            lastRow: 0,
            scoreDone: 0,
          })),
          rows: part.pacing.rows.map((row) => ({ ...row, tieBreak: row.movement === "burpee" })),
        },
      }),
    }));
    const input = {
      workout: workout(sketches),
      movements: movements.map((at) => at.movement),
      gym: kiloGym,
      choices: [],
    };
    const told = (of: SetUpInput) =>
      setUpOf(of).map((line) => saySetUp(line, "kg").replaceAll("\u00a0", " "));
    expect(told({ ...input, parts: marked })).toEqual([
      "Stations about 3 m apart; walk the way once.",
      "Score sheet with a box for each round, ticked by your judge.",
      "Tie-break: your judge writes down the clock after the burpee of each round.",
    ]);
    const once = marked.map((part) => ({
      ...part,
      ...(part.pacing && {
        pacing: {
          ...part.pacing,
          rows: part.pacing.rows.map((row) => ({ ...row, tieBreak: row.index === 3 })),
        },
      }),
    }));
    expect(told({ ...input, parts: once })).toContain(
      "Tie-break: your judge writes down the clock after the burpee of round 2.",
    );
  });

  it("hands on the event's words on the tie-break, and the least that counts", () => {
    const made = workout(mixed);
    const parts = made.parts.map((part) => ({
      ...part,
      tieBreakNote: "the time of the first round.",
      minimumWork: { amount: 60, of: "reps" as const, written: "60 reps" },
    }));
    const told = lines(mixed, { workout: { ...made, parts } });
    expect(told).toContain("Tie-break: the time of the first round.");
    expect(told).toContain("Nothing counts under 60 reps: reach that first.");
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ALONE, inLadder, inRounds, soundLine } from "../../support/reading-lines.ts";

const reps = (value: number) => ({ value, unit: "reps" });
const kg = (value: number, pieces = 1) => ({ kind: "mass", pieces, mass: { value, unit: "kg" } });

describe("a line of work", () => {
  it("says an amount, a movement and a load, each for the division it is read for", () => {
    expect(soundLine("10 thruster at 43/29 kg", ALONE, 0)).toEqual({
      pieces: [
        { movements: ["thruster"], amount: { kind: "counted", amount: { kind: "same", value: reps(10) } } },
      ],
      load: { kind: "same", value: kg(43) },
      unbroken: false,
      tieBreak: false,
    });
    expect(soundLine("10 thruster at 43/29 kg", ALONE, 1).load).toEqual({ kind: "same", value: kg(29) });
  });

  it("keeps a distance as it is written, beside its metres", () => {
    const [piece] = soundLine("50 ft handstand walk").pieces;
    expect(piece?.amount).toEqual({
      kind: "counted",
      // 50 x 0.3048 m, exact by definition of the foot
      amount: { kind: "same", value: { value: 15.24, unit: "metres", written: { value: 50, unit: "ft" } } },
    });
  });

  it("takes its number from the ladder around it when it has none", () => {
    expect(soundLine("pull-up", inLadder(3)).pieces[0]?.amount).toEqual({ kind: "ladder", unit: "reps" });
    for (const line of ["cal row", "row calories", "ski cals"])
      expect(soundLine(line, inLadder(3)).pieces[0]?.amount).toEqual({ kind: "ladder", unit: "calories" });
  });

  it("changes by round where it lists as many values as there are rounds", () => {
    const line = soundLine("10-8-6 snatch at 60-70-80/40-47.5-55 kg", inRounds(3), 1);
    expect(line.pieces[0]?.amount).toMatchObject({
      amount: { kind: "listed", values: [reps(10), reps(8), reps(6)], outward: 0 },
    });
    expect(line.load).toEqual({ kind: "listed", values: [kg(40), kg(47.5), kg(55)], outward: 0 });
  });

  it("finds the outer block where only that has as many rounds", () => {
    const passes = [
      { count: 2, isLadder: false },
      { count: 3, isLadder: false },
    ];
    expect(soundLine("10 snatch at 40-50-60 kg", { ...ALONE, passes }).load).toMatchObject({ outward: 1 });
  });

  it("says at its end which of two blocks is meant", () => {
    const passes = [
      { count: 3, isLadder: false },
      { count: 3, isLadder: true },
    ];
    const line = "10 snatch at 40-50-60 kg, by ";
    expect(soundLine(`${line}round`, { ...ALONE, passes }).load).toMatchObject({ outward: 0 });
    expect(soundLine(`${line}ladder`, { ...ALONE, passes }).load).toMatchObject({ outward: 1 });
  });

  it("steps on for ever, up or down", () => {
    const line = soundLine("12 down by 2 clean at 60/40 kg up by 5/2.5 kg", inRounds(9), 1);
    expect(line.pieces[0]?.amount).toMatchObject({
      amount: { kind: "stepped", start: reps(12), step: reps(-2), outward: 0 },
    });
    expect(line.load).toEqual({ kind: "stepped", start: kg(40), step: kg(2.5), outward: 0 });
  });

  it("is a complex where movements are joined, and one rep each when lifted without numbers", () => {
    const line = soundLine("hang clean + 2 front squat + jerk", { ...ALONE, lifting: true });
    const amounts = line.pieces.map((piece) => piece.amount);
    expect(amounts).toEqual(
      [1, 2, 1].map((value) => ({ kind: "counted", amount: { kind: "same", value: reps(value) } })),
    );
    expect(line.load).toEqual({ kind: "same", value: { kind: "athletes-choice" } });
  });

  it("measures a hold in seconds, and fills a time with anything else", () => {
    expect(soundLine("0:45 plank").pieces[0]?.amount).toMatchObject({
      kind: "counted",
      amount: { value: { value: 45, unit: "seconds" } },
    });
    expect(soundLine("45 s burpee").pieces[0]?.amount).toEqual({ kind: "max-for", time: 45, unit: "reps" });
    expect(soundLine("2:00 run").pieces[0]?.amount).toEqual({ kind: "max-for", time: 120, unit: "metres" });
  });

  it.each([
    ["70% of the movement itself", "5 deadlift at 70%", { kind: "share-of-best", share: 0.7 }],
    [
      "a share of another lift",
      "5 front squat at 70% of clean",
      { kind: "share-of-best", share: 0.7, of: "clean" },
    ],
    ["a share of body mass", "5 deadlift at 1.5 body mass", { kind: "share-of-body-mass", share: 1.5 }],
    ["body mass in per cent", "5 deadlift at 75% of body mass", { kind: "share-of-body-mass", share: 0.75 }],
    ["body mass itself", "5 deadlift at body mass", { kind: "share-of-body-mass", share: 1 }],
    ["the athlete's choice", "5 deadlift at any load", { kind: "athletes-choice" }],
  ])("can be loaded with %s", (_what, text, load) => {
    expect(soundLine(text).load).toEqual({ kind: "same", value: load });
  });

  it("keeps both masses where one stands in brackets", () => {
    const both = {
      kind: "mass",
      pieces: 1,
      mass: { value: 65, unit: "lb" },
      alternative: { value: 29, unit: "kg" },
    };
    expect(soundLine("10 thruster at 95 lb (43 kg)/65 lb (29 kg)", ALONE, 1).load).toEqual({
      kind: "same",
      value: both,
    });
    expect(soundLine("10 thruster at 95/65 lb (43/29 kg)", ALONE, 1).load).toEqual({
      kind: "same",
      value: both,
    });
  });

  it("lets the athlete choose, or the movement differ by division", () => {
    expect(soundLine("10 pull-up or ring row").pieces[0]?.movements).toEqual(["pull-up", "ring-row"]);
    const line = "9 bar muscle-up/chest-to-bar pull-up";
    expect(soundLine(line, ALONE, 0).pieces[0]?.movements).toEqual(["bar-muscle-up"]);
    expect(soundLine(line, ALONE, 1).pieces[0]?.movements).toEqual(["chest-to-bar-pull-up"]);
  });

  it.each([
    [
      "10 snatch at 43/29 kg",
      "10 snatch @ 43/29kg",
      "10 Snatches (43/29 kg)",
      "10 snatch, at 43 / 29 kg",
      "10 reps of snatch at 43/29 kilos",
    ],
    [
      "20/15 cal row",
      "row 20/15 cal",
      "20/15 calories row",
      "20/15 calorie rows",
      "20/15 cal. row",
      "20/15 row calories",
    ],
    ["400 m run", "run 400 m", "400m run", "0.4 km run", "400 metres of running"],
    [
      "30 wall-ball shot at 9/6 kg to 3/2.7 m",
      "30 wall balls 9/6 kg to 3/2.7 m",
      "30 wall balls at 9/6 kg, to 3/2.7 m",
    ],
    [
      "20 box jump to 24/20 in",
      '20 box jump 24/20"',
      "20 box jumps, to 24/20 in",
      "20 box jump onto 24/20 inches",
    ],
    [
      "max burpee in 1:00",
      "1:00 burpee",
      "60 s max burpees",
      "max burpee for 1 min",
      "as many as possible burpee in 60 s",
    ],
    [
      "max calories row in 1:00",
      "max row for calories in 1:00",
      "max row calories in 1:00",
      "1:00 max cal row",
      "60 sec row for calories",
    ],
    [
      "10 kettlebell snatch at 24 kg, each side",
      "10 kettlebell snatch at 24 kg each arm",
      "10 KB snatches at 24 kg, per side",
    ],
    [
      "30 snatch at 42.5 kg, tie-break",
      "30 snatch at 42,5 kg, tiebreak",
      "30 snatch at 42.5 kg, tie break time",
    ],
    ["10 pull-up, unbroken", "10 Pull-Ups , unbroken"],
    ["50 ft handstand walk", "50-ft handstand walk", "50-foot handstand walk"],
    ["20 box step-up, alternating", "20 alternating box step-ups"],
  ])("%s may be written in other ways", (first, ...others) => {
    const { ...meant } = soundLine(first);
    for (const other of others) expect(strip(soundLine(other))).toEqual(strip(meant));
  });
});

/** Distances without how they were written, which differs between equal ways. */
function strip(line: unknown): unknown {
  return JSON.parse(JSON.stringify(line, (name, value: unknown) => (name === "written" ? undefined : value)));
}

describe("values by division and round", () => {
  const value = fc.integer({ min: 1, max: 99 });
  const tables = fc
    .tuple(fc.integer({ min: 2, max: 4 }), fc.integer({ min: 2, max: 5 }))
    .chain(([divisions, rounds]) =>
      fc.array(fc.array(value, { minLength: rounds, maxLength: rounds }), {
        minLength: divisions,
        maxLength: divisions,
      }),
    );

  it("read the same with the slashes outside or inside", () => {
    fc.assert(
      fc.property(tables, (table) => {
        const rounds = table[0]?.length ?? 0;
        const divisions = table.map((_, index) => `division ${index}`);
        const outside = table.map((row) => row.join("-")).join("/");
        const inside = Array.from({ length: rounds }, (_, round) =>
          table.map((row) => row[round]).join("/"),
        ).join("-");
        for (const [index, row] of table.entries()) {
          const expected = { amount: { kind: "listed", values: row.map(reps), outward: 0 } };
          const ways = rounds === divisions.length ? [outside] : [outside, inside];
          for (const way of ways) {
            const line = soundLine(`${way} burpee`, inRounds(rounds), index, divisions);
            expect(line.pieces[0]?.amount).toMatchObject(expected);
          }
        }
      }),
    );
  });
});

import { describe, expect, it } from "vitest";
import { sayQuestion } from "../../src/reading/tables/questions.ts";
import { readText, verdictsOf } from "../support/table-verdicts.ts";

// Three more tables of our own invention, as coaches keep them. The verdict of every cell was written down by hand first.

describe("two groups below one another, units in a row, a hold and a score", () => {
  const read = readText(
    [
      "Morning group\t\t\t\t\t\t\t",
      "Name\tLevel\tSnatch\tC&J\tRow 2k\tL-sit hold\tMill Race\tGoal C&J",
      "\t\tkg\tkg\tmin:sec\tsec\t\t",
      "Ann Holt\tregular\t62,5\t80\t7:45\t0:35\t11:02 rx\t90",
      "Ben Roux\tregular\t95 (2023)\t120!\t6:58\t1:05\tCAP (91)\t",
      "Cy & Di Marsh\tregular\t55\t70\t8:01\t20\t88\t",
      "",
      "Evening group\t\t\t\t\t\t\t",
      "Name\tLevel\tSnatch\tC&J\tRow 2k\tL-sit hold\tMill Race\tGoal C&J",
      "Eva Lind\tcompetitor\t70ish\t90 / 92,5\t7:10.4\tnone\t14:30\t100",
      "Fay Ott\tnew\t–\t0\t8;20\t?\tDNF\t",
    ].join("\n"),
  );

  it("is read cell by cell, and nobody is two", () => {
    expect(verdictsOf(read)).toEqual({
      B4: "regular",
      C4: "62.5 kg",
      D4: "80 kg",
      E4: "row 2000 m in 7:45",
      F4: "35 s",
      G4: '{"workout":"mill-race","time":"11:02"}',
      B5: "regular",
      C5: "95 kg (2023-07-01)",
      D5: "120 kg",
      E5: "row 2000 m in 6:58",
      F5: "65 s",
      // 91 may be reps left, or reps done.
      G5: "asked",
      B10: "competitor",
      C10: "~70 kg",
      D10: "asked",
      E10: "row 2000 m in 7:10.4",
      F10: "none",
      // The cap is 12:00.
      G10: "asked",
      B11: "new",
      D11: "asked",
      E11: "asked",
    });
  });

  it("asks whether two names in one cell are two people, and passes over goals and titles", () => {
    expect(read.questions.map(sayQuestion)).toContain(
      'Are "Cy & Di Marsh" two people? Then give each a row; else write `one`, or the name.',
    );
    expect(read.passedOver.map(({ cell, why }) => `${cell} ${why}`)).toEqual([
      "t.csv!A1 above the headings",
      "t.csv!A8 one cell alone, a title or a remark",
      "t.csv!A9 the headings again",
    ]);
    expect(read.columns.find(({ heading }) => heading === "Goal C&J")?.meaning).toEqual({
      kind: "passed over",
      why: "a goal or a share is no result",
    });
  });
});

describe("estimates, machines without a name, distances without a movement, pounds and kilograms side by side", () => {
  const read = readText(
    [
      "Athlete,Level,Est. 1RM Clean (kg),1RM Back Squat (lbs),Press,10 min bike cals,400m,Max UB Pull Ups,Row 500,Sex,DOB",
      "Ann,regular,70,225,95 lb,121,1:20,12 (kipping),1:45.3,F,31/02/1991",
      'Ben,RX,~105,"1,315",60 kg,160,1:12,12 strict,1:32,♂,1988?',
      "Cleo,regular,80-85,#N/A,95,118,1:25,14+,1:05,weiblich,33",
    ].join("\n"),
  );

  it("is read cell by cell", () => {
    expect(verdictsOf(read)).toEqual({
      B2: "regular",
      C2: "~70 kg",
      D2: "225 lb",
      E2: "95 lb",
      H2: "12",
      I2: "row 500 m in 1:45.3",
      J2: "female",
      K2: "asked",
      B3: "asked",
      C3: "~105 kg",
      // 1315 lb is no squat; 131.5 may be meant.
      D3: "asked",
      E3: "60 kg",
      H3: "12",
      I3: "row 500 m in 1:32",
      J3: "male",
      K3: "1988",
      B4: "regular",
      C4: "asked",
      D4: "refused",
      // The column has kg and lb, and this number has neither.
      E4: "asked",
      H4: "asked",
      // Nobody has rowed 500 m in 65 seconds.
      I4: "refused",
      J4: "female",
      K4: "asked",
    });
  });

  it("asks once for each column that can be two", () => {
    expect(
      read.questions.map(({ text }) => text).filter((text) => text.startsWith("What does the column")),
    ).toEqual([
      'What does the column "10 min bike cals" hold (121, 160, 118)? Is it 10 min air bike cals or 10 min bike erg cals?',
      'What does the column "400m" hold (1:20, 1:12, 1:25)? Is it 400m run or 400m row?',
    ]);
  });
});

describe("days in four spellings, and words where numbers belong", () => {
  const read = readText(
    [
      "Name;Level;Tested;Back squat (kg);Weight (kg);Height;Injuries;Notes",
      "Ann;regular;13/04/2025;100;private;172,5;ok;early bird",
      "Ben;regular;04/05/2025;120 kg (belt);84 kg (morning);5´11;none;",
      "Cy;regular;45800;failed 130;72kg/158lb;160-165;L knee, no jumping;",
      "Di;regular;May 2025;new PR! 90;６１;1.68;all fine;",
      "Ed;regular;Spring;=80+20;four;tall;-;",
    ].join("\n"),
  );

  it("is read cell by cell; a day settles the order of all others", () => {
    expect(verdictsOf(read)).toEqual({
      B2: "regular",
      D2: "100 kg (2025-04-13)",
      F2: "172.5 cm",
      G2: "none",
      H2: "early bird",
      B3: "regular",
      D3: "120 kg (2025-05-04)",
      E3: "84 kg",
      F3: "5'11",
      G3: "none",
      B4: "regular",
      D4: "asked",
      E4: "72kg/158 lb",
      F4: "asked",
      G4: "asked",
      B5: "regular",
      D5: "90 kg (2025-05-15)",
      E5: "61 kg",
      F5: "168 cm",
      G5: "none",
      B6: "regular",
      D6: "refused",
      E6: "refused",
      F6: "refused",
    });
  });
});

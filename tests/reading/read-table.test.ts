import { describe, expect, it } from "vitest";
import { sayQuestion } from "../../src/reading/tables/questions.ts";
import { messyCrew } from "../support/messy-crew.ts";
import { readSheet, readText, verdictsOf } from "../support/table-verdicts.ts";

// Tables of our own invention. The verdict of every cell was written down by hand before the reader saw them.

describe("a table with commas, a title, sums and an injury", () => {
  const read = readText(
    [
      "Crew list autumn 2026,,,,,,,,,,,",
      "Name,Sex,DOB,Ht,Weight (kg),C&J (kg),Snatch,BS,2k row,max pull-ups,Injuries,Email",
      `Ana Berg,F,3/4/1991,5'7",63,"82,5",65,110,7:45,22,none,a@x.org`,
      "Bo Lund,M,1988,182,84,120 kg,95,~170,7:05.4,n/a,L shoulder sore no kipping,b@x.org",
      "Cy Vale,M,14/2/1990,178 cm,,130kg,999,170-180,7.32,no,,c@x.org",
      ",,,,,,,,,,,",
      "Average,,,,73,110,80,150,,,,",
    ].join("\n"),
  );

  it("is read cell by cell", () => {
    expect(verdictsOf(read)).toEqual({
      B3: "female",
      C3: "1991",
      D3: `5'7"`,
      E3: "63 kg",
      F3: "82.5 kg",
      G3: "65 kg",
      H3: "110 kg",
      I3: "row 2000 m in 7:45",
      J3: "22",
      K3: "none",
      B4: "male",
      C4: "1988",
      D4: "182 cm",
      E4: "84 kg",
      F4: "120 kg",
      G4: "95 kg",
      H4: "~170 kg",
      I4: "row 2000 m in 7:05.4",
      K4: "asked",
      B5: "male",
      C5: "1990",
      D5: "178 cm",
      F5: "130 kg",
      G5: "refused",
      H5: "asked",
      I5: "asked",
      J5: "none",
    });
  });

  it("passes over its title and its averages, and says so", () => {
    expect(read.passedOver.map(({ cell, why }) => `${cell} ${why}`)).toEqual([
      "t.csv!A1 above the headings",
      "t.csv!A7 worked out of other rows",
    ]);
  });

  it("leaves lines that can be sent as they are", () => {
    expect(read.questions.map(sayQuestion)).toEqual([
      "Which level have those for whom the table says none: new, regular, competitor or elite?",
      'Bo Lund: your Injuries says "L shoulder sore no kipping", but words alone leave nothing out of a plan, and a plan must not go against them. Is it {joint: shoulder, avoid: [kipping], note: "L shoulder sore no kipping"}?',
      'Cy Vale: your BS says "170-180", but this is a range; a plan needs one number, and the lower one is the safer. Is it ~170 kg?',
      'Cy Vale: your 2k row says "7.32", but this may be minutes and seconds, or minutes with a decimal. Is it 7:32 or 7:19?',
    ]);
  });

  it("puts an injury into the file as it stands, so that no brief is made before it is answered", () => {
    const bo = read.athletes.find(({ name }) => name === "Bo Lund");
    expect(bo?.cells.flatMap(({ puts }) => puts).find(({ entry }) => entry === "limits")).toEqual({
      entry: "limits",
      listed: true,
      value: "L shoulder sore no kipping",
    });
  });
});

describe("a table with semicolons and decimal commas in another language", () => {
  it("takes kilograms by the sizes and halves, and asks only for level and sex, once for all", () => {
    const read = readText(
      "\uFEFFNom;Poids;Taille;Épaulé-jeté;Arraché\r\nZoé;61,5;1,68;82,5;62,5\r\nÉloïse;58;171 cm;70;\r\n",
    );
    expect(verdictsOf(read)).toEqual({
      B2: "61.5 kg",
      C2: "168 cm",
      D2: "82.5 kg",
      E2: "62.5 kg",
      B3: "58 kg",
      C3: "171 cm",
      D3: "70 kg",
    });
    expect(read.questions.map(sayQuestion)).toEqual([
      "Which level have those for whom the table says none: new, regular, competitor or elite?",
      "Are those of whom the table does not say it women or men? Where some are each write ?, and tell it in a column `sex` of the table.",
    ]);
  });
});

describe("a pasted table of pounds with one slip", () => {
  const text = [
    "Athlete\tDivision\tBW\tBack Squat\tFront Squat\tDeadlift\tClean\tPress",
    "\t\tlbs\tlbs\tlbs\tlbs\tlbs\tlbs",
    "Dee Holm\twomen\t139\t225\t185\t275\t155\t95",
    "Eli Roux\tmen\t185\t315#\t265\t405\t102,5 kg\t",
    "Fay Ott\twomen\t150\t100\t195\t285\t165\t100",
    "Gil Amo\tmen\t83\t335\t275\t425\t#REF!\t135?",
  ].join("\n");

  it("reads a row of units, asks for kilograms among pounds, refuses a failed formula", () => {
    expect(verdictsOf(readText(text))).toEqual({
      B3: "women",
      C3: "139 lb",
      D3: "225 lb",
      E3: "185 lb",
      F3: "275 lb",
      G3: "155 lb",
      H3: "95 lb",
      B4: "men",
      C4: "185 lb",
      D4: "315 lb",
      E4: "265 lb",
      F4: "405 lb",
      G4: "102.5 kg",
      B5: "women",
      C5: "150 lb",
      // 100 lb beside a front squat of 195 lb and a deadlift of 285 lb: it was 100 kg.
      D5: "asked",
      E5: "195 lb",
      F5: "285 lb",
      G5: "165 lb",
      H5: "100 lb",
      B6: "men",
      // Nobody who squats 335 lb weighs 38 kg.
      C6: "asked",
      D6: "335 lb",
      E6: "275 lb",
      F6: "425 lb",
      G6: "refused",
      H6: "~135 lb",
    });
  });

  it("takes the answer in place of the cell", () => {
    const question = readText(text).questions.find(({ who }) => who === "Fay Ott");
    const answers = new Map([[question ? sayQuestion(question) : "", "kg"]]);
    expect(verdictsOf(readText(text, answers))).toMatchObject({ D5: "100 kg" });
  });
});

describe("one column with both units, and names that are alike", () => {
  const rows = [
    ["Name", "Level", "Deadlift", "Mill Race", "MU", "Comments"],
    ["Sam K.", "regular", "180", "9:41", "5", ""],
    ["sam k ", "regular", "182.5 Kg", "9:30", "6", ""],
    ["Uma Fox", "RX", "405 lb", "203 reps - s", "3", "vegan"],
    ["Vic Ode", "regular", "395", "CAP+28", "x", "bad knee since May"],
    ["ZoÃ« Hart", "new", "100 kg", "0", "", ""],
    ["JOSÉ", "elite", "220 kg", "8:02", "12", ""],
    ["José", "elite", "210 kg", "8:40", "10", ""],
  ];

  it("asks who is who, and takes nothing of them before", () => {
    const read = readSheet({ name: "t.xlsx", rows });
    expect(read.athletes.map(({ name }) => name)).toEqual(["Uma Fox", "Vic Ode"]);
    expect(verdictsOf(read)).toEqual({
      B4: "asked",
      C4: "405 lb",
      D4: JSON.stringify({ workout: "mill-race", reps: "203", version: "scaled" }),
      F4: "vegan",
      B5: "regular",
      C5: "asked",
      D5: "asked",
      F5: "asked",
    });
    expect(read.questions.map(({ text, cell }) => `${cell} ${text}`)).toEqual([
      't.xlsx!E What does the column "MU" hold (5, 6, 3)? Is it ring muscle-up or bar muscle-up?',
      "t.xlsx Are those of whom the table does not say it women or men? Where some are each write ?, and tell it in a column `sex` of the table.",
      'Level What does "RX" in the column "Level" mean: new, regular, competitor or elite?',
      "t.xlsx Is the number behind the cap, as in CAP+28, reps left or reps done?",
      't.xlsx!A6 Is the name "ZoÃ« Hart" meant to be Zoë Hart?',
      't.xlsx!A2 "Sam K." and "sam k" in rows 2 and 3: one person (then write the row that counts) or two?',
      't.xlsx!A7 "JOSÉ" and "José" in rows 7 and 8: one person (then write the row that counts) or two?',
      't.xlsx!C5 your Deadlift says "395", but some cells of the column have a unit, and this number has none. Is it 395 lb or 395 kg?',
      't.xlsx!F5 your Comments says "bad knee since May", but the note speaks of something that may limit training (knee), but a note changes no plan. What is right?',
    ]);
  });
});

describe("a sheet of one athlete, headings down the side", () => {
  it("is turned", () => {
    const rows = [
      ["Name", "Nils Arden"],
      ["Level", "competitor"],
      ["Body weight", "78 kg"],
      ["Front squat 3RM", "120 kg"],
      ["Strict pull-up 1RM", "BW+30 kg"],
      ["7 min burpees", "98"],
      ["400 m run", "59:00"],
      ["Rowing", "2k 7:05.4, 500 m 1:31"],
      ["Notes", "prefers mornings"],
    ];
    const read = readSheet({ name: "nils.xlsx", rows });
    expect(
      read.athletes[0]?.cells.flatMap(({ puts }) =>
        puts.map(
          ({ entry, key, value }) =>
            `${key ?? entry}: ${typeof value === "string" ? value : JSON.stringify(value)}`,
        ),
      ),
    ).toEqual([
      "level: competitor",
      "body mass: 78 kg",
      "front squat: 3 x 120 kg",
      "strict pull-up: BW+30 kg",
      "efforts: 98 burpees in 7:00",
      "efforts: row 2000 m in 7:05.4",
      "efforts: row 500 m in 1:31",
      "note: prefers mornings",
    ]);
    expect(read.asked).toHaveLength(1);
  });
});

describe("two hundred athletes", () => {
  const { text, verdicts } = messyCrew(200, 17);
  const read = readText(text);

  it("are read as each cell's spelling says, without an exception", () => {
    expect(verdictsOf(read)).toEqual(verdicts);
  });

  it("give a question for fewer than one cell in ten", () => {
    const all = Object.values(verdicts);
    expect(all.length).toBeGreaterThan(1100);
    expect(read.asked.length / all.length).toBeLessThan(0.1);
  });
});

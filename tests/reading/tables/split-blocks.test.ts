import { describe, expect, it } from "vitest";
import { readTable } from "../../../src/reading/read-table.ts";
import { openTextTable } from "../../../src/reading/tables/open-text-table.ts";
import { splitBlocks } from "../../../src/reading/tables/split-blocks.ts";
import { tableContext, verdictsOf } from "../../support/table-verdicts.ts";

const blocks = (text: string) => splitBlocks(openTextTable("t.csv", text), tableContext);
const verdicts = (text: string) =>
  blocks(text).map((sheet) => {
    const read = readTable(sheet, tableContext, new Map());
    if (!read) throw new Error("no headings");
    return [read.athletes.map(({ name }) => name), verdictsOf(read)];
  });

describe("several athletes in a row", () => {
  it("are read one block of columns after the other, and every cell keeps its name", () => {
    expect(
      verdicts("Crew,,,,,\nNr,Name,BS (kg),Nr,Name,BS (kg)\n1,Ana Vik,100,2,Bo Lie,110\n3,Cy Dunn,180,,,\n"),
    ).toEqual([
      [["Ana Vik", "Cy Dunn"], { C3: "100 kg", C4: "180 kg" }],
      [["Bo Lie"], { F3: "110 kg" }],
    ]);
  });

  it("are one where only a word of the headings is there twice", () => {
    expect(blocks("Name,BS (kg),Name,Phone\nAna,100,Vik,070\n")).toHaveLength(1);
    expect(blocks("Name,BS (kg),FS (kg)\nAna,100,90\n")).toHaveLength(1);
    expect(blocks("hello,world\n1,2\n")).toHaveLength(1);
  });
});

describe("athletes as columns", () => {
  it.each([
    ",Ana Vik,Bo Lie\nBack squat,100 kg,110 kg\n2k row,7:45,7:40\n",
    "Test,Ana Vik,Bo Lie\nBack squat,100 kg,110 kg\n2k row,7:45,7:40\n",
  ])(
    "are turned, with names in the first row whatever its corner says, and cells as they stand: %j",
    (text) => {
      expect(verdicts(text)).toEqual([
        [
          ["Ana Vik", "Bo Lie"],
          { B2: "100 kg", C2: "110 kg", B3: "row 2000 m in 7:45", C3: "row 2000 m in 7:40" },
        ],
      ]);
    },
  );
});

describe("a table without names", () => {
  it("is told once, and asked about a column that holds some", () => {
    const read = readTable(
      openTextTable("t.csv", "Who knows,BS (kg),2k row\nAna Vik,100,7:45\nBo Lie,110,7:40\n"),
      tableContext,
      new Map(),
    );
    expect(read?.refused.map(({ cell, problem, remedy }) => `${cell}: ${problem}. ${remedy}`)).toEqual([
      "t.csv!A1: no column of the table holds names, so nobody knows whose the rows are. Write `name` above the column with the athletes' names.",
    ]);
    expect(read?.questions[0]?.text).toBe(
      'What does the column "Who knows" hold (Ana Vik, Bo Lie)? Is it name or nothing?',
    );
  });
});

import { describe, expect, it } from "vitest";
import { mergeAthlete } from "../../../src/reading/tables/merge-athlete.ts";
import { sayQuestion } from "../../../src/reading/tables/questions.ts";
import { cellsForAll } from "../../../src/reading/tables/said-for-all.ts";
import { readText, tableContext } from "../../support/table-verdicts.ts";

const BARE = "Name,Back squat (kg)\nAna Vik,100\nBo Lie,110\n";
const SEX =
  "Are those of whom the table does not say it women or men? Where some are each write ?, and tell it in a column `sex` of the table.";
const LEVEL = "Which level have those for whom the table says none: new, regular, competitor or elite?";

describe("what a table says of nobody", () => {
  it("is asked once for everybody", () => {
    expect(readText(BARE).questions.map(sayQuestion)).toEqual([LEVEL, SEX]);
    expect(readText("Name,Level,Division\nAna,new,women\nBo,new,men 35+\n").questions).toEqual([]);
  });

  it("is said of everybody by one answer, and of nobody by a question mark", () => {
    const said = (sex: string) =>
      readText(
        BARE,
        new Map([
          [LEVEL, "elite"],
          [SEX, sex],
        ]),
      ).athletes.map(({ cells }) =>
        cells.flatMap(({ puts }) => puts.map(({ entry, value }) => [entry, value])),
      );
    expect(said("women")).toEqual([
      [
        ["lifts", "100 kg"],
        ["level", "elite"],
        ["sex", "female"],
      ],
      [
        ["lifts", "110 kg"],
        ["level", "elite"],
        ["sex", "female"],
      ],
    ]);
    expect(said("?")).toEqual([
      [
        ["lifts", "100 kg"],
        ["level", "elite"],
      ],
      [
        ["lifts", "110 kg"],
        ["level", "elite"],
      ],
    ]);
  });

  it("is not asked about those whose files say it, and goes against no file", () => {
    const merge = (earlier: object): string =>
      mergeAthlete(
        "Ana",
        "name: Ana\nlevel: new # by hand\n",
        cellsForAll({ level: "elite", sex: "men" }, new Set()),
        {
          earlier: earlier as Record<string, never>,
          find: tableContext.findMovement,
          counts: () => {
            throw new Error("asked");
          },
        },
      ).text;
    expect(merge({})).toBe("name: Ana\nlevel: new # by hand\nsex: male\n");
    expect(cellsForAll({ level: "great" }, new Set())).toEqual([]);
    expect(cellsForAll({ sex: "male" }, new Set(["sex"]))).toEqual([]);
  });
});

import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { readTableFile } from "../../src/site/read-table-file.ts";
import { makeWorkbook } from "../support/make-workbook.ts";
import { readSheet, verdictsOf } from "../support/table-verdicts.ts";

const folder = mkdtempSync(join(tmpdir(), "Täble with spaces "));
afterAll(() => {
  rmSync(folder, { recursive: true });
});

describe("a workbook", () => {
  it("is read cell by cell, days and numbers too, with score, splits and attempts of a workout in one result", async () => {
    const file = join(folder, "Crew Ötz.xlsx");
    writeFileSync(
      file,
      makeWorkbook("Crew", [
        ["Autumn crew"],
        ["Name", "Level", "Born", "Weight (kg)", "Back squat (kg)", "Mill Race", "Mill Race splits", "Squad"],
        ["Ada Brek", "regular", new Date("1991-04-03"), 63, 102.5, "9:41", "3:10, 6:25, 9:41", "early"],
        ["Béla Dahl", "new", 1988, 84, "120 kg", "10:05", "3:20, 3:22, 3:23", "late"],
        ["Cy Esk", "elite", 1990, 78, 150, undefined, "1:32, 1:40, 1:45", "early"],
        ["Dace Grau", "elite", 1990, 78, "#REF!", "8:01", "quick", "early"],
      ]),
    );
    const { sheets } = await readTableFile(file);
    const [sheet] = sheets;
    if (!sheet) throw new Error("no sheet was read");
    const read = readSheet(sheet);
    const result = (time: string, splits: readonly string[]): string =>
      JSON.stringify({ workout: "mill-race", time, splits });
    expect(verdictsOf(read)).toEqual({
      ...{ B3: "regular", C3: "1991", D3: "63 kg", E3: "102.5 kg", H3: "early" },
      F3: result("9:41", ["3:10", "6:25", "9:41"]),
      ...{ B4: "new", C4: "1988", D4: "84 kg", E4: "120 kg", H4: "late" },
      // 200 + 202 + 203 s are the 10:05 beside them.
      F4: result("10:05", ["3:20", "6:42", "10:05"]),
      ...{ B5: "elite", C5: "1990", D5: "78 kg", E5: "150 kg", G5: "asked", H5: "early" },
      ...{ B6: "elite", C6: "1990", D6: "78 kg", E6: "refused", G6: "refused", H6: "early" },
      F6: JSON.stringify({ workout: "mill-race", time: "8:01" }),
    });
    expect(read.refused[0]?.cell).toBe("Crew Ötz.xlsx!E6");
  });

  it("that is none says what to do", async () => {
    const file = join(folder, "no.xlsx");
    writeFileSync(file, "name,level");
    await expect(readTableFile(file)).rejects.toThrow(
      "no.xlsx is no workbook that can be read. Open it and save it again as .xlsx, or as .csv.",
    );
  });
});

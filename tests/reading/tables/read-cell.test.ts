import { describe, expect, it } from "vitest";
import type { TableRead } from "../../../src/reading/read-table.ts";
import { sayQuestion } from "../../../src/reading/tables/questions.ts";
import { expectSavedText } from "../../support/golden.ts";
import { readText, verdictsOf } from "../../support/table-verdicts.ts";

// Cells as people type them, each alone below its heading. The verdicts were written down before the reader saw the cells: what a
// careful person would take, ask about, refuse, or pass over as not known (undefined).
const readCell = (heading: string, cell: string): TableRead => {
  const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;
  return readText(`Name,Level,${quoted(heading)}\nAda Berg,regular,${quoted(cell)}\n`);
};
const verdict = (heading: string, cell: string): string | undefined =>
  verdictsOf(readCell(heading, cell))["C2"];
type Cells = readonly (readonly [string, string | undefined])[];
const notTaken: (readonly [string, string])[] = [];
const cells = (heading: string, list: Cells) => {
  for (const [cell, expected] of list)
    if (expected === "asked" || expected === "refused") notTaken.push([heading, cell]);
  it.each(list)(`in a column "${heading}": %j`, (cell, expected) => {
    expect(verdict(heading, cell)).toBe(expected);
  });
};

describe("loads", () => {
  cells("Back squat (kg)", [
    ["82,5", "82.5 kg"],
    ["\u00a0100\u00a0kg", "100 kg"],
    ["１００", "100 kg"],
    ["100\u200bkg", "100 kg"],
    ["100 Kgs.", "100 kg"],
    ["'100", "100 kg"],
    ["100.", "100 kg"],
    ["220 lbs", "220 lb"],
    ["100kg (220lb)", "100 kg"],
    ["80ish", "~80 kg"],
    ["est. 100", "~100 kg"],
    ["PR 100 (2019)", "100 kg (2019-07-01)"],
    ["105 Jan 2025", "105 kg (2025-01-15)"],
    ["105kg 12/2023", "105 kg (2023-12-15)"],
    ["105 kg (belt)", "105 kg"],
    ["105kg w/ belt", "105 kg"],
    ["105kg PB!", "105 kg"],
    ["105 kg 🎉", "105 kg"],
    ["100kg x 3", "3 x 100 kg"],
    ["100x3reps", "3 x 100 kg"],
    ["90 (3RM)", "3 x 90 kg"],
    ["n/a", undefined],
    ["–", undefined],
    ["not tested", undefined],
    ["100kg (200lb)", "asked"],
    ["105 (Mar 24)", "asked"],
    ["105+", "asked"],
    ["100-105", "asked"],
    ["100/105", "asked"],
    ["3@100", "asked"],
    ["failed 100", "asked"],
    ["missed 110, made 105", "asked"],
    ["100 kg fail", "asked"],
    ["105 kg (on a good day)", "asked"],
    ["0", "asked"],
    ["10O", "asked"],
    ["#REF!", "refused"],
    ["=100+5", "refused"],
    ["1.20.5", "refused"],
    ["1e2", "refused"],
    ["45384", "refused"],
    ["2 plates", "refused"],
    ["same as last year", "refused"],
    ["1".repeat(3000), "refused"],
  ]);
  it("ask what a year and a day have in common as a year", () => {
    const { questions } = readText("Name,Sex,Level,BS (kg)\nAda,F,regular,105 (Mar 24)\n");
    expect(questions.map(({ text }) => text)).toEqual([
      'your BS (kg) says "105 (Mar 24)", but the number may be the year or the day. Is it 2024-03?',
    ]);
  });
});

describe("times", () => {
  cells("2k row", [
    ["7:32", "row 2000 m in 7:32"],
    ["7：32", "row 2000 m in 7:32"],
    ["7'32", "row 2000 m in 7:32"],
    ["7 min 32", "row 2000 m in 7:32"],
    ["0:07:32", "row 2000 m in 7:32"],
    ["in 7:32", "row 2000 m in 7:32"],
    ["2k in 7:32", "row 2000 m in 7:32"],
    ["7:32 (2023)", "row 2000 m in 7:32 (2023-07-01)"],
    ["DNS", undefined],
    ["7.32", "asked"],
    ["7-32", "asked"],
    ["452", "asked"],
    ["sub 8", "asked"],
    ["7:32 / 7:40", "asked"],
    ["7:32 last year", "asked"],
    ["7:45/500m", "asked"],
    ["7:32:00", "asked"],
    // The fastest known is a little over 5:35.
    ["5:10", "refused"],
    ["1:52", "refused"],
    ["3:12:00", "refused"],
  ]);
});

describe("persons", () => {
  cells("Height", [
    ["5´7", "5'7"],
    ["172.5", "172.5 cm"],
    ["1 m 70", "170 cm"],
    ["160-165", "asked"],
    ["5.7", "asked"],
    ["medium", "refused"],
  ]);
  cells("Weight (kg)", [
    ["7２", "72 kg"],
    ["72 kg (morning)", "72 kg"],
    ["private", undefined],
    ["prefer not to say", undefined],
    ["72-74", "asked"],
    ["720", "asked"],
    ["-72", "refused"],
  ]);
  cells("Born", [
    ["1991?", "1991"],
    ["c. 1991", "1991"],
    ["33331", "1991"],
    ["31/02/1991", "asked"],
    ["33", "asked"],
    ["1891", "refused"],
  ]);
  cells("Sex", [
    ["Weiblich", "female"],
    ["♂", "male"],
    ["non-binary", undefined],
    ["prefer not to say", undefined],
    ["banana", "asked"],
  ]);
  cells("Injuries", [
    ["all fine", "none"],
    ["ok", "none"],
  ]);
  it("have a level that is asked about once for every word nobody knows", () => {
    const { questions } = readText("Name,Sex,Level\nAda,F,Scaled\nBo,M,Scaled\nCy,M,comp\n");
    expect(questions.map(({ text }) => text)).toEqual([
      'What does "Scaled" in the column "Level" mean: new, regular, competitor or elite?',
      'What does "comp" in the column "Level" mean: new, regular, competitor or elite?',
    ]);
  });
});

describe("sets without a break", () => {
  cells("max pull-ups", [
    ["12 (kipping)", "12"],
    ["12 butterfly", "12"],
    ["10 (2024)", "10"],
    ["12 UB", "12"],
    ["can't", "none"],
    ["12 kip / 5 strict", "refused"],
    ["12 / 8", "asked"],
    ["5 with band", "asked"],
    ["jumping", "asked"],
    ["10 @ 10kg", "refused"],
    ["12,5", "refused"],
  ]);
  it("that were strict are sets of the strict movement", () => {
    const [ada] = readText("Name,Level,max pull-ups\nAda,regular,12 strict\n").athletes;
    expect(ada?.cells.flatMap(({ puts }) => puts)).toContainEqual({
      entry: "unbroken",
      key: "strict pull-up",
      value: "12",
    });
  });
});

it("every cell that is not taken is answered in words that say what is wrong and what to write", () => {
  const told = notTaken.map(([heading, cell]) => {
    const { questions, refused } = readCell(heading, cell);
    const answers = [
      ...questions.map(sayQuestion),
      ...refused.map(({ cell: at, problem, remedy }) => `${at}: ${problem} ${remedy}`),
    ];
    expect(answers).not.toEqual([]);
    return [
      `${heading} | ${cell.length > 100 ? `${cell.slice(0, 20)}… (${cell.length} signs)` : cell}`,
      ...answers,
    ].join("\n");
  });
  expectSavedText("refused-cells.txt", `${told.join("\n\n")}\n`);
});

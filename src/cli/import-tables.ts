import type { AthleteContext } from "../reading/athlete-file/context.ts";
import { openYaml } from "../reading/yaml/open-yaml.ts";
import { sexOfDivision } from "../models/sex-words.ts";
import { readTable, type SaidInFiles, type TableRead } from "../reading/read-table.ts";
import type { TableAthlete } from "../reading/read-table-row.ts";
import { type Change, type EarlierCells, mergeAthlete } from "../reading/tables/merge-athlete.ts";
import { type Question, sayQuestion, writeQuestions } from "../reading/tables/questions.ts";
import { splitBlocks } from "../reading/tables/split-blocks.ts";
import type { Sheet } from "../reading/tables/sheet.ts";
import { idFor, type IntakeFolder, type IntakeOutput, nameKey } from "../site/intake-folder.ts";

/** An athlete's file as the import leaves it. */
type ImportedAthlete = {
  readonly id: string;
  readonly name: string;
  readonly isNew: boolean;
  readonly changes: readonly Change[];
};

export type Import = {
  readonly tables: readonly { readonly sheet: Sheet; readonly read: TableRead }[];
  /** Sheets in which no headings were found. */
  readonly faults: readonly string[];
  readonly athletes: readonly ImportedAthlete[];
  readonly questions: readonly Question[];
  readonly open: number;
  readonly output: IntakeOutput;
};

/** Reads tables into athlete files, with what is left to ask. Files are made, not written. */
export function importTables(
  sheets: readonly Sheet[],
  context: AthleteContext,
  folder: IntakeFolder,
  command: string,
): Import {
  const faults: string[] = [];
  const tables = sheets
    .flatMap((whole) => splitBlocks(whole, context))
    .flatMap((sheet) => {
      if (sheet.rows.every((row) => row.every((cell) => cell === ""))) return [];
      const read = readTable(sheet, context, folder.answers, saidIn(folder));
      if (!read)
        faults.push(
          `${sheet.name}: no row of headings was found. Write one above the athletes, such as: name, level, back squat (kg).`,
        );
      return read ? [{ sheet, read }] : [];
    });
  const ids = new Set(folder.ids);
  const people = tables.flatMap(({ read }) => read.athletes);
  const byName = Map.groupBy(people, ({ name }) => nameKey(name));
  const merged = [...byName.values()].map((same) => mergeOne(same, ids, context, folder));
  const questions = unique([
    ...tables.flatMap(({ read }) => read.questions),
    ...merged.flatMap((one) => one.questions),
  ]);
  const cells = { ...folder.earlier };
  for (const { athlete, cells: own } of merged) cells[athlete.id] = { ...cells[athlete.id], ...own };
  return {
    tables,
    faults,
    athletes: merged.map(({ athlete }) => athlete),
    questions,
    open: questions.filter((question) => !folder.answers.has(sayQuestion(question))).length,
    output: {
      athletes: merged.flatMap(({ file }) => file ?? []),
      questions: writeQuestions(questions, folder.answers, command),
      cells,
    },
  };
}

/** What the files say of those who have one. A division of one sex says the sex. */
const saidIn =
  ({ files }: IntakeFolder): SaidInFiles =>
  (name) => {
    const file = files.get(nameKey(name));
    const value = file && openYaml(file.id, file.text, "text").value;
    const entries = (typeof value === "object" && value !== null ? value : {}) as Record<string, unknown>;
    const { division } = entries;
    const isOfSex = typeof division === "string" && sexOfDivision(division) !== undefined;
    return new Set([...Object.keys(entries), ...(isOfSex ? ["sex"] : [])]);
  };

/** What several sheets ask in the same words is asked once. */
const unique = (questions: readonly Question[]): readonly Question[] => [
  ...new Map(questions.map((question) => [sayQuestion(question), question])).values(),
];

/** The rows of one athlete on all sheets, put into one file. */
function mergeOne(
  same: readonly TableAthlete[],
  ids: Set<string>,
  context: AthleteContext,
  folder: IntakeFolder,
) {
  const name = same[0]?.name ?? "";
  const existing = folder.files.get(nameKey(name));
  const id = existing?.id ?? idFor(name, ids);
  ids.add(id);
  const questions: Question[] = [];
  const unsettled = new Set<string>();
  const earlier = existing === undefined ? {} : (folder.earlier[id] ?? {});
  const cells = same.flatMap((one) => one.cells);
  const { text, changes } = mergeAthlete(name, existing?.text, cells, {
    earlier,
    find: context.findMovement,
    counts: (kept) => {
      const question = conflict(name, id, kept);
      questions.push(question);
      const answer = folder.answers.get(sayQuestion(question));
      if (answer === undefined) unsettled.add(kept.cell);
      return answer === undefined ? undefined : /^(?:the )?table/i.test(answer) ? "table" : "file";
    },
  });
  // A cell that waits for an answer counts as not seen yet, so that it is asked about again.
  const seen: EarlierCells = Object.fromEntries(
    cells
      .filter(({ cell }) => !unsettled.has(cell))
      .map(({ heading, raw, puts }) => [heading, { raw, puts }]),
  );
  const athlete: ImportedAthlete = { id, name, isNew: existing === undefined, changes };
  const isChanged = existing === undefined || text !== existing.text;
  return { athlete, questions, cells: seen, ...(isChanged ? { file: { id, text } } : {}) };
}

function conflict(who: string, id: string, { what, from, to, cell }: Change): Question {
  const held = from === undefined ? "was taken out of it" : `is "${from}" there`;
  const text = `the table says "${to}" for ${what}, but in ${id}.yaml it ${held} by hand. Which counts, the table or the file?`;
  return { who, text, cell, proposals: ["table", "file"] };
}

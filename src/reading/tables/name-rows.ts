import { comparable } from "../../models/nearest.ts";
import type { Column } from "./settle-columns.ts";
import type { Layout } from "./lay-out.ts";
import { mendText } from "./mend-text.ts";
import { type Answers, type Question, sayQuestion } from "./questions.ts";
import { cellAt, cellName, rowIn } from "./sheet.ts";

/** A row with the athlete's name. */
export type NamedRow = { readonly row: number; readonly name: string };

type NamedRows = {
  readonly rows: readonly NamedRow[];
  readonly questions: readonly Question[];
  /** Rows without a name, or with one that cannot be read. */
  readonly refused: readonly {
    readonly cell: string;
    readonly raw: string;
    readonly problem: string;
    readonly remedy: string;
  }[];
};

/** `Ann & Ben`, `Ann / Ben`, `Ann Holt and Ben Roux`. */
const TWO_PEOPLE =
  /^(\p{L}[\p{L}\p{M}.' -]*?)\s*(?:&|\+|\/|\s(?:and|und|et|og|och|y)\s)\s*(\p{L}[\p{L}\p{M}.' -]*)$/iu;

/** A table without names is told once and not for every row. */
const NOBODY_NAMED = ({ sheet, head }: Layout): NamedRows => ({
  rows: [],
  questions: [],
  refused: [
    {
      cell: cellName(sheet, { row: head, column: 0 }),
      raw: cellAt(sheet, { row: head, column: 0 }),
      problem: "no column of the table holds names, so nobody knows whose the rows are",
      remedy: "Write `name` above the column with the athletes' names.",
    },
  ],
});

/** Names blind to case, spaces, points and accents. */
const alike = (name: string): string => comparable(name.replace(/[.'’-]/g, ""));

/**
 * Finds the athlete of each row. Nobody is put together by name alone: rows whose names are alike are asked about, and
 * none of them counts until somebody says whether it is one person, and which row holds.
 */
export function nameRows(layout: Layout, columns: readonly Column[], answers: Answers): NamedRows {
  const { sheet } = layout;
  const at = (kind: string): number | undefined =>
    columns.find(({ meaning }) => meaning.kind === kind)?.index;
  const [whole, first, last] = [at("name"), at("first name"), at("last name")];
  const named = whole ?? first ?? last;
  if (named === undefined) return NOBODY_NAMED(layout);
  const flipped = whole !== undefined && isLastFirst(layout, whole);
  const refused: NamedRows["refused"][number][] = [];
  const questions: Question[] = [];
  const rows = layout.rows.flatMap((row): readonly NamedRow[] => {
    const parts = [whole, first, last].flatMap((column) =>
      column === undefined ? [] : [cellAt(sheet, { row, column })],
    );
    const raw = parts
      .filter((part) => part !== "")
      .join(" ")
      .replace(/\s+/g, " ");
    const cell = cellName(sheet, { row, column: named });
    if (raw === "" || /^[\d.,:#/-]+$/.test(raw)) {
      const problem = raw === "" ? "the row has no name" : "this is no name";
      refused.push({ cell, raw, problem, remedy: "Write the athlete's name into the row." });
      return [];
    }
    const mended = mendText(raw);
    if (mended.kind === "lost") {
      const remedy = "Type the name again, or save the table as UTF-8.";
      refused.push({ cell, raw, problem: "letters were lost when the table was saved", remedy });
      return [];
    }
    if (mended.kind === "garbled") {
      const question: Question = {
        text: `Is the name "${raw}" meant to be ${mended.text}?`,
        cell,
        proposals: [mended.text],
      };
      const answer = answers.get(sayQuestion(question));
      questions.push(question);
      if (answer === undefined) return [];
      return [{ row, name: /^(?:yes|y|ja|ok)$/i.test(answer) ? mended.text : answer }];
    }
    const two = TWO_PEOPLE.exec(raw);
    if (two) {
      const question: Question = {
        text: `Are "${raw}" two people? Then give each a row; else write \`one\`, or the name.`,
        cell,
        proposals: ["one", two[1] ?? "", two[2] ?? ""],
      };
      const answer = answers.get(sayQuestion(question));
      questions.push(question);
      if (answer === undefined) return [];
      return [{ row, name: /^one$/i.test(answer) ? raw : answer }];
    }
    return [{ row, name: flipped ? raw.replace(/^([^,]+),\s*(.+)$/, "$2 $1") : raw }];
  });
  const apart = tellApart(rows, layout, named, answers);
  return { rows: apart.rows, questions: [...questions, ...apart.questions], refused };
}

/** `Ångström, Zoë` in most rows. */
function isLastFirst({ sheet, rows }: Layout, column: number): boolean {
  const names = rows.map((row) => cellAt(sheet, { row, column })).filter((name) => name !== "");
  return names.filter((name) => /^[^,]+,\s*[^,]+$/.test(name)).length * 2 > names.length;
}

function tellApart(
  rows: readonly NamedRow[],
  { sheet }: Layout,
  column: number,
  answers: Answers,
): { readonly rows: readonly NamedRow[]; readonly questions: readonly Question[] } {
  const groups = Map.groupBy(rows, ({ name }) => alike(name));
  const questions: Question[] = [];
  const kept = [...groups.values()].flatMap((group): readonly NamedRow[] => {
    const [one, ...others] = group;
    if (!one || others.length === 0) return group;
    const what = sheet.isTurned ? "column" : "row";
    const names = [...new Set(group.map(({ name }) => `"${name}"`))].join(" and ");
    const numbers = group.map(({ row }) => rowIn(sheet, row));
    const question: Question = {
      text: `${names} in ${what}s ${numbers.join(" and ")}: one person (then write the ${what} that counts) or two?`,
      cell: cellName(sheet, { row: one.row, column }),
      proposals: ["two", ...numbers.map((number) => `${what} ${number}`)],
    };
    questions.push(question);
    const answer = answers.get(sayQuestion(question));
    if (answer === undefined) return [];
    const chosen = numbers.indexOf(
      answer
        .replace(/^(?:the )?(?:row|column)\s*/i, "")
        .trim()
        .toUpperCase(),
    );
    if (chosen >= 0) return group.slice(chosen, chosen + 1);
    return group.map(({ row, name }, index) => ({
      row,
      name: index === 0 ? name : `${name} (${index + 1})`,
    }));
  });
  return { rows: kept, questions };
}

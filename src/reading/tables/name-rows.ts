import { comparable } from "../../models/nearest.ts";
import type { Column } from "./settle-columns.ts";
import type { Layout } from "./lay-out.ts";
import { mendText } from "./mend-text.ts";
import { type Answers, type Question, sayQuestion } from "./questions.ts";
import { cellAt, cellName } from "./sheet.ts";

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
    const cell = cellName(sheet, { row, column: named ?? 0 });
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
  const apart = tellApart(rows, layout, named ?? 0, answers);
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
    const names = [...new Set(group.map(({ name }) => `"${name}"`))].join(" and ");
    const numbers = group.map(({ row }) => row + 1);
    const question: Question = {
      text: `${names} in rows ${numbers.join(" and ")}: one person (then write the row that counts) or two?`,
      cell: cellName(sheet, { row: one.row, column }),
      proposals: ["two", ...numbers.map((number) => `row ${number}`)],
    };
    questions.push(question);
    const answer = answers.get(sayQuestion(question));
    if (answer === undefined) return [];
    const chosen = Number(/\d+/.exec(answer)?.[0]);
    if (numbers.includes(chosen)) return group.filter(({ row }) => row + 1 === chosen);
    return group.map(({ row, name }, index) => ({
      row,
      name: index === 0 ? name : `${name} (${index + 1})`,
    }));
  });
  return { rows: kept, questions };
}

import { sexOfDivision } from "../models/sex-words.ts";
import type { Put } from "./tables/cell-reading.ts";
import type { Layout } from "./tables/lay-out.ts";
import type { NamedRow } from "./tables/name-rows.ts";
import { answered, type Answers, type Question, sayQuestion } from "./tables/questions.ts";
import type { CellContext } from "./tables/from-file.ts";
import { type AnswerOf, readRow } from "./tables/read-row.ts";
import { putsOf, type RowCell } from "./tables/row-cell.ts";
import type { Column } from "./tables/settle-columns.ts";
import { cellAt, cellName } from "./tables/sheet.ts";
import { sayDoubt, sharedQuestion, type Whole } from "./table-questions.ts";

/** A cell that was taken, with what it puts into the athlete's file. */
type TakenCell = {
  readonly heading: string;
  readonly cell: string;
  readonly raw: string;
  readonly puts: readonly Put[];
  readonly told?: string;
  /** Set where it only fills what the file leaves open. */
  readonly fills?: true;
};

/** An athlete of a table with the cells that were taken. */
export type TableAthlete = {
  readonly name: string;
  readonly cells: readonly TakenCell[];
  /** Entries that the row says, or waits for an answer about. */
  readonly says: ReadonlySet<string>;
};

/** A cell that could not be taken, of whom, and why. */
export type RefusedCell = {
  readonly who: string;
  readonly cell: string;
  readonly raw: string;
  readonly problem: string;
  readonly remedy: string;
};

/** One row as read: what was taken, what is asked of its athlete and of the whole table, and what was refused. */
export type ReadRow = {
  readonly athlete: TableAthlete;
  readonly questions: readonly Question[];
  readonly wholes: readonly Question[];
  readonly refused: readonly RefusedCell[];
  readonly asked: readonly string[];
};

/** Reads the row of one athlete. What cannot be taken is refused or asked about, never guessed. */
export function readAthlete(
  { row, name }: NamedRow,
  layout: Layout,
  columns: readonly Column[],
  context: CellContext,
  { answers, whole }: { readonly answers: Answers; readonly whole: Whole },
): ReadRow {
  const { sheet } = layout;
  const cellOf = ({ index }: Column): string => cellName(sheet, { row, column: index });
  const questions: Question[] = [];
  const wholes: Question[] = [];
  const answerOf: AnswerOf = (column, raw, reading) => {
    const shared = sharedQuestion(column, raw, reading, whole);
    if (shared?.settles === "table") {
      wholes.push(shared.question);
      return undefined;
    }
    const question = shared?.question ?? {
      who: name,
      text: sayDoubt(column, raw, reading),
      cell: cellOf(column),
      proposals: reading.proposals,
    };
    const answer = answers.get(sayQuestion(question));
    (shared ? wholes : questions).push(question);
    return answer === undefined ? undefined : answered(raw, answer, reading.proposals);
  };
  const aged = columns.map((column) =>
    ageAsYear(column, cellAt(sheet, { row, column: column.index }), { answers, whole }),
  );
  wholes.push(...aged.flatMap(({ asks }) => asks ?? []));
  const cells = aged.filter(({ raw }) => raw !== "");
  const read = readRow(cells, context, answerOf);
  const refused = read.flatMap((cell): readonly RefusedCell[] =>
    cell.reading.kind === "refused"
      ? [
          {
            who: name,
            cell: cellOf(cell.column),
            raw: cell.raw,
            problem: cell.reading.problem,
            remedy: cell.reading.remedy,
          },
        ]
      : [],
  );
  const taken = read.flatMap((cell) => takenCell(cell, cellOf(cell.column)));
  return {
    athlete: {
      name,
      cells: taken,
      says: saidIn(read),
    },
    questions,
    wholes,
    refused,
    asked: read.flatMap((cell) => (cell.reading.kind === "asked" ? [cellOf(cell.column)] : [])),
  };
}

function takenCell(cell: RowCell, name: string): readonly TakenCell[] {
  const { heading } = cell.column;
  if (cell.reading.kind === "asked" && mayLimit(cell)) {
    // Until somebody says what it leaves out, the words stand in the file, and the check lets no brief pass with them.
    return [
      { heading, cell: name, raw: cell.text, puts: [{ entry: "limits", listed: true, value: cell.raw }] },
    ];
  }
  const puts = putsOf(cell);
  if (cell.reading.kind !== "taken" || puts.length === 0) return [];
  return [
    {
      heading,
      cell: name,
      raw: cell.text,
      puts,
      ...(cell.reading.told === undefined ? {} : { told: cell.reading.told }),
    },
  ];
}

/** The entries that cells say or wait for an answer about. A division that speaks of a sex says it. */
function saidIn(cells: readonly RowCell[]): ReadonlySet<string> {
  const said = cells.flatMap(({ column: { meaning }, reading }) =>
    meaning.kind === "entry" && reading.kind !== "nothing" ? [meaning.entry] : [],
  );
  const division = cells.flatMap(putsOf).find(({ entry }) => entry === "division")?.value;
  const isOfSex = typeof division === "string" && sexOfDivision(division) !== undefined;
  return new Set([...said, ...(isOfSex ? ["sex"] : [])]);
}

/** Words that may keep an athlete from something. */
const mayLimit = ({ column: { meaning } }: RowCell): boolean =>
  meaning.kind === "entry" && (meaning.entry === "limits" || meaning.entry === "note");

/** An age is a year of birth only with the year it was right in; once that is said, it is read as one. */
function ageAsYear(
  column: Column,
  raw: string,
  { answers, whole }: { readonly answers: Answers; readonly whole: Whole },
): { readonly column: Column; readonly raw: string; readonly asks?: Question } {
  if (column.meaning.kind !== "age" || raw === "") return { column, raw };
  const year = Number(/\d{4}/.exec(answers.get(sayQuestion(whole.ages)) ?? "")?.[0]);
  const age = Number(/^\d{1,2}$/.exec(raw)?.[0]);
  const meaning = { kind: "entry", entry: "born" } as const;
  const isKnown = year > 0 && age > 0;
  return { column: { ...column, meaning }, raw: isKnown ? String(year - age) : "", asks: whole.ages };
}

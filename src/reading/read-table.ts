import { sexOfDivision } from "../models/sex-words.ts";
import type { AthleteContext } from "./athlete-file/context.ts";
import { orderOfDates } from "./athlete-file/date-order.ts";
import type { DateOrder } from "./quantities/date.ts";
import { athleteReader } from "./read-athlete.ts";
import type { AskedCell, Put } from "./tables/cell-reading.ts";
import { layOut, type Layout } from "./tables/lay-out.ts";
import { nameRows, type NamedRow } from "./tables/name-rows.ts";
import { answered, type Answers, type Question, sayChoice, sayQuestion } from "./tables/questions.ts";
import type { CellContext } from "./tables/from-file.ts";
import { cellsForAll, type SaidForAll } from "./tables/said-for-all.ts";
import { type AnswerOf, readRow } from "./tables/read-row.ts";
import { putsOf, type RowCell } from "./tables/row-cell.ts";
import { type Column, isMass, settleColumns } from "./tables/settle-columns.ts";
import { cellAt, cellName, columnIn, type Sheet } from "./tables/sheet.ts";

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

export type TableAthlete = {
  readonly name: string;
  readonly cells: readonly TakenCell[];
  /** Entries that the row says, or waits for an answer about. */
  readonly says: ReadonlySet<string>;
};

/** What the files of athletes who are there already say, by their names. */
export type SaidInFiles = (name: string) => ReadonlySet<string>;

type RefusedCell = {
  readonly who: string;
  readonly cell: string;
  readonly raw: string;
  readonly problem: string;
  readonly remedy: string;
};

/** What a table says: athletes with what was taken, and every cell that was not. */
export type TableRead = {
  /** As it was read: turned, where the headings stand in the first column. */
  readonly sheet: Sheet;
  readonly columns: readonly Column[];
  readonly athletes: readonly TableAthlete[];
  readonly questions: readonly Question[];
  readonly refused: readonly RefusedCell[];
  readonly passedOver: Layout["passedOver"];
  /** Cells of athletes that wait for an answer, by their names. */
  readonly asked: readonly string[];
};

/**
 * Reads a table as people have it into entries of athlete files. Every cell is judged by the reader of those files; what is
 * sure is taken, what can mean two things is asked, nonsense is refused. Answers are those to the questions of a reading
 * before. Nothing where no headings are found. Never throws.
 */
export function readTable(
  sheet: Sheet,
  given: AthleteContext,
  answers: Answers,
  saidInFiles: SaidInFiles = () => new Set(),
): TableRead | undefined {
  const layout = layOut(sheet, given);
  if (!layout) return undefined;
  const whole = wholeQuestions(layout);
  const said = (question: Question): string | undefined => answers.get(sayQuestion(question));
  const loads = /^(?:kg|lb)/i.exec(said(whole.loads) ?? "")?.[0].toLowerCase();
  const open = settleColumns(layout, given, { columns: new Map() }).map((column) =>
    columnQuestion(layout, column),
  );
  const columnAnswers = new Map(
    open.flatMap(({ index, question }) => {
      const answer = question && said(question);
      return answer === undefined ? [] : [[index, answer] as const];
    }),
  );
  const columns = settleColumns(layout, given, {
    columns: columnAnswers,
    ...(loads === "kg" || loads === "lb" ? { loads } : {}),
  });
  const named = nameRows(layout, columns, answers);
  const dates = given.dates ?? dateOrder(said(whole.dates)) ?? datesOf(layout, columns);
  const context: CellContext = {
    read: readerOfText({ ...given, ...(dates === undefined ? {} : { dates }) }),
    findMovement: given.findMovement,
    gyms: given.gyms,
    ...cappedBy(said(whole.capped)),
  };
  const rows = named.rows.map((row) => readAthlete(row, layout, columns, context, { answers, whole }));
  const known = rows.map(({ athlete: { name, says } }) => new Set([...says, ...saidInFiles(name)]));
  const forAll = settledForAll(whole, said);
  const needed = neededOfAll(rows, known, columns, layout, { whole, forAll });
  const questions = [
    ...open.flatMap(({ question }) => question ?? []),
    ...needed,
    ...named.questions,
    ...unique(rows.flatMap((row) => row.questions)),
  ];
  const refused = [
    ...named.refused.map((one) => ({ who: "", ...one })),
    ...rows.flatMap((row) => row.refused),
  ];
  return {
    sheet: layout.sheet,
    columns,
    athletes: rows.map(({ athlete }) => ({
      ...athlete,
      cells: [...athlete.cells, ...cellsForAll(forAll, athlete.says)],
    })),
    questions,
    refused,
    passedOver: layout.passedOver,
    asked: rows.flatMap((row) => row.asked),
  };
}

function readerOfText(context: AthleteContext): CellContext["read"] {
  const read = athleteReader(context);
  return (text) => read({ path: "athletes/somebody.yaml", text });
}

const cappedBy = (answer: string | undefined): Pick<CellContext, "capped"> =>
  answer === undefined ? {} : { capped: /^done/i.test(answer) ? "done" : "left" };

const dateOrder = (answer: string | undefined): DateOrder | undefined =>
  answer === undefined ? undefined : /^d/i.test(answer) ? "day-first" : "month-first";

const datesOf = ({ sheet, rows }: Layout, columns: readonly Column[]): DateOrder | undefined =>
  orderOfDates(
    columns.flatMap(({ index }) => rows.map((row) => cellAt(sheet, { row, column: index }))).join("\n"),
  );

/** Questions about the whole table, whose answers settle many cells. */
function wholeQuestions({ sheet }: Layout) {
  const ask = (text: string, proposals: readonly string[]): Question => ({
    text,
    cell: sheet.name,
    proposals,
  });
  return {
    loads: ask("Are the loads and body masses without a unit in kg or in lb?", ["kg", "lb"]),
    level: ask("Which level have those for whom the table says none: new, regular, competitor or elite?", [
      "new",
      "regular",
      "competitor",
      "elite",
    ]),
    sex: ask(
      "Are those of whom the table does not say it women or men? Where some are each write ?, and tell it in a column `sex` of the table.",
      ["female", "male", "?"],
    ),
    dates: ask("Are dates such as 3/4/26 written day first or month first?", ["day first", "month first"]),
    capped: ask("Is the number behind the cap, as in CAP+28, reps left or reps done?", ["left", "done"]),
    ages: ask("In which year were the ages of the table right?", []),
  };
}

type Whole = ReturnType<typeof wholeQuestions>;

/** Asks what a column holds whose heading does not say it. */
function columnQuestion(
  { sheet }: Layout,
  { index, heading, meaning, samples }: Column,
): { readonly index: number; readonly question?: Question } {
  if (meaning.kind !== "unclear") return { index };
  const choice =
    meaning.proposals.length === 0
      ? " Say it in other words, such as `2k row`, `max pull-ups` or `back squat`, or write `nothing`."
      : ` Is it ${sayChoice(meaning.proposals)}?`;
  const title = heading === "" ? "without a heading" : `"${heading}"`;
  const text = `What does the column ${title} hold (${samples.join(", ")})?${choice}`;
  return {
    index,
    question: { text, cell: `${sheet.name}!${columnIn(sheet, index)}`, proposals: meaning.proposals },
  };
}

function settledForAll(whole: Whole, said: (question: Question) => string | undefined): SaidForAll {
  const [level, sex] = [said(whole.level), said(whole.sex)];
  return { ...(level === undefined ? {} : { level }), ...(sex === undefined ? {} : { sex }) };
}

/** What the table as a whole leaves open, once for all. `known` are the entries known of each athlete. */
function neededOfAll(
  rows: readonly ReadRow[],
  known: readonly ReadonlySet<string>[],
  columns: readonly Column[],
  layout: Layout,
  { whole, forAll }: { readonly whole: Whole; readonly forAll: SaidForAll },
): readonly Question[] {
  const bare = columns.some(
    ({ meaning, unit, mixed, index }) =>
      isMass(meaning) &&
      unit === undefined &&
      !mixed &&
      layout.rows.some((row) => /^[~<>]?\s*\d[\d.,]*\??$/.test(cellAt(layout.sheet, { row, column: index }))),
  );
  const lacks = (entry: "level" | "sex"): boolean =>
    forAll[entry] !== undefined || known.some((has) => !has.has(entry));
  return unique([
    ...(bare ? [whole.loads] : []),
    ...(lacks("level") ? [whole.level] : []),
    ...(lacks("sex") ? [whole.sex] : []),
    ...rows.flatMap(({ wholes }) => wholes),
  ]);
}

const unique = (questions: readonly Question[]): readonly Question[] => [
  ...new Map(questions.map((question) => [sayQuestion(question), question])).values(),
];

type ReadRow = {
  readonly athlete: TableAthlete;
  readonly questions: readonly Question[];
  readonly wholes: readonly Question[];
  readonly refused: readonly RefusedCell[];
  readonly asked: readonly string[];
};

function readAthlete(
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

/** A doubt that many cells share: an answer to it settles the table, or all cells of the column that say the same. */
function sharedQuestion(
  { heading, meaning }: Column,
  raw: string,
  { problem, proposals }: AskedCell,
  whole: Whole,
): { readonly question: Question; readonly settles: "table" | "cell" } | undefined {
  if (problem.startsWith("day and month can be read in either order"))
    return { question: whole.dates, settles: "table" };
  if (problem.startsWith("the number behind the cap")) return { question: whole.capped, settles: "table" };
  if (problem === "the unit is missing" && isMass(meaning))
    return { question: whole.loads, settles: "table" };
  const isWord =
    meaning.kind === "entry" &&
    ["level", "sex", "gym", "division", "recovery", "units"].includes(meaning.entry);
  if (!isWord) return undefined;
  const choice = sayChoice(meaning.entry === "level" ? whole.level.proposals : proposals);
  const text = `What does "${raw}" in the column "${heading}" mean${choice === "" ? "" : `: ${choice}`}?`;
  return { question: { text, cell: heading, proposals }, settles: "cell" };
}

/** A line to send: what stands there, why it is asked, and what it may be. */
function sayDoubt({ heading }: Column, raw: string, { problem, proposals }: AskedCell): string {
  const choice = proposals.length === 0 ? "What is right?" : `Is it ${sayChoice(proposals)}?`;
  return `your ${heading} says "${raw.replace(/\s+/g, " ")}", but ${problem}. ${choice}`;
}

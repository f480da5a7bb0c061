import type { AthleteContext } from "./athlete-file/context.ts";
import { orderOfDates } from "./athlete-file/date-order.ts";
import type { DateOrder } from "./quantities/date.ts";
import { athleteReader } from "./read-athlete.ts";
import { type Layout, layOut } from "./tables/lay-out.ts";
import { nameRows } from "./tables/name-rows.ts";
import { type Answers, type Question, sayQuestion } from "./tables/questions.ts";
import type { CellContext } from "./tables/from-file.ts";
import { cellsForAll, type SaidForAll } from "./tables/said-for-all.ts";
import { type Column, isMass, settleColumns } from "./tables/settle-columns.ts";
import { cellAt, type Sheet } from "./tables/sheet.ts";
import { readAthlete, type ReadRow, type RefusedCell, type TableAthlete } from "./read-table-row.ts";
import { columnQuestion, type Whole, wholeQuestions } from "./table-questions.ts";

/** What the files of athletes who are there already say, by their names. */
export type SaidInFiles = (name: string) => ReadonlySet<string>;

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

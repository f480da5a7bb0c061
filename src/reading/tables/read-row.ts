import { stringify } from "yaml";
import type { Athlete } from "../../models/athlete.ts";
import { inKilograms } from "../../models/quantity.ts";
import { readClock } from "../quantities/time.ts";
import { misfits } from "./beside-others.ts";
import { asked, type AskedCell, type CellReading } from "./cell-reading.ts";
import { divisionWithSex } from "./division-with-sex.ts";
import { type CellContext, unread } from "./from-file.ts";
import { readCell } from "./read-cell.ts";
import { putsOf, type RowCell } from "./row-cell.ts";
import { type Column, isMass } from "./settle-columns.ts";

/** Gives the text a cell is read as: an answer to the question its reading led to, else nothing. */
export type AnswerOf = (column: Column, raw: string, reading: AskedCell) => string | undefined;

/**
 * Reads the cells of one athlete: each by itself, then beside one another, since a load in the wrong unit and a body mass
 * beside lifts nobody of that mass does are only seen together.
 */
export function readRow(
  cells: readonly { readonly column: Column; readonly raw: string }[],
  context: CellContext,
  answerOf: AnswerOf,
): readonly RowCell[] {
  const tested = cells.find(
    ({ column: { meaning } }) => meaning.kind === "tested" && meaning.movement === undefined,
  );
  const testedOf = (name: string): string | undefined =>
    cells.find(({ column: { meaning } }) => meaning.kind === "tested" && meaning.movement === name)?.raw ??
    tested?.raw;
  const read = cells.map(({ column, raw }): RowCell => {
    const day = column.meaning.kind === "lift" ? testedOf(column.meaning.movement) : tested?.raw;
    const own = day === undefined || day === "" ? context : { ...context, tested: day };
    const total = totalBeside(column, cells);
    return readOne(column, raw, total === undefined ? own : { ...own, total }, answerOf);
  });
  return divisionWithSex(oneResultEach(besideOneAnother(read, context, answerOf)));
}

/** The time in the column of the result whose splits a column holds. */
function totalBeside(
  { meaning }: Column,
  cells: readonly { readonly column: Column; readonly raw: string }[],
): number | undefined {
  if (meaning.kind !== "splits") return undefined;
  const beside = cells.find(
    ({ column: { meaning: other } }) =>
      other.kind === "result" && other.workout === meaning.workout && other.part === meaning.part,
  );
  const time = /:/.test(beside?.raw ?? "") ? readClock(beside?.raw ?? "") : undefined;
  return time?.ok === true ? time.value : undefined;
}

/** Score, attempts and splits of one workout are one result: the first of their cells holds it, with what the others say. */
function oneResultEach(cells: readonly RowCell[]): readonly RowCell[] {
  const of = (cell: RowCell): string | undefined => {
    const { meaning } = cell.column;
    const isResult = meaning.kind === "result" || meaning.kind === "attempts" || meaning.kind === "splits";
    return isResult && putsOf(cell).length === 1 ? `${meaning.workout} ${meaning.part ?? ""}` : undefined;
  };
  const groups = Map.groupBy(cells, of);
  return cells.map((cell): RowCell => {
    const name = of(cell);
    const [first, ...others] = (name === undefined ? undefined : groups.get(name)) ?? [];
    if (first === undefined || others.length === 0) return cell;
    // What one cell says already, another cannot say otherwise: then they stay two.
    const values = [first, ...others].flatMap((each) => putsOf(each).map(({ value }) => value as Entry));
    const names = values.flatMap((value) => Object.keys(value).filter((key) => !SHARED.includes(key)));
    if (new Set(names).size < names.length) return cell;
    if (cell !== first) return { ...cell, reading: { kind: "nothing" } };
    const value = Object.assign({}, ...values) as Entry;
    const text = [first, ...others].map((each) => each.text).join(" | ");
    return { ...first, text, reading: { kind: "taken", puts: [{ entry: "results", listed: true, value }] } };
  });
}

type Entry = Readonly<Record<string, unknown>>;
/** What every entry of a result says. */
const SHARED = ["workout", "part", "version"];

function readOne(column: Column, raw: string, context: CellContext, answerOf: AnswerOf): RowCell {
  const readAs = (text: string): CellReading =>
    column.mixed && isMass(column.meaning) && isBareNumber(text)
      ? askAboutUnit(text)
      : column.mixed && /^m$/i.test(text)
        ? asked("beside H for hombre this can stand for mujer", ["female", "male"])
        : readCell(column.meaning, text, column.unit, context);
  const reading = readAs(raw);
  if (reading.kind !== "asked") return { column, raw, text: raw, reading };
  const text = answerOf(column, raw, reading);
  return text === undefined
    ? { column, raw, text: raw, reading }
    : { column, raw, text, reading: readAs(text) };
}

const isBareNumber = (text: string): boolean => /^[~<>≈]?\s*\d[\d.,]*\s*\??$/.test(text);

/** From so much on a load is likelier in pounds where the column shows both units (judgement). */
const LIKELIER_POUNDS = 250;

function askAboutUnit(text: string): CellReading {
  const value = Number(/\d[\d.,]*/.exec(text)?.[0].replace(",", "."));
  const units = value >= LIKELIER_POUNDS ? ["lb", "kg"] : ["kg", "lb"];
  return asked(
    "some cells of the column have a unit, and this number has none",
    units.map((unit) => `${text} ${unit}`),
  );
}

function besideOneAnother(
  cells: readonly RowCell[],
  context: CellContext,
  answerOf: AnswerOf,
): readonly RowCell[] {
  const fitting = cells.map((cell): RowCell => {
    const instead = misfitsIn(cells, context).find(({ one }) => one.cell === cell)?.instead;
    if (!instead) return cell;
    const bare = /\d[\d.,]*/.exec(cell.raw)?.[0] ?? "";
    const unit = cell.column.unit ?? (instead.unit === "kg" ? "lb" : "kg");
    const problem = `${bare} ${unit} does not fit the other lifts, and ${bare} ${instead.unit} would`;
    return ask(cell, asked(problem, [`${bare} ${instead.unit}`, `${bare} ${unit}`]), context, answerOf);
  });
  const whole = context.read(stringify(entriesOf(fitting)));
  if (whole.ok) return fitting;
  const suspect = SUSPECTS.flatMap((entry) =>
    fitting.filter((cell) => putsOf(cell).some((put) => put.entry === entry)),
  ).find((cell) => context.read(stringify(entriesOf(fitting.filter((other) => other !== cell)))).ok);
  const reading = unread(whole.faults);
  if (!suspect || reading.kind === "nothing" || reading.kind === "taken") return fitting;
  const question = reading.kind === "asked" ? reading : asked(reading.problem, []);
  return fitting.map((cell) => (cell === suspect ? ask(cell, question, context, answerOf) : cell));
}

/** Entries in the order in which they are held for wrong where two do not go together. */
const SUSPECTS = [
  "note",
  "body mass",
  "unbroken",
  "efforts",
  "lifts",
  "results",
  "starts",
  "division",
  "height",
];

function ask(cell: RowCell, question: AskedCell, context: CellContext, answerOf: AnswerOf): RowCell {
  const text = answerOf(cell.column, cell.raw, question);
  if (text === undefined) return { ...cell, reading: question };
  return { ...cell, text, reading: readCell(cell.column.meaning, text, cell.column.unit, context) };
}

/** Lifts whose unit is not written in the cell itself and does not fit. */
function misfitsIn(cells: readonly RowCell[], { read }: CellContext) {
  const lifts = cells.flatMap((cell) => {
    if (cell.column.meaning.kind !== "lift" || /[a-z#]/i.test(cell.text.replace(/BW|x/gi, ""))) return [];
    const athlete = read(stringify({ name: "Somebody", level: "regular", ...entriesOf([cell]) }));
    const [lift] = athlete.ok ? athlete.value.lifts : [];
    return lift ? [{ cell, lift }] : [];
  });
  const body = cells.find(
    ({ column: { meaning } }) => meaning.kind === "entry" && meaning.entry === "body mass",
  );
  const athlete = body && putsOf(body).length > 0 ? read(stringify(entriesOf([body]))) : undefined;
  return misfits(lifts, athlete?.ok === true ? bodyMassOf(athlete.value) : undefined);
}

const bodyMassOf = ({ bodyMass }: Athlete): number | undefined =>
  bodyMass === undefined ? undefined : inKilograms({ value: bodyMass, unit: "kg" });

/** The entries of an athlete file that the cells make; a name and a level stand in where none is known. */
function entriesOf(cells: readonly RowCell[]): Readonly<Record<string, unknown>> {
  const entries: Record<string, unknown> = { name: "Somebody", level: "regular" };
  for (const { entry, key, listed, value } of cells.flatMap(putsOf)) {
    if (listed) {
      const list = entries[entry];
      entries[entry] = [...(Array.isArray(list) ? (list as unknown[]) : []), value];
    } else if (key === undefined) entries[entry] = value;
    else {
      const group = (entries[entry] ?? {}) as Record<string, unknown>;
      const known = group[key];
      const both =
        known === undefined || entry !== "lifts"
          ? value
          : [...(Array.isArray(known) ? (known as unknown[]) : [known]), value];
      entries[entry] = { ...group, [key]: both };
    }
  }
  return entries;
}

import type { MassUnit } from "../../models/quantity.ts";
import type { Layout } from "./lay-out.ts";
import type { Meaning } from "./meaning.ts";
import { type HeadingContext, readHeading } from "./read-heading.ts";
import { cellAt } from "./sheet.ts";

/** A column of a table: its heading, what it holds, the unit of numbers without one, and some of its cells. */
export type Column = {
  readonly index: number;
  readonly heading: string;
  readonly meaning: Meaning;
  readonly unit?: string;
  /** Where the unit comes from: the heading, other cells of the column, the rest of the table, somebody's answer. */
  readonly unitFrom?: "heading" | "cells" | "table" | "size" | "answer";
  /** Both units of mass stand in the column, so that a bare number has none; of sexes, that M can be either. */
  readonly mixed: boolean;
  readonly samples: readonly string[];
};

const SAMPLES = 3;
const KG = /\d\s*(?:kgs?|kilos?|кг)\b/i;
const LB = /\d\s*(?:lbs?\b|pounds?\b|#)/i;
const BARE = /^[~<>≈]?\s*(?:BW\s*\+\s*)?\d[\d.,]*\s*\??$/i;

/** What somebody answered about a whole table. */
type TableAnswers = {
  /** What a column holds, said in other words, by its heading. */
  readonly columns: ReadonlyMap<number, string>;
  readonly loads?: MassUnit;
};

/** Says of each column with cells what it holds and in which unit. */
export function settleColumns(
  layout: Layout,
  context: HeadingContext,
  answers: TableAnswers,
): readonly Column[] {
  const { sheet, headings, units, rows } = layout;
  const width = Math.max(0, headings.length, ...rows.map((row) => sheet.rows[row]?.length ?? 0));
  const written = Array.from({ length: width }, (_, index): Column | undefined => {
    const cells = rows.map((row) => cellAt(sheet, { row, column: index })).filter((cell) => cell !== "");
    const heading = headings[index]?.trim() ?? "";
    if (cells.length === 0) return undefined;
    const meaning = meaningOf(heading, answers.columns.get(index), context);
    const samples = [...new Set(cells)].slice(0, SAMPLES);
    return { index, heading, meaning, samples, ...unitOf(meaning, cells, units[index]) };
  }).filter((column) => column !== undefined);
  const columns = withNames(written, layout);
  const settled = columns.map((column) => (isException(column, columns, layout) ? inNoUnit(column) : column));
  const whole = unitOfTable(settled, layout);
  return settled.map((column) => {
    if (!isMass(column.meaning) || column.unit !== undefined || column.mixed) return column;
    if (answers.loads !== undefined) return { ...column, unit: answers.loads, unitFrom: "answer" };
    return whole === undefined ? column : { ...column, ...whole };
  });
}

/** The kinds of columns that name somebody. */
const NAMES: readonly string[] = ["name", "first name", "last name"];
/** `Zoë Ångström`, `Berg, Ana`, `美咲`: up to four words that begin with a capital, or of letters that have none. */
const LIKE_NAME =
  /^(?:[\p{Lu}\p{Lo}][\p{L}\p{M}.'’-]*,?(?:\s+|$)|(?:van|von|de|der|da|di|el|al|la|le)\s+){1,5}$/u;

/**
 * Where no heading says where the names stand, the one column without a heading that holds nothing but different names is taken for
 * them, and so is the corner of a turned table, whatever stands in it; of any other such column it is asked.
 */
function withNames(columns: readonly Column[], { sheet, rows }: Layout): readonly Column[] {
  if (columns.some(({ meaning }) => NAMES.includes(meaning.kind))) return columns;
  const isLike = ({ index, meaning }: Column): boolean => {
    const cells = rows.map((row) => cellAt(sheet, { row, column: index })).filter((cell) => cell !== "");
    return (
      meaning.kind === "unclear" &&
      cells.every((cell) => LIKE_NAME.test(cell)) &&
      new Set(cells).size === cells.length
    );
  };
  const like = columns.filter(isLike);
  const sure = like.filter(({ heading }) => heading === "" || sheet.isTurned);
  const [only] = sure;
  if (only && sure.length === 1)
    return columns.map((column) => (column === only ? { ...column, meaning: { kind: "name" } } : column));
  return columns.map((column) =>
    like.includes(column) && column.meaning.kind === "unclear"
      ? { ...column, meaning: { ...column.meaning, proposals: ["name", "nothing"] } }
      : column,
  );
}

/**
 * Whether the unit in some cells of a column says nothing of the bare numbers beside them: fewer cells say it than leave it out, and
 * either the first of them leaves it out and no other column backs it, or the rest of the table shows another unit. Where everybody else has kilograms, `150 lb` is one person's.
 */
function isException(column: Column, columns: readonly Column[], layout: Layout): boolean {
  if (column.unitFrom !== "cells" || isBodyInKilograms(column, bareIn(column, layout))) return false;
  const others = columns.filter(({ index, meaning }) => index !== column.index && isMass(meaning));
  const isOther = others.some(({ unit, mixed }) => mixed || (unit !== undefined && unit !== column.unit));
  const isBacked = others.some((other) => other.unit === column.unit && !isRare(other, layout));
  const beginsBare = isBare(numbersIn(column, layout)[0]);
  return isRare(column, layout) && (isOther || (beginsBare && !isBacked));
}

const isBare = (cell = ""): boolean => !KG.test(cell) && !LB.test(cell);
const numbersIn = ({ index }: Column, { sheet, rows }: Layout): readonly string[] =>
  rows.map((row) => cellAt(sheet, { row, column: index })).filter((cell) => /\d/.test(cell));
const bareIn = (column: Column, layout: Layout): readonly string[] =>
  numbersIn(column, layout).filter(isBare);

/** Whether fewer cells of a column say its unit than leave it out. */
const isRare = (column: Column, layout: Layout): boolean =>
  column.unitFrom === "cells" &&
  !isBodyInKilograms(column, bareIn(column, layout)) &&
  bareIn(column, layout).length * 2 > numbersIn(column, layout).length;

/** Body masses that are an adult's in kilograms and nobody's in pounds (judgement: fewer than one adult in a hundred is under 40 kg). */
const ONLY_KILOGRAMS = [42, 88] as const;

/** Body masses of adults, where the only unit anybody wrote is kilograms: in pounds nobody is so light. */
const isBodyInKilograms = ({ meaning, unit }: Column, bare: readonly string[]): boolean =>
  meaning.kind === "entry" &&
  meaning.entry === "body mass" &&
  unit === "kg" &&
  bare.every((cell) => {
    const mass = Number(/\d[\d.,]*/.exec(cell)?.[0].replace(",", "."));
    return mass >= ONLY_KILOGRAMS[0] && mass <= ONLY_KILOGRAMS[1];
  });

function inNoUnit(column: Column): Column {
  const kept = Object.entries(column).filter(([key]) => key !== "unit" && key !== "unitFrom");
  return { ...(Object.fromEntries(kept) as Omit<Column, "unit" | "unitFrom">), mixed: true };
}

function meaningOf(heading: string, answer: string | undefined, context: HeadingContext): Meaning {
  if (answer === undefined) {
    return heading === ""
      ? { kind: "unclear", why: "the column has no heading", proposals: [] }
      : readHeading(heading, context);
  }
  if (/^(?:nothing|none|no|skip|ignore|-)$/i.test(answer.trim()))
    return { kind: "passed over", why: "as you said" };
  return readHeading(answer, context);
}

/** Whether numbers of a column are masses. */
export const isMass = (meaning: Meaning): boolean =>
  meaning.kind === "lift" ||
  meaning.kind === "attempts" ||
  (meaning.kind === "result" && meaning.score?.kind === "load") ||
  (meaning.kind === "entry" && meaning.entry === "body mass");

function unitOf(
  meaning: Meaning,
  cells: readonly string[],
  below: string | undefined,
): Pick<Column, "unit" | "unitFrom" | "mixed"> {
  const stated = "unit" in meaning ? meaning.unit : below;
  // Beside H for hombre, M is for mujer.
  if (meaning.kind === "entry" && meaning.entry === "sex")
    return { mixed: ["h", "m"].every((letter) => cells.some((cell) => cell.toLowerCase() === letter)) };
  if (stated !== undefined) return { unit: stated, unitFrom: "heading", mixed: false };
  if (!isMass(meaning)) return { mixed: false };
  const [kg, lb] = [cells.some((cell) => KG.test(cell)), cells.some((cell) => LB.test(cell))];
  if (kg && lb) return { mixed: true };
  return kg || lb ? { unit: kg ? "kg" : "lb", unitFrom: "cells", mixed: false } : { mixed: false };
}

/**
 * The one unit that headings and cells of the whole table show. Where they show none, body masses can tell it by their
 * size, and loads of half kilograms with them (82.5 is on no bar in pounds).
 */
function unitOfTable(
  columns: readonly Column[],
  layout: Layout,
): Pick<Column, "unit" | "unitFrom"> | undefined {
  const masses = columns.filter(({ meaning }) => isMass(meaning));
  if (masses.some(({ mixed }) => mixed)) return undefined;
  const shown = new Set(masses.flatMap(({ unit }) => (unit === "kg" || unit === "lb" ? [unit] : [])));
  const [only] = shown;
  if (only !== undefined) return shown.size === 1 ? { unit: only, unitFrom: "table" } : undefined;
  const numbers = (of: (column: Column) => boolean): readonly number[] =>
    masses.filter(of).flatMap(({ index }) =>
      layout.rows
        .map((row) => cellAt(layout.sheet, { row, column: index }))
        .filter((cell) => BARE.test(cell))
        .map((cell) => Number(/\d[\d.,]*/.exec(cell)?.[0].replace(",", "."))),
    );
  const bodies = numbers(({ meaning }) => meaning.kind === "entry");
  const loads = numbers(({ meaning }) => meaning.kind === "lift");
  if (bodies.length === 0 || loads.length === 0) return undefined;
  const halves = loads.some((load) => load % 1 === 0.5);
  return halves && bodies.every((mass) => mass >= ONLY_KILOGRAMS[0] && mass <= ONLY_KILOGRAMS[1])
    ? { unit: "kg", unitFrom: "size" }
    : undefined;
}

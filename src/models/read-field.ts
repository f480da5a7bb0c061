import type { Checked, Fault } from "./fault.ts";
import type { Field } from "./field.ts";
import { findColumns, HEADERS, type Columns, type Measure } from "./field-file/columns.ts";
import { faultAt, openCsv, type CsvRow, type OpenedCsv } from "./field-file/open-csv.ts";
import { readScore, type ScoreReading } from "./field-file/read-score.ts";
import { readRemarks, type Remarks } from "./field-file/remarks.ts";
import { countLeftOut, countScores, type Kind, type Score } from "./field-file/sort-scores.ts";
import { idOfFile } from "./file-name.ts";
import { nearestName } from "./nearest.ts";
import type { MassUnit } from "./quantity.ts";
import type { SourceFile } from "./read.ts";

/** Most faults of one kind told for a table; the others only counted. */
const MOST_ALIKE = 3;
/** Share of results that may be unreadable before the table itself must be wrong (judgement). */
const MOST_UNREADABLE = 0.05;
const UNREADABLE = "could not be read";

/**
 * Reads a sample of scores, `content/fields/*.csv`. One field, or one for each division (or lift) of the file, under the
 * name of the file and `name/division`. Capped results are kept apart from finished ones; scaled ones, missing ones and
 * slips are left out and counted. The header says what the numbers are; two units in one column are a fault. Never throws.
 */
export function readField(file: SourceFile): Checked<readonly Field[]> {
  const opened = openCsv(file);
  if ("faults" in opened) return { ok: false, faults: opened.faults };
  const columns = findColumns(opened.header.cells);
  if ("unknown" in columns)
    return { ok: false, faults: [unknownColumns(file, opened.header, columns.unknown)] };
  const remarks = readRemarks(file, opened.remarks);
  if (!remarks.ok) return remarks;
  const measure = settleMeasure(columns, remarks.value);
  if (measure === undefined) return { ok: false, faults: [noUnit(file, opened.header)] };
  const reading: ScoreReading = {
    file,
    columns,
    measure,
    remarks: remarks.value,
    hasTimes: hasTimes(opened, columns),
  };
  const rows = opened.rows.map((row) => readScore(row, reading));
  const faults = fewAlike(rows.flatMap((row) => ("fault" in row ? [row.fault] : [])));
  if (faults.length > 0) return { ok: false, faults };
  const scores = rows.flatMap((row) => ("fault" in row ? [] : [row]));
  const whole = tableFault(file, scores);
  if (whole) return { ok: false, faults: [whole] };
  const unit = unitOf(rows, measure);
  const fields = fieldsOf(file, scores, kindOf(scores, measure), unit, remarks.value);
  return { ok: true, value: fields, notices: fields.flatMap((field) => leftOutNotice(file, field)) };
}

/** A column of values says in each row, or in a remark, what they are. */
function settleMeasure({ score, kind }: Columns, remarks: Remarks): Measure | undefined {
  const { measure } = score;
  if (measure.kind === "load" && measure.unit === undefined && remarks.unit?.kind === "load")
    return remarks.unit;
  if (measure.kind !== "stated-elsewhere") return measure;
  return remarks.unit ?? (kind === undefined ? undefined : measure);
}

const hasTimes = (opened: OpenedCsv, { score, kind }: Columns): boolean =>
  opened.rows.some(
    ({ cells }) => /\d:\d\d/.test(cells[score.index] ?? "") || /^finish|^time/i.test(cells[kind ?? -1] ?? ""),
  );

type Row = Score & { readonly kind?: Kind; readonly unit?: MassUnit };

function kindOf(scores: readonly Row[], measure: Measure): Kind {
  if (scores.some((score) => score.side === "capped" || score.kind === "time")) return "time";
  const stated = measure.kind === "text" || measure.kind === "stated-elsewhere" ? undefined : measure.kind;
  return scores.find((score) => score.kind !== undefined)?.kind ?? stated ?? "reps";
}

const unitOf = (
  rows: readonly (Row | { readonly fault: Fault })[],
  measure: Measure,
): MassUnit | undefined => {
  const inCells = rows.find((row) => !("fault" in row) && row.unit !== undefined);
  return measure.kind === "load" && measure.unit !== undefined
    ? measure.unit
    : inCells && "unit" in inCells
      ? inCells.unit
      : undefined;
};

/** Faults of the table as a whole: two kinds of result, two units, nothing to read. */
function tableFault(
  file: SourceFile,
  scores: readonly (Row & { readonly line?: number })[],
): Fault | undefined {
  const total = scores.reduce((sum, score) => sum + score.count, 0);
  const unreadable = scores.filter((score) => score.side === "left-out" && score.reason === UNREADABLE);
  if (unreadable.reduce((sum, score) => sum + score.count, 0) > total * MOST_UNREADABLE) {
    const problem = "more than one result in twenty could not be read";
    return faultAt(
      file,
      unreadable[0]?.line ?? 1,
      "",
      problem,
      "Check that the column holds one score in each line.",
      {
        allowed: "`19:29`, `214 reps`, `CAP+28`, `185 lb`, `0` for not done, `- s` behind a scaled result",
      },
    );
  }
  const units = new Map(
    scores
      .flatMap((score) => (score.unit === undefined ? [] : [[score.unit, score.line ?? 1] as const]))
      .toReversed(),
  );
  if (units.size > 1) {
    const places = [...units].map(([unit, line]) => `${unit} on line ${line}`).join(", ");
    const remedy = "Convert one of them, or keep two files; no unit is taken for the whole column.";
    return faultAt(file, Math.max(...units.values()), "", `two units stand in one column: ${places}`, remedy);
  }
  const kinds = new Map(
    scores
      .flatMap((score) =>
        score.kind === undefined || score.side === "capped" ? [] : [[score.kind, score.line ?? 1] as const],
      )
      .toReversed(),
  );
  if (kinds.size > 1) {
    const places = [...kinds].map(([kind, line]) => `${kind} on line ${line}`).join(", ");
    return faultAt(
      file,
      Math.max(...kinds.values()),
      "",
      `different kinds of result stand in one table: ${places}`,
      "Keep one file for each kind of result.",
    );
  }
  if (scores.every((score) => score.side === "left-out")) {
    return faultAt(
      file,
      1,
      "",
      "no result is left to compare with",
      "Add results as prescribed, one a line.",
    );
  }
  return undefined;
}

function fieldsOf(
  file: SourceFile,
  scores: readonly Row[],
  kind: Kind,
  unit: MassUnit | undefined,
  remarks: Remarks,
): readonly Field[] {
  const id = idOfFile(file.path);
  const kept = scores.filter((score) => score.side !== "left-out");
  const groups = [...new Set(kept.map((score) => score.group))];
  return groups.map((group): Field => {
    const own = scores.filter(
      (score) => score.group === group || (groups.length === 1 && score.side === "left-out"),
    );
    const division = group ?? remarks.division;
    return {
      id: groups.length === 1 ? id : `${id}/${group ?? ""}`,
      kind,
      ...(division === undefined ? {} : { division }),
      ...(unit === undefined ? {} : { unit }),
      finished: countScores(own, "finished"),
      capped: countScores(own, "capped"),
      leftOut: countLeftOut(own),
    };
  });
}

function leftOutNotice(file: SourceFile, field: Field): readonly Fault[] {
  if (field.leftOut.length === 0) return [];
  const told = field.leftOut.map(({ reason, rows }) => `${rows} ${reason}`).join(", ");
  const problem = `results left out of ${field.id}: ${told}`;
  return [faultAt(file, 1, "", problem, "Nothing, if that is as it should be.", { severity: "notice" })];
}

/** The first few of each kind of fault, of a question the first alone; the last one told says how many more there are. */
function fewAlike(faults: readonly Fault[]): readonly Fault[] {
  const byProblem = Map.groupBy(faults, (fault) => fault.problem);
  return [...byProblem.values()].flatMap((alike) => {
    const told = alike.slice(0, alike[0]?.severity === "question" ? 1 : MOST_ALIKE);
    const more = alike.length - told.length;
    const lines = more === 1 ? "one more line" : `${more} more lines`;
    return told.map((fault, index) =>
      more > 0 && index === told.length - 1
        ? { ...fault, problem: `${fault.problem} (and on ${lines})` }
        : fault,
    );
  });
}

function unknownColumns(file: SourceFile, header: CsvRow, unknown: readonly string[]): Fault {
  const quantiles = unknown.filter((name) => /^(?:p\d+|q\d+|median|mean|sd)$/i.test(name.trim())).length > 1;
  const known = [
    "seconds",
    "reps",
    "calories",
    "metres",
    "load kg",
    "load lb",
    "score",
    "count",
    "division",
    "result",
    "value",
  ];
  const nearest = unknown.length === 1 ? nearestName(unknown[0] ?? "", known) : undefined;
  const problem = quantiles
    ? "this is a table of percentiles, and places need single scores with how many athletes have each"
    : `the header does not say what these columns are: ${unknown.join(", ")}`;
  return faultAt(
    file,
    header.line,
    header.cells.join(","),
    problem,
    "Name the columns so that the header says what the numbers are.",
    {
      allowed: HEADERS,
      ...(nearest === undefined ? {} : { nearest }),
    },
  );
}

const noUnit = (file: SourceFile, header: CsvRow): Fault =>
  faultAt(
    file,
    header.line,
    header.cells.join(","),
    "the header does not say what the values are",
    "Call the column by its unit, for example `reps,count`.",
    {
      allowed: HEADERS,
    },
  );

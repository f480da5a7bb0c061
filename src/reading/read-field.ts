import type { Checked, Fault } from "../models/fault.ts";
import type { Field } from "../models/field.ts";
import { findColumns, type Columns } from "./field-file/columns.ts";
import { leaveOutSlips } from "./field-file/leave-out-slips.ts";
import type { Measure } from "./field-file/measure-of.ts";
import { faultAt, openCsv, type OpenedCsv } from "./field-file/open-csv.ts";
import { readScore } from "./field-file/read-score.ts";
import type { ScoreReading } from "./field-file/score-reading.ts";
import { readRemarks, type Remarks } from "./field-file/remarks.ts";
import { countLeftOut, countScores, type Kind, type Score } from "./field-file/sort-scores.ts";
import { fewAlike, noUnit, tableFault, unknownColumns } from "./field-file/table-faults.ts";
import { idOfFile } from "./files/id-of-file.ts";
import type { MassUnit } from "../models/quantity.ts";
import type { SourceFile } from "./files/source-file.ts";

/**
 * Reads a sample of scores, `content/fields/*.csv`. One field, or one for each division (or lift) of the file, under the
 * name of the file and `name/division`. Capped results are kept apart from finished ones; scaled ones, missing ones and
 * slips are left out and counted. The header says what the numbers are; two units in one column are a fault. Never throws.
 */
export function readField(file: SourceFile): Checked<readonly Field[]> {
  const opened = openCsv(file);
  if ("faults" in opened) return { ok: false, faults: opened.faults };
  const columns = findColumns(opened.header.cells);
  if ("unknown" in columns) return { ok: false, faults: [unknownColumns(file, opened.header, columns)] };
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
  const whole = tableFault(file, scores, measure);
  if (whole) return { ok: false, faults: [whole] };
  const unit = unitOf(rows, measure);
  const fields = fieldsOf(file, leaveOutSlips(scores), kindOf(scores, measure), unit, remarks.value);
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
  return [
    faultAt(file, 1, "", problem, { remedy: "Nothing, if that is as it should be.", severity: "notice" }),
  ];
}

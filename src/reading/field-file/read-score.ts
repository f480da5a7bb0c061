import type { Fault } from "../../models/fault.ts";
import { writtenNumber } from "../quantities/written-number.ts";
import type { Columns } from "./columns.ts";
import { groupOf } from "./group-of.ts";
import type { Measure } from "./measure-of.ts";
import { faultAt, type CsvRow } from "./open-csv.ts";
import { atTheCap, inRounds, readValue } from "./read-value.ts";
import type { ReadScore, RowKind, ScoreReading } from "./score-reading.ts";
import { readScoreText } from "./score-text.ts";

/** Reads one row: a score on one side of the cap, a row left out with its reason, or a fault. */
export function readScore(row: CsvRow, reading: ScoreReading): ReadScore | { readonly fault: Fault } {
  const { columns, file } = reading;
  const { text, inReps } = textOf(row, columns);
  const count = countOf(row, columns);
  if (count === undefined) {
    const written = row.cells[columns.count ?? -1] ?? "";
    return {
      fault: faultAt(file, row.line, written, "the count is no whole number up to a million", {
        remedy: "Write how many athletes have this result.",
      }),
    };
  }
  const { group, scaled: scaledGroup } = groupOf(row, columns);
  const base = { line: row.line, count, ...(group === undefined ? {} : { group }) };
  const { scaled, score } = readScoreText(text);
  if (scaled || scaledGroup) return { ...base, side: "left-out", reason: "scaled" };
  if (score.kind === "no-result" && measureKind(reading) !== "load")
    return { ...base, side: "left-out", reason: "not done" };
  if (score.kind === "cap-plus") return atTheCap(score, base, text, reading);
  if (score.kind === "cap-alone")
    return { ...base, side: "left-out", reason: "stopped by the cap without a number of reps" };
  if (score.kind === "rounds") return inRounds(score, base, text, reading);
  const kind = inReps ? "capped" : kindOfRow(row, reading);
  if (kind === "fault") return { fault: unknownKind(row, reading) };
  if (kind === "no-result") return { ...base, side: "left-out", reason: "not done" };
  return readValue(text, score, kind, base, reading);
}

/** The score as written, with the unit of its row behind a bare number; `inReps` where it stands in the column of the capped. */
function textOf(row: CsvRow, columns: Columns): { readonly text: string; readonly inReps: boolean } {
  const first = row.cells[columns.score.index] ?? "";
  const inReps = first === "" && columns.reps !== undefined;
  const written = inReps ? (row.cells[columns.reps ?? -1] ?? "") : first;
  const unit = row.cells[columns.unit ?? -1] ?? "";
  return { text: /\d$/.test(written) && unit !== "" ? `${written} ${unit}` : written, inReps };
}

const measureKind = ({ measure }: ScoreReading): Measure["kind"] => measure.kind;

/** More athletes than have ever had one result of one workout. */
const MOST_COUNTED = 1_000_000;

function countOf(row: CsvRow, columns: Columns): number | undefined {
  if (columns.count === undefined) return 1;
  const written = writtenNumber(row.cells[columns.count] ?? "");
  const count = written.kind === "either" ? written.grouped : written.kind === "one" ? written.value : -1;
  return Number.isInteger(count) && count >= 0 && count <= MOST_COUNTED ? count : undefined;
}

function kindOfRow(row: CsvRow, { columns, measure }: ScoreReading): RowKind | "fault" | "no-result" {
  const word = (row.cells[columns.kind ?? -1] ?? "").toLowerCase();
  if (columns.kind !== undefined) {
    if (/^(?:finish|finished|time)$/.test(word)) return "time";
    if (/^(?:capped|cap|time ?cap)$/.test(word)) return "capped";
    if (word === "reps" || word === "calories" || word === "metres" || word === "load") return word;
    return /^(?:dn[fs]|dq|wd|none|-)$/.test(word) ? "no-result" : "fault";
  }
  return measure.kind === "stated-elsewhere" ? "fault" : measure.kind;
}

function unknownKind(row: CsvRow, { columns, file }: ScoreReading): Fault {
  const word = row.cells[columns.kind ?? -1] ?? "";
  return faultAt(file, row.line, word, "this kind of result is not known", {
    remedy: "Write what kind of result it is.",
    allowed: "finish, capped, reps, calories, metres, load",
  });
}

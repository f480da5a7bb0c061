import type { Fault } from "../fault.ts";
import { takeDoubtOff } from "../quantities/doubt.ts";
import { writtenNumber } from "../quantities/written-number.ts";
import type { MassUnit } from "../quantity.ts";
import type { SourceFile } from "../read.ts";
import type { Columns, Measure } from "./columns.ts";
import { faultAt, type CsvRow } from "./open-csv.ts";
import type { Remarks } from "./remarks.ts";
import { readScoreText } from "./score-text.ts";
import { whyNoLoad, type Kind, type Score } from "./sort-scores.ts";

/** What the whole table says about its rows. */
export type ScoreReading = {
  readonly file: SourceFile;
  readonly columns: Columns;
  readonly measure: Measure;
  readonly remarks: Remarks;
  /** Some results are times, so that a number of reps stands for a capped one. */
  readonly hasTimes: boolean;
};

export type ReadScore = Score & { readonly line: number; readonly kind?: Kind; readonly unit?: MassUnit };

const SCALED = /^(?:scaled|s|sc|foundations?)$/i;
const PRESCRIBED = /^(?:rx'?d?|prescribed|as prescribed)$/i;

/** Reads one row: a score on one side of the cap, a row left out with its reason, or a fault. */
export function readScore(row: CsvRow, reading: ScoreReading): ReadScore | { readonly fault: Fault } {
  const { columns, file } = reading;
  const text = row.cells[columns.score.index] ?? "";
  const count = countOf(row, columns);
  if (count === undefined) {
    const written = row.cells[columns.count ?? -1] ?? "";
    return {
      fault: faultAt(
        file,
        row.line,
        written,
        "the count is not a whole number",
        "Write how many athletes have this result.",
      ),
    };
  }
  const groupText = row.cells[columns.group ?? -1];
  const group =
    groupText === undefined || groupText === "" || PRESCRIBED.test(groupText) ? undefined : groupText;
  const base = { line: row.line, count, ...(group === undefined ? {} : { group }) };
  const scaledRow = [groupText, row.cells[columns.version ?? -1]].some((cell) => SCALED.test(cell ?? ""));
  const { scaled, score } = readScoreText(text);
  if (scaled || scaledRow) return { ...base, side: "left-out", reason: "scaled" };
  if (score.kind === "no-result" && measureKind(reading) !== "load")
    return { ...base, side: "left-out", reason: "not done" };
  if (score.kind === "cap-plus") return atTheCap(score.number, base, text, reading);
  const kind = kindOfRow(row, reading);
  if (kind === "fault") return { fault: unknownKind(row, reading) };
  if (kind === "no-result") return { ...base, side: "left-out", reason: "not done" };
  return readValue(text, score, kind, base, reading);
}

type Base = { readonly line: number; readonly count: number; readonly group?: string };
type RowKind = Kind | "capped" | "text";

const measureKind = ({ measure }: ScoreReading): Measure["kind"] => measure.kind;

function countOf(row: CsvRow, columns: Columns): number | undefined {
  if (columns.count === undefined) return 1;
  const written = writtenNumber(row.cells[columns.count] ?? "");
  const count = written.kind === "either" ? written.grouped : written.kind === "one" ? written.value : -1;
  return Number.isInteger(count) && count >= 0 ? count : undefined;
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
  return faultAt(
    file,
    row.line,
    word,
    "this kind of result is not known",
    "Write what kind of result it is.",
    {
      allowed: "finish, capped, reps, calories, metres, load",
    },
  );
}

function readValue(
  text: string,
  score: ReturnType<typeof readScoreText>["score"],
  kind: RowKind,
  base: Base,
  reading: ScoreReading,
): ReadScore | { readonly fault: Fault } {
  switch (score.kind) {
    case "time":
      return { ...base, side: "finished", kind: "time", value: score.seconds };
    case "reps":
      if (reading.hasTimes || kind === "capped" || kind === "time")
        return { ...base, side: "capped", value: score.amount };
      return { ...base, side: "finished", kind: "reps", value: score.amount };
    case "calories":
    case "metres":
      return { ...base, side: "finished", kind: score.kind, value: score.amount };
    case "load":
      return loadOf(score.value, score.unit, base, true);
    case "bare":
      return bareValue(
        kind === "load" ? (score.decimal ?? score.number) : score.number,
        text,
        kind,
        base,
        reading,
      );
    case "no-result":
      return kind === "load"
        ? { ...base, side: "left-out", reason: "not given" }
        : { ...base, side: "left-out", reason: "not done" };
    default:
      return { ...base, side: "left-out", reason: "could not be read" };
  }
}

function bareValue(
  value: number,
  text: string,
  kind: RowKind,
  base: Base,
  { file, measure, remarks }: ScoreReading,
): ReadScore | { readonly fault: Fault } {
  switch (kind) {
    case "time":
      if (remarks.cap !== undefined && value > remarks.cap)
        return { ...base, side: "left-out", reason: "later than the cap" };
      return { ...base, side: "finished", kind: "time", value };
    case "capped":
      return { ...base, side: "capped", value };
    case "text": {
      const problem = "this number does not say what it counts";
      const remedy = `Write \`${takeDoubtOff(text).core} reps\`, or a time such as \`19:29\`, or name the column by its unit.`;
      return { fault: faultAt(file, base.line, text, problem, remedy, { severity: "question" }) };
    }
    case "load": {
      const unit =
        measure.kind === "load"
          ? measure.unit
          : remarks.unit?.kind === "load"
            ? remarks.unit.unit
            : undefined;
      if (unit !== undefined) return loadOf(value, unit, base, false);
      const remedy = "Call the column `load kg` or `load lb`, or put the unit behind each number.";
      return {
        fault: faultAt(file, base.line, text, "the unit of this load is missing", remedy, {
          severity: "question",
          allowed: "kg or lb",
        }),
      };
    }
    default:
      return { ...base, side: "finished", kind, value };
  }
}

function loadOf(value: number, unit: MassUnit, base: Base, stated: boolean): ReadScore {
  const reason = whyNoLoad(value, unit, base.group);
  if (reason !== undefined) return { ...base, side: "left-out", reason };
  return { ...base, side: "finished", kind: "load", value, ...(stated ? { unit } : {}) };
}

/** Whether the number behind `CAP+` is done or left turns the ranking around, so the file must say it once. */
function atTheCap(
  number: number,
  base: Base,
  text: string,
  { file, remarks }: ScoreReading,
): ReadScore | { readonly fault: Fault } {
  const { capPlus, totalReps } = remarks;
  if (capPlus === "done") return { ...base, side: "capped", value: number };
  if (capPlus === "left" && totalReps !== undefined && totalReps >= number) {
    return { ...base, side: "capped", value: totalReps - number };
  }
  const problem =
    capPlus === "left"
      ? "without the number of all reps, reps left cannot be told from reps done"
      : "the number behind the cap can be reps left or reps done, and the two turn the ranking around";
  const remedy =
    capPlus === "left"
      ? "Write a line `# total reps: 225`, with your number, above the header."
      : "Write a line `# CAP+: reps left` or `# CAP+: reps done` above the header, whichever is meant; one answer settles the file.";
  return { fault: faultAt(file, base.line, text, problem, remedy, { severity: "question" }) };
}

import type { Fault } from "../../models/fault.ts";
import { nearestName } from "../../models/nearest.ts";
import type { SourceFile } from "../files/source-file.ts";
import { HEADERS, type UnknownColumns } from "./columns.ts";
import type { Measure } from "./measure-of.ts";
import { faultAt, type CsvRow } from "./open-csv.ts";
import type { ReadScore } from "./score-reading.ts";

/** Most faults of one kind told for a table; the others only counted. */
const MOST_ALIKE = 3;
/** Share of results that may be unreadable before the table itself must be wrong (judgement). */
const MOST_UNREADABLE = 0.05;
const UNREADABLE = "could not be read";

/** Faults of the table as a whole: results that cannot be read, two units, two kinds of result, nothing to compare with. */
export function tableFault(
  file: SourceFile,
  scores: readonly ReadScore[],
  measure: Measure,
): Fault | undefined {
  const units = firstLines(scores, ({ unit }) => unit);
  return (
    unreadableFault(file, scores) ??
    unitsFault(file, units) ??
    headerFault(file, units, measure) ??
    kindsFault(file, scores) ??
    emptyFault(file, scores)
  );
}

/** The first line on which each value of something stands. */
const firstLines = <Value>(
  scores: readonly ReadScore[],
  valueOf: (score: ReadScore) => Value | undefined,
): ReadonlyMap<Value, number> =>
  new Map(
    scores
      .flatMap((score) => {
        const value = valueOf(score);
        return value === undefined ? [] : [[value, score.line] as const];
      })
      .toReversed(),
  );

function unreadableFault(file: SourceFile, scores: readonly ReadScore[]): Fault | undefined {
  const total = scores.reduce((sum, score) => sum + score.count, 0);
  const unreadable = scores.filter((score) => score.side === "left-out" && score.reason === UNREADABLE);
  if (unreadable.reduce((sum, score) => sum + score.count, 0) <= total * MOST_UNREADABLE) return undefined;
  const problem = "more than one result in twenty could not be read";
  const remedy = "Check that the column holds one score in each line.";
  return faultAt(file, unreadable[0]?.line ?? 1, "", problem, {
    remedy,
    allowed: "`11:47`, `186 reps`, `28 reps short`, `185 lb`, `not done`, `scaled` behind a scaled result",
  });
}

function unitsFault(file: SourceFile, units: ReadonlyMap<string, number>): Fault | undefined {
  if (units.size < 2) return undefined;
  const places = [...units].map(([unit, line]) => `${unit} on line ${line}`).join(", ");
  const remedy = "Convert one of them, or keep two files; no unit is taken for the whole column.";
  return faultAt(file, Math.max(...units.values()), "", `two units stand in one column: ${places}`, {
    remedy,
  });
}

function headerFault(
  file: SourceFile,
  units: ReadonlyMap<string, number>,
  measure: Measure,
): Fault | undefined {
  const inHeader = measure.kind === "load" ? measure.unit : undefined;
  const [other] = [...units].filter(([unit]) => inHeader !== undefined && unit !== inHeader);
  if (inHeader === undefined || !other) return undefined;
  const problem = `the header says ${inHeader}, and line ${other[1]} is in ${other[0]}`;
  const remedy = "Convert it, or correct the header; no unit is taken for the whole column.";
  return faultAt(file, other[1], "", problem, { remedy });
}

function kindsFault(file: SourceFile, scores: readonly ReadScore[]): Fault | undefined {
  const kinds = firstLines(scores, ({ kind, side }) => (side === "capped" ? undefined : kind));
  if (kinds.size < 2) return undefined;
  const places = [...kinds].map(([kind, line]) => `${kind} on line ${line}`).join(", ");
  const problem = `different kinds of result stand in one table: ${places}`;
  const remedy = "Keep one file for each kind of result.";
  return faultAt(file, Math.max(...kinds.values()), "", problem, { remedy });
}

function emptyFault(file: SourceFile, scores: readonly ReadScore[]): Fault | undefined {
  if (scores.some((score) => score.side !== "left-out")) return undefined;
  const remedy = "Add results as prescribed, one a line.";
  return faultAt(file, 1, "", "no result is left to compare with", { remedy });
}

/** The first few of each kind of fault, of a question the first alone; the last one told says how many more there are. */
export function fewAlike(faults: readonly Fault[]): readonly Fault[] {
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

const KNOWN = [
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

export function unknownColumns(
  file: SourceFile,
  header: CsvRow,
  { unknown, percentiles, several }: UnknownColumns,
): Fault {
  const found = header.cells.join(",");
  if (several) {
    const problem = `more than one column could be the score: ${unknown.join(", ")}`;
    const remedy = "Keep one of them here, and give each other one a file of its own.";
    return faultAt(file, header.line, found, problem, { remedy, allowed: HEADERS });
  }
  if (percentiles) {
    const problem =
      "this is a table of percentiles, and places need single scores with how many athletes have each";
    const remedy = "Use a table with one score a line, or with each score and how many athletes have it.";
    return faultAt(file, header.line, found, problem, { remedy, allowed: HEADERS });
  }
  const nearest = unknown.length === 1 ? nearestName(unknown[0] ?? "", KNOWN) : undefined;
  const problem = `the header does not say what these columns are: ${unknown.join(", ")}`;
  const remedy = "Name the columns so that the header says what the numbers are, or take them out.";
  return faultAt(file, header.line, found, problem, {
    remedy,
    allowed: HEADERS,
    ...(nearest === undefined ? {} : { nearest }),
  });
}

export const noUnit = (file: SourceFile, header: CsvRow): Fault =>
  faultAt(file, header.line, header.cells.join(","), "the header does not say what the values are", {
    remedy: "Call the column by its unit, for example `reps,count`.",
    allowed: HEADERS,
  });

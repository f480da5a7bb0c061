import { CsvError, parse } from "csv-parse/sync";
import type { Fault } from "../../models/fault.ts";
import type { SourceFile } from "../files/source-file.ts";

export type CsvRow = { readonly cells: readonly string[]; readonly line: number };

/** A line `# name: value` above the header, about the whole file. */
export type CsvRemark = { readonly value: string; readonly line: number };

/** A table as it is written: remarks, header and rows with their lines. */
export type OpenedCsv = {
  readonly remarks: ReadonlyMap<string, CsvRemark>;
  readonly header: CsvRow;
  readonly rows: readonly CsvRow[];
};

const SEPARATORS = [";", "\t", ","] as const;

/**
 * Opens a table: an invisible byte order mark is removed, the separator (semicolon, tab or comma) is found from the
 * header, remarks above it are parted off. Lines without any text are passed over. A row with more or fewer cells than the
 * header is a fault, and so is a quote left open.
 */
export function openCsv(file: SourceFile): OpenedCsv | { readonly faults: readonly Fault[] } {
  const lines = file.text.replace(/^\uFEFF/, "").split(/\r\n|\n|\r/);
  const remarks = new Map<string, CsvRemark>();
  let top = 0;
  for (; top < lines.length; top++) {
    const line = lines[top] ?? "";
    if (line.trim() === "") continue;
    const remark = /^\s*#\s*([^:]*?)\s*(?::\s*(.*))?$/.exec(line);
    if (!remark) break;
    remarks.set((remark[1] ?? "").toLowerCase(), { value: (remark[2] ?? "").trim(), line: top + 1 });
  }
  const headerLine = lines[top];
  if (headerLine === undefined || headerLine.trim() === "") {
    return {
      faults: [
        faultAt(file, 1, "", "the file holds no table", {
          remedy: "Write a header line, and one result a line below it.",
        }),
      ],
    };
  }
  const delimiter = SEPARATORS.find((separator) => headerLine.includes(separator)) ?? ",";
  const isResult = (cell: string): boolean => /^["']?\d[\d:.,]*["']?$/.test(cell.trim());
  if (headerLine.split(delimiter).every(isResult)) {
    const problem = "the first line already holds results";
    const remedy = "Write a header line above it that says what the numbers are, such as `reps,count`.";
    return { faults: [faultAt(file, top + 1, headerLine, problem, { remedy })] };
  }
  return parseTable(file, lines.slice(top).join("\n"), top, delimiter, remarks);
}

function parseTable(
  file: SourceFile,
  text: string,
  above: number,
  delimiter: string,
  remarks: ReadonlyMap<string, CsvRemark>,
): OpenedCsv | { readonly faults: readonly Fault[] } {
  let parsed: { readonly record: readonly string[]; readonly info: { readonly lines: number } }[];
  try {
    parsed = parse(text, {
      delimiter,
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
      trim: true,
    }) as unknown as typeof parsed;
  } catch (cause) {
    if (!(cause instanceof CsvError)) throw cause;
    const line = above + (typeof cause["lines"] === "number" ? cause["lines"] : 1);
    const remedy =
      "Look for a quote that is opened and not closed, here or above, and delete it or close it.";
    return { faults: [faultAt(file, line, "", "the quotes in this line do not fit together", { remedy })] };
  }
  const rows = parsed.map(({ record, info }): CsvRow => ({ cells: record, line: above + info.lines }));
  const [top, ...written] = rows;
  if (!top)
    return {
      faults: [
        faultAt(file, 1, "", "the file holds no table", {
          remedy: "Write a header line, and one result a line below it.",
        }),
      ],
    };
  const width = top.cells.findLastIndex((cell) => cell !== "") + 1;
  const header = { ...top, cells: withoutEmptyEnd(top.cells, width) };
  const body = written
    .filter(({ cells }) => cells.some((cell) => cell !== ""))
    .map(({ cells, line }) => ({ cells: withoutEmptyEnd(cells, width), line }));
  const uneven = body.find((row) => row.cells.length !== width);
  if (uneven) {
    const problem = `this line has ${uneven.cells.length} cells, and the header has ${header.cells.length}`;
    const remedy = `Check the separators (here: ${sayDelimiter(delimiter)}); a decimal comma needs semicolons between the cells.`;
    return { faults: [faultAt(file, uneven.line, uneven.cells.join(delimiter), problem, { remedy })] };
  }
  return { remarks, header, rows: body };
}

/** The cells of a row without the empty ones a spreadsheet adds behind the last column. */
const withoutEmptyEnd = (cells: readonly string[], width: number): readonly string[] =>
  cells.slice(width).every((cell) => cell === "") ? cells.slice(0, width) : cells;

const sayDelimiter = (delimiter: string): string =>
  delimiter === ";" ? "semicolons" : delimiter === "\t" ? "tabs" : "commas";

/** A fault at a line of a file. */
export const faultAt = (
  file: SourceFile,
  line: number,
  found: string,
  problem: string,
  more: Pick<Fault, "remedy"> & Partial<Pick<Fault, "allowed" | "nearest" | "severity">>,
): Fault => ({
  place: { file: file.path, line, column: 1 },
  found,
  problem,
  severity: "fault",
  ...more,
});

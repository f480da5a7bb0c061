import { visibleText } from "../models/visible-text.ts";
import type { Fault } from "../models/fault.ts";

const KIND = { fault: "Fault", question: "Question", notice: "Notice" } as const;

/**
 * One fault in plain words for a person: the place, as terminals and editors open it, and the kind on the first line,
 * then what was found and what is wrong, what is allowed, the nearest correct name, and what to do, each on a line of its own.
 */
export function sayFault(fault: Fault): string {
  const { place, found } = fault;
  const lines = [
    `${place.file}:${place.line}:${place.column}: ${KIND[fault.severity]}`,
    found === "" ? undefined : `  found    ${oneLine(found)}`,
    `  ${fault.severity === "fault" ? "wrong   " : "because "} ${fault.problem}`,
    fault.allowed === undefined ? undefined : `  allowed  ${fault.allowed}`,
    fault.nearest === undefined ? undefined : `  nearest  ${fault.nearest}`,
    `  ${fault.severity === "notice" ? "to know " : "to do   "} ${fault.remedy}`,
  ];
  return visibleText(lines.filter((line) => line !== undefined).join("\n"));
}

/** All faults in the order of files and lines, with a first line that counts them. */
export function sayFaults(faults: readonly Fault[]): string {
  const sorted = inReadingOrder(faults);
  return [countLine(sorted), ...sorted.map(sayFault)].join("\n\n");
}

/** The faults sorted by file, line and column; equal places keep their order. */
export function inReadingOrder(faults: readonly Fault[]): readonly Fault[] {
  return faults.toSorted((one, other) => {
    if (one.place.file !== other.place.file) return one.place.file < other.place.file ? -1 : 1;
    return one.place.line - other.place.line || one.place.column - other.place.column;
  });
}

function countLine(faults: readonly Fault[]): string {
  const files = new Set(faults.map((fault) => fault.place.file)).size;
  const counts = (["fault", "question", "notice"] as const)
    .map((severity) => plural(faults.filter((fault) => fault.severity === severity).length, severity))
    .filter((count) => !count.startsWith("0 "));
  const listed =
    counts.length > 1 ? `${counts.slice(0, -1).join(", ")} and ${counts.at(-1) ?? ""}` : counts.join("");
  return faults.length === 0 ? "No faults." : `${listed} in ${plural(files, "file")}.`;
}

const plural = (count: number, noun: string): string => `${count} ${noun}${count === 1 ? "" : "s"}`;

const LONGEST_FOUND = 160;

function oneLine(found: string): string {
  const line = found.replace(/\s+/g, " ").trim();
  return line.length > LONGEST_FOUND ? `${line.slice(0, LONGEST_FOUND)} ...` : line;
}

import type { Fault } from "../models/fault.ts";
import { PART_KINDS } from "./notation/part-phrases.ts";
import { tradeWordRemedy } from "./notation/trade-words.ts";

/** An unknown entry named by a trade's word is told how the notation says it. */
export function inTradeWords(fault: Fault): Fault {
  const trouble = /^no entry\b/.test(fault.problem) ? tradeWordRemedy(fault.found) : undefined;
  if (trouble === undefined) return fault;
  const { place, found, severity } = fault;
  return { place, found, problem: trouble.problem, remedy: trouble.remedy, severity };
}

/** A kind of part without its colon breaks the file in a way that its own message hides. */
export function withMissingColon(fault: Fault, yaml: string): Fault {
  const line = yaml.split("\n")[fault.place.line - 1] ?? "";
  const [, before = "", name] =
    new RegExp(`^(\\s*(?:-\\s+)?)(${PART_KINDS.join("|")}|work)\\b[^:]*$`).exec(line) ?? [];
  if (name === undefined) return fault;
  return {
    place: { ...fault.place, column: before.length + 1 },
    found: line.trim(),
    problem: "the colon behind the name of an entry is missing",
    allowed: `\`${name}:\`, with a space before what follows`,
    remedy: `Write \`${name}:\`.`,
    severity: "fault",
  };
}

import type { Checked } from "../../src/models/fault.ts";
import { sayFault } from "../../src/reading/say-fault.ts";

/** Faults (or, where there are none, notices) as people read them, without the name of the file. */
export function tellFaults(checked: Checked<unknown>): readonly string[] {
  const told = checked.ok ? checked.notices : checked.faults;
  return told.map((fault) => sayFault(fault).replace(`${fault.place.file}:`, ""));
}

/** The lines of one fault, put together for an expectation. */
export const lines = (first: string, ...rest: readonly string[]): string =>
  [first, ...rest.map((line) => `  ${line}`)].join("\n");

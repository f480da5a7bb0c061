import type { Reading } from "../../src/reading/quantities/reading.ts";

/**
 * A reading in one line for a table of expectations: `takes 452`, `takes ~1190`, `takes 120 kg (how it was read)`,
 * `asks: problem | remedy`, `refuses: problem | remedy`.
 */
export function tellReading<T>(reading: Reading<T>, say: (value: T) => string = String): string {
  if (!reading.ok) {
    const verb = reading.severity === "question" ? "asks" : "refuses";
    return `${verb}: ${reading.problem} | ${reading.remedy}`;
  }
  const told = reading.told ? ` (${reading.told.problem})` : "";
  return `takes ${reading.approximate ? "~" : ""}${say(reading.value)}${told}`;
}

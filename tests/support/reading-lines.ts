import { movementByName, namesOfMovements } from "../../src/reading/names/movement-names.ts";
import { readEffortLine, type EffortLine } from "../../src/reading/notation/effort-line.ts";
import type { Faults } from "../../src/reading/notation/notation-fault.ts";
import type { LineSetting, Reading } from "../../src/reading/notation/reading.ts";
import { tokensOf, type TextSource, type Token } from "../../src/reading/notation/token.ts";
import { contentMovements } from "./content-movements.ts";

const byName = movementByName(contentMovements);
const movementNames = namesOfMovements(contentMovements);

export const sourceFrom = (text: string): TextSource => ({ text, path: ["work", 0], isName: false });
export const tokensFrom = (text: string): readonly Token[] => tokensOf(sourceFrom(text));

/** What a phrase is read with, for the division of that number. */
export function readingFor(index = 0, divisions: readonly string[] = ["men", "women"]): Reading {
  const faults: Faults = [];
  return {
    who: { index, divisions },
    movements: contentMovements,
    byName,
    movementNames,
    wordNames: [],
    faults,
  };
}

/** A line alone, not inside any block. */
export const ALONE: LineSetting = { passes: [], inLadder: false, bareIsMax: false, lifting: false };
/** A line in a block of so many rounds. */
export const inRounds = (count: number): LineSetting => ({ ...ALONE, passes: [{ count, isLadder: false }] });
/** A line in a ladder of so many numbers. */
export const inLadder = (count: number): LineSetting => ({
  ...ALONE,
  inLadder: true,
  passes: [{ count, isLadder: true }],
});

/** A line that must be sound; throws with what is wrong else. */
export function soundLine(
  text: string,
  setting: LineSetting = ALONE,
  index = 0,
  divisions?: readonly string[],
): EffortLine {
  const reading = readingFor(index, divisions);
  const line = readEffortLine(tokensFrom(text), setting, reading);
  const wrong = reading.faults.filter((fault) => fault.severity !== "notice");
  if (line === undefined || wrong.length > 0) {
    throw new Error(`${text}: ${wrong.map((fault) => `${fault.found}: ${fault.problem}`).join("; ")}`);
  }
  return line;
}

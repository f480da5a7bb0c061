import { inKilograms } from "../../models/quantity.ts";
import type { Load } from "../../models/workout.ts";
import type { Path } from "../yaml/open-yaml.ts";
import { beyond } from "./check-bounds.ts";
import { atEnd, cursorAt, rest, skip } from "./cursor.ts";
import { settleLoad } from "./load.ts";
import { tellText, type Faults, type Trouble } from "./notation-fault.ts";
import { startsEntry } from "./number-series.ts";
import type { WorkReading } from "./read-steps.ts";
import { takeRoundValues } from "./round-values.ts";
import { spellWords } from "./spell-words.ts";
import { tokensOf, writtenBy, type TextSource, type Token } from "./token.ts";

/**
 * Reads what is worn for a whole part: `20/14 lb vest`, `weighted vest 20/14 lb`. Undefined where nothing is, or with
 * a fault noted.
 */
export function readWearing(
  written: unknown,
  path: Path,
  readings: readonly WorkReading[],
  faults: Faults,
): { readonly what: string; readonly load: Readonly<Record<string, Load>> } | undefined {
  if (typeof written !== "string") return undefined;
  const source: TextSource = { text: written, path, isName: false };
  const loads: [string, Load][] = [];
  let what = "";
  for (const reading of readings) {
    const tokens = spellWords(tokensOf(source), reading.words, reading.byName);
    const read = readForDivision(tokens, reading);
    if (read === undefined) {
      if (faults.length === 0 || faults.at(-1)?.source !== source) tellText(faults, source, TROUBLE);
      return undefined;
    }
    const trouble = read.load.kind === "mass" && beyond("worn", inKilograms(read.load.mass));
    if (trouble) {
      tellText(faults, source, trouble);
      return undefined;
    }
    what = read.what;
    loads.push([reading.who.divisions[reading.who.index] ?? "", read.load]);
  }
  return { what, load: Object.fromEntries(loads) };
}

const TROUBLE: Trouble = {
  problem: "what is worn needs its load, the same for the whole part",
  allowed: "`20/14 lb vest`, `10 kg vest`",
  remedy: "Write the load with its unit and what it is.",
};

function readForDivision(
  tokens: readonly Token[],
  reading: WorkReading,
): { readonly what: string; readonly load: Load } | undefined {
  const begin = tokens.findIndex((_, index) => startsEntry(cursorAt(tokens, index)));
  if (begin === -1) return undefined;
  const cursor = cursorAt(tokens, begin);
  const values = takeRoundValues(cursor, reading.who, "measuring", reading.faults);
  const load = values && settleLoad(values, undefined, { passes: [] }, reading);
  const before = tokens.slice(0, begin).filter((token) => token.text !== "at");
  skip(cursor, "of");
  const behind = atEnd(cursor) ? [] : rest(cursor);
  const what = writtenBy(before.length > 0 ? before : behind).trim();
  if (load?.kind !== "same" || what === "" || load.value.kind === "share-of-best") return undefined;
  return { what, load: load.value };
}

import { inKilograms } from "../../models/quantity.ts";
import type { Load } from "../../models/workout.ts";
import type { Path } from "../yaml/open-yaml.ts";
import { forEverybody } from "./by-division.ts";
import { beyond } from "./check-bounds.ts";
import { atEnd, cursorAt, rest, skip } from "./cursor.ts";
import { settleLoad } from "./load.ts";
import { tellText, type Trouble } from "./notation-fault.ts";
import { startsEntry } from "./number-series.ts";
import type { Reading } from "./reading.ts";
import { takeRoundValues } from "./round-values.ts";
import { writtenBy, type TextSource, type Token } from "./token.ts";
import { readText, type WorkReading } from "./work-reading.ts";

/**
 * Reads what is worn for a whole part: `20/14 lb vest`, `weighted vest 20/14 lb`. Undefined where nothing is, or with
 * a fault noted.
 */
export function readWearing(
  written: unknown,
  path: Path,
  reading: WorkReading,
): { readonly what: string; readonly load: Readonly<Record<string, Load>> } | undefined {
  if (typeof written !== "string") return undefined;
  const source: TextSource = { text: written, path, isName: false };
  const { divisions } = reading;
  const worn = readText(source, forEverybody(divisions, undefined), reading, (tokens, _, own) => {
    const read = readForDivision(tokens, own);
    if (read === undefined && own.faults.at(-1)?.source !== source) tellText(own.faults, source, TROUBLE);
    const trouble = read?.load.kind === "mass" && beyond("worn", inKilograms(read.load.mass));
    if (trouble) tellText(own.faults, source, trouble);
    return trouble ? undefined : read;
  });
  const loads = worn.flatMap(({ value }, index) =>
    value ? [[divisions[index] ?? "", value.load] as const] : [],
  );
  const what = worn.at(-1)?.value?.what;
  return what === undefined || loads.length < divisions.length
    ? undefined
    : { what, load: Object.fromEntries(loads) };
}

const TROUBLE: Trouble = {
  problem: "what is worn needs its load, the same for the whole part",
  allowed: "`20/14 lb vest`, `10 kg vest`",
  remedy: "Write the load with its unit and what it is.",
};

function readForDivision(
  tokens: readonly Token[],
  reading: Reading,
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

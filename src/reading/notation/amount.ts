import type { AmountUnit } from "../../models/vocabulary.ts";
import { peek, skip, skipOneOf, type Cursor } from "./cursor.ts";
import { longestMovement } from "./movement-phrase.ts";
import { tell } from "./notation-fault.ts";
import { startsEntry } from "./number-series.ts";
import type { Reading } from "./reading.ts";
import { takeRoundValues, type RoundValues } from "./round-values.ts";
import type { Token } from "./token.ts";
import { takeUnit, type Unit } from "./unit.ts";

/** The amount as it stands before (or after) the movement, before it is known what the movement is counted in. */
export type WrittenAmount =
  | { readonly kind: "values"; readonly values: RoundValues; readonly tokens: readonly Token[] }
  | { readonly kind: "max"; readonly unit?: AmountUnit; readonly tokens: readonly Token[] }
  | { readonly kind: "unit"; readonly unit: AmountUnit; readonly tokens: readonly Token[] }
  | { readonly kind: "none"; readonly tokens: readonly Token[] };

const MAX_WORDS = [
  "as many reps as possible",
  "as many as possible",
  "as far as possible",
  "max effort",
  "max",
  "maximum",
  "amrap",
  "as many",
  "most",
] as const;

/**
 * Takes what stands before a movement: numbers, `max`, or a unit alone (`cal row` in a ladder). Undefined with a
 * fault noted.
 */
export function takeAmount(cursor: Cursor, reading: Reading): WrittenAmount | undefined {
  const start = cursor.index;
  const tokens = (): readonly Token[] => cursor.tokens.slice(start, cursor.index);
  if (startsEntry(cursor) && longestMovement(cursor, reading) === undefined) {
    const values = takeRoundValues(cursor, reading.who, "counting", reading.faults);
    if (values === undefined) return undefined;
    const isTimes = values.entries.some((entry) => entry.pieces !== undefined);
    skipOneOf(cursor, ["rm"]);
    // `50x thruster` is an amount; a second number would make it rounds of something.
    const isAmount = !isTimes && peek(cursor)?.text === "x" && namesMovement(cursor, reading);
    if (isAmount) skip(cursor, "x");
    else if (isTimes || peek(cursor)?.text === "x") {
      tellTimes(start, cursor, reading);
      return undefined;
    }
    // `60 s max calories row`
    if (skipOneOf(cursor, MAX_WORDS) !== undefined) return limitedMax(cursor, values, tokens());
    skip(cursor, "of");
    return { kind: "values", values, tokens: tokens() };
  }
  if (longestMovement(cursor, reading) !== undefined) return { kind: "none", tokens: [] };
  if (skipOneOf(cursor, MAX_WORDS) !== undefined) {
    const unit = takeAmountUnit(cursor);
    skip(cursor, "of");
    return { kind: "max", ...(unit === undefined ? {} : { unit }), tokens: tokens() };
  }
  const unit = takeAmountUnit(cursor);
  skip(cursor, "of");
  return unit === undefined ? { kind: "none", tokens: [] } : { kind: "unit", unit, tokens: tokens() };
}

/** Whether a movement stands behind the sign that comes next. */
const namesMovement = ({ tokens, index }: Cursor, reading: Reading): boolean =>
  longestMovement({ tokens, index: index + 1 }, reading) !== undefined && tokens[index + 1]?.kind === "word";

function limitedMax(cursor: Cursor, values: RoundValues, tokens: readonly Token[]): WrittenAmount {
  const unit = takeAmountUnit(cursor);
  skip(cursor, "of");
  const entries = values.entries.map((entry) => (unit === undefined ? entry : { ...entry, counted: unit }));
  return { kind: "values", values: { ...values, entries }, tokens };
}

function tellTimes(start: number, cursor: Cursor, reading: Reading): void {
  const written = cursor.tokens.slice(start, start + 3);
  const [number] = written;
  tell(reading.faults, written, cursor.tokens, {
    problem: "`x` joins how many pieces are held with their load (`2 x 22.5 kg`), not rounds with their work",
    allowed: "a block of rounds with lines in it",
    remedy: `Write a block \`- ${number?.source.text.slice(number.offset, number.end) ?? "3"} rounds:\` with the work in lines below it; a distance is written as a whole.`,
  });
  cursor.index = cursor.tokens.length;
}

/** Takes a unit an amount can be counted in: `calories`, `metres`, `distance`, `reps`. */
export function takeAmountUnit(cursor: Cursor): AmountUnit | undefined {
  if (skip(cursor, "distance")) return "metres";
  if (skip(cursor, "time")) return "seconds";
  const probe = { tokens: cursor.tokens, index: cursor.index };
  const unit = takeUnit(probe);
  const counted = unit && amountUnitOf(unit);
  if (counted === undefined) return undefined;
  cursor.index = probe.index;
  return counted;
}

/** What an amount with this unit counts; undefined for units no amount has. */
export function amountUnitOf(unit: Unit): AmountUnit | undefined {
  switch (unit.kind) {
    case "reps":
      return "reps";
    case "calories":
      return "calories";
    case "length":
      return unit.unit === "in" || unit.unit === "cm" ? undefined : "metres";
    case "time":
      return "seconds";
    default:
      return undefined;
  }
}

import type { AmountUnit } from "../../models/vocabulary.ts";
import { peek, skip, takeValue, type Cursor } from "./cursor.ts";
import { tell, type Faults } from "./notation-fault.ts";
import { writtenBy, type Token } from "./token.ts";
import { takeUnit, type Unit } from "./unit.ts";

/** One number with what belongs to it. */
export type Entry = {
  readonly value: number;
  /** True for a clock such as 1:30, whose value is in seconds. */
  readonly isClock: boolean;
  /** 2 in `2 x 50 lb`. */
  readonly pieces?: number;
  readonly unit?: Unit;
  /** The same in another unit, in brackets. */
  readonly alternative?: { readonly value: number; readonly unit: Unit };
  /** What is counted while the time runs, in `60 s max calories row`. */
  readonly counted?: AmountUnit;
  readonly tokens: readonly Token[];
};

/** Numbers joined by `-` (by round) and `/` (by division), as written. */
export type Series = {
  readonly entries: readonly Entry[];
  readonly separators: readonly ("-" | "/")[];
  readonly tokens: readonly Token[];
};

/**
 * Takes numbers joined by `-` and `/`, each with its unit: `21-15-9`, `95/65 lb`, `2 x 50/35 lb`,
 * `95 lb (43 kg)/65 lb (29 kg)`, `95/65 lb (43/29 kg)`. A unit holds for the numbers before it that have none.
 * Undefined where no number comes next, or (with a fault noted) where one cannot be read.
 */
export function takeSeries(cursor: Cursor, faults: Faults): Series | undefined {
  const start = cursor.index;
  const entries: Entry[] = [];
  const separators: ("-" | "/")[] = [];
  for (;;) {
    const entry = takeEntry(cursor, faults, entries.at(-1));
    if (entry === undefined) return undefined;
    entries.push(entry);
    const separator = peek(cursor)?.text;
    if ((separator !== "-" && separator !== "/") || !startsEntry(cursor, 1)) break;
    separators.push(separator);
    cursor.index += 1;
  }
  const alternatives = takeAlternatives(cursor, faults, entries.length);
  const tokens = cursor.tokens.slice(start, cursor.index);
  const series: Series = { entries: withUnits(entries, alternatives), separators, tokens };
  if (!isFraction(series)) return series;
  tell(faults, tokens, tokens, {
    problem: "this may be a fraction of a mile, or one value for each of two divisions",
    allowed: "the distance in metres: 400 m, 800 m, 1200 m",
    remedy: "Write the distance in metres, or as a decimal such as `0.5 mile`.",
    severity: "question",
  });
  return undefined;
}

/** `1/2 mile`: nobody asks one division for half of what another does in the same breath. */
function isFraction({ entries, separators }: Series): boolean {
  const [above, below] = entries;
  const miles = below?.unit?.kind === "length" && (below.unit.unit === "mile" || below.unit.unit === "km");
  return (
    separators.length === 1 &&
    separators[0] === "/" &&
    miles &&
    above !== undefined &&
    above.value < below.value
  );
}

/** True when a number or clock comes next (so many tokens further). */
export function startsEntry(cursor: Cursor, further = 0): boolean {
  const kind = peek(cursor, further)?.kind;
  return kind === "number" || kind === "clock";
}

function takeEntry(cursor: Cursor, faults: Faults, before: Entry | undefined): Entry | undefined {
  const start = cursor.index;
  const token = takeValue(cursor, "number") ?? takeValue(cursor, "clock");
  if (token === undefined) return undefined;
  if (Number.isNaN(token.value)) {
    tellUnreadable(token, faults);
    return undefined;
  }
  if (peek(cursor)?.text === "x" && peek(cursor, 1)?.kind === "number") {
    cursor.index += 1;
    const inner = takeEntry(cursor, faults, before);
    return inner && { ...inner, pieces: token.value, tokens: cursor.tokens.slice(start, cursor.index) };
  }
  const unit = takeHyphenedUnit(cursor) ?? takeUnit(cursor);
  // One value in brackets right behind one of several belongs to it alone.
  const ownsBrackets = unit !== undefined && numbersInBrackets(cursor) === 1;
  const own =
    ownsBrackets && (before === undefined || before.alternative !== undefined)
      ? takeAlternatives(cursor, faults, 1)?.[0]
      : undefined;
  return {
    value: token.value,
    isClock: token.kind === "clock",
    ...(unit === undefined ? {} : { unit }),
    ...(own === undefined ? {} : { alternative: own }),
    tokens: cursor.tokens.slice(start, cursor.index),
  };
}

/** `50-ft handstand walk`, `1-mile run`. */
function takeHyphenedUnit(cursor: Cursor): Unit | undefined {
  if (peek(cursor)?.text !== "-" || peek(cursor, 1)?.kind !== "word") return undefined;
  const probe = { tokens: cursor.tokens, index: cursor.index + 1 };
  const unit = takeUnit(probe);
  if (unit !== undefined) cursor.index = probe.index;
  return unit;
}

function numbersInBrackets(cursor: Cursor): number {
  if (peek(cursor)?.text !== "(") return 0;
  const close = cursor.tokens.findIndex((token, index) => index > cursor.index && token.text === ")");
  return cursor.tokens.slice(cursor.index, close).filter((token) => token.kind === "number").length;
}

type Alternative = NonNullable<Entry["alternative"]>;

/** Takes `(43/29 kg)` if as many numbers stand in it as before it. */
function takeAlternatives(cursor: Cursor, faults: Faults, count: number): readonly Alternative[] | undefined {
  if (peek(cursor)?.text !== "(" || !startsEntry(cursor, 1)) return undefined;
  const start = cursor.index;
  cursor.index += 1;
  const inner = takeSeries(cursor, faults);
  const closed = skip(cursor, ")");
  const values = inner?.entries.map(({ value, unit }) => (unit ? { value, unit } : undefined)) ?? [];
  const found = values.filter((value) => value !== undefined);
  if (closed && found.length === count && values.length === count) return found;
  const tokens = cursor.tokens.slice(start, cursor.index);
  tell(faults, tokens, tokens, {
    problem: "the brackets do not give one value in another unit for each value before them",
    remedy: "Write as many values in the brackets as before them, with their unit: `95/65 lb (43/29 kg)`.",
  });
  cursor.index = cursor.tokens.length;
  return undefined;
}

function withUnits(
  entries: readonly Entry[],
  alternatives: readonly Alternative[] | undefined,
): readonly Entry[] {
  let unit: Unit | undefined;
  let pieces: number | undefined;
  const backwards = entries.toReversed().map((entry) => {
    unit = entry.unit ?? unit;
    return unit === undefined || entry.unit !== undefined ? entry : { ...entry, unit };
  });
  return backwards.toReversed().map((entry, index) => {
    // `2 x 50/35 lb` says it once for all that follow.
    pieces = entry.pieces ?? pieces;
    const alternative = alternatives?.[index];
    return {
      ...entry,
      ...(pieces === undefined ? {} : { pieces }),
      ...(alternative === undefined ? {} : { alternative }),
    };
  });
}

/** Notes why a number or clock cannot be read. */
export function tellUnreadable(token: Token, faults: Faults): void {
  const written = writtenBy([token]);
  if (/^(1:[1-3]|[23]:1)$/.test(written)) {
    tell(faults, [token], [token], {
      problem: "this is no time, and may be a ratio of work to rest",
      allowed:
        "`rest as long as the work`, `rest twice as long as the work`, `rest half as long as the work`",
      remedy: "Write one of these; if a time is meant, minutes:seconds such as 1:30.",
      severity: "question",
    });
    return;
  }
  if (token.kind === "clock") {
    tell(faults, [token], [token], {
      problem: "this is no time: after a colon two digits under 60 follow",
      allowed: "minutes and seconds such as 9:00, hours such as 1:04:10",
      remedy: "Write the time as minutes:seconds, for example 1:30.",
    });
    return;
  }
  const numbers = written.split(/[.,]/);
  if (numbers.length === 2) {
    const thousands = numbers.join("");
    tell(faults, [token], [token], {
      problem: `the sign in ${written} may group thousands or part off decimals`,
      allowed: `${thousands}, or ${Number(written.replace(",", "."))}`,
      remedy: `Write ${thousands} if thousands are meant, else no more than two decimals.`,
      severity: "question",
    });
    return;
  }
  tell(faults, [token], [token], {
    problem: "numbers in a row are joined by hyphens, not by commas or points",
    allowed: numbers.join("-"),
    remedy: `Write \`${numbers.join("-")}\`.`,
  });
}

/** Seconds of an entry written as a clock or with a unit of time. */
export function secondsOf(entry: Entry): number {
  if (entry.isClock) return entry.value;
  return entry.unit?.kind === "time" ? entry.value * entry.unit.seconds : entry.value;
}

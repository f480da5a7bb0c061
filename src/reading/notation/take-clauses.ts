import { ownEntry } from "../../models/own-entry.ts";
import { seconds, type Seconds } from "../../models/quantity.ts";
import { atEnd, peek, skip, skipOneOf, takeValue, type Cursor } from "./cursor.ts";
import { secondsOf, startsEntry, takeSeries } from "./number-series.ts";
import type { Reading } from "./reading.ts";
import { forDivision } from "./resolve-series.ts";
import { inMetres } from "../../models/quantity.ts";
import type { WrittenCountsAs } from "./check-counts.ts";

/** How an amount is shared between two sides. */
export type Sides = "each" | "one" | "alternating";

const SIDE = ["side", "arm", "leg", "hand", "foot", "sides", "arms", "legs", "hands"];

/**
 * Takes `each side`, `per arm`, `one leg`, `other side`, `alternating`; `both sides` is told as doubtful by the
 * caller.
 */
export function takeSides(cursor: Cursor): Sides | "both" | undefined {
  const word = peek(cursor)?.text;
  const next = peek(cursor, 1)?.text;
  if (word === "alternating" || word === "alternate") {
    cursor.index += next !== undefined && SIDE.includes(next) ? 2 : 1;
    return "alternating";
  }
  if (word === undefined || next === undefined || !SIDE.includes(next)) return undefined;
  const sides = ownEntry(
    {
      each: "each",
      per: "each",
      a: "each",
      both: "both",
      one: "one",
      single: "one",
      first: "one",
      other: "one",
      second: "one",
      left: "one",
      right: "one",
      same: "one",
    } as const satisfies Readonly<Record<string, Sides | "both">>,
    word,
  );
  if (sides === undefined) return undefined;
  cursor.index += 2;
  return sides;
}

/** Takes one number for the division, whole and without unit. */
export function takeCount(cursor: Cursor, reading: Reading): number | undefined {
  if (!startsEntry(cursor)) return undefined;
  const start = cursor.index;
  const series = takeSeries(cursor, reading.faults);
  const entries = series && forDivision(series, reading.who, reading.faults);
  const [only] = entries ?? [];
  if (only === undefined || entries?.length !== 1 || (only.unit !== undefined && only.unit.kind !== "reps")) {
    cursor.index = start;
    return undefined;
  }
  return only.value;
}

/** Takes `counts 10`, `counts as 10/8 reps`, `counts 1 per 5 ft`. */
export function takeCountsAs(cursor: Cursor, reading: Reading): WrittenCountsAs | undefined {
  if (skipOneOf(cursor, ["counts as", "counts for", "counts", "count", "counting"]) === undefined)
    return undefined;
  const scores = takeCount(cursor, reading);
  if (scores === undefined) return undefined;
  skipOneOf(cursor, ["reps", "rep", "points", "point"]);
  if (skipOneOf(cursor, ["per", "for each", "for every", "each", "every"]) === undefined) {
    return { kind: "whole", scores };
  }
  const series = takeSeries(cursor, reading.faults);
  const entry = series && forDivision(series, reading.who, reading.faults)?.[0];
  if (entry === undefined) return undefined;
  if (entry.unit?.kind === "length") {
    const written = { value: entry.value * entry.unit.times, unit: entry.unit.unit };
    return { kind: "per", amount: inMetres(written), scores, per: "metres" };
  }
  return { kind: "per", amount: secondsOf(entry), scores, per: "other" };
}

/** Takes a time in minutes or hours and a rest: `4'30"`, `12'`, `1h05`. */
function takeShortTime(cursor: Cursor): Seconds | undefined {
  const [whole, mark, rest, end] = [0, 1, 2, 3].map((further) => peek(cursor, further));
  if (whole?.kind !== "number" || !Number.isInteger(whole.value)) return undefined;
  const hours = /^h(\d\d)(?:m|min)?$/.exec(mark?.text ?? "");
  if (hours) {
    cursor.index += 2;
    return seconds(whole.value * 3600 + Number(hours[1]) * 60);
  }
  if (mark?.text !== "'") return undefined;
  const isSeconds = rest?.kind === "number" && /^[0-5]\d$/.test(rest.text);
  cursor.index += isSeconds ? (end?.text === '"' ? 4 : 3) : 2;
  return seconds(whole.value * 60 + (isSeconds ? rest.value : 0));
}

/** Takes a time: `9:00`, `20 s`, `2 min`, `4'30"`, `1h05`. */
export function takeTime(cursor: Cursor): Seconds | undefined {
  const start = cursor.index;
  const clock = takeValue(cursor, "clock");
  if (clock !== undefined && !Number.isNaN(clock.value)) return seconds(clock.value);
  cursor.index = start;
  if (peek(cursor)?.kind !== "number") return undefined;
  const short = takeShortTime(cursor);
  if (short !== undefined) return short;
  const series = takeSeries(cursor, []);
  const [only] = series?.entries ?? [];
  if (only?.unit?.kind === "time" && series?.entries.length === 1) return seconds(secondsOf(only));
  cursor.index = start;
  return undefined;
}

/** Takes one of the single words a line may end with. */
export function takeFlag(cursor: Cursor): "unbroken" | "tie-break" | undefined {
  if (skip(cursor, "unbroken")) return "unbroken";
  if (skipOneOf(cursor, ["tie-break", "tiebreak", "tie break"]) !== undefined) {
    skipOneOf(cursor, ["time", "here", "after"]);
    return "tie-break";
  }
  return undefined;
}

/** Takes `3 attempts`. */
export function takeAttempts(cursor: Cursor, reading: Reading): number | undefined {
  const start = cursor.index;
  const count = takeCount(cursor, reading);
  if (
    count !== undefined &&
    skipOneOf(cursor, ["attempts", "attempt", "tries"]) !== undefined &&
    atEnd(cursor)
  ) {
    return count;
  }
  cursor.index = start;
  return undefined;
}

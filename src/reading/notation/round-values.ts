import { beyond } from "./check-bounds.ts";
import { peek, skip, skipOneOf, type Cursor } from "./cursor.ts";
import { tell, type Faults } from "./notation-fault.ts";
import { startsEntry, takeSeries, type Entry } from "./number-series.ts";
import { forDivision, type ForDivision } from "./resolve-series.ts";
import type { Token } from "./token.ts";

/**
 * Values of one division, by round: listed (one alone holds for all rounds), or a start and a signed step without
 * end.
 */
export type RoundValues = {
  readonly entries: readonly Entry[];
  readonly step?: { readonly entry: Entry; readonly sign: 1 | -1 };
  readonly tokens: readonly Token[];
};

/** What a row of numbers may hold beyond numbers: `counting` allows `10 to 1`, `2 to 20 by 2` and `3-6-9-...`. */
type SeriesUse = "counting" | "measuring";

/**
 * Takes the values of one division: `21-15-9`, `20/15`, `60 kg up by 5 kg`, and where numbers count, `10 to 1`,
 * `2 to 20 by 2` and `3-6-9-...`. Undefined where no number comes next or a fault was noted.
 */
export function takeRoundValues(
  cursor: Cursor,
  who: ForDivision,
  use: SeriesUse,
  faults: Faults,
): RoundValues | undefined {
  const start = cursor.index;
  const series = takeSeries(cursor, faults);
  const entries = series && forDivision(series, who, faults);
  if (entries === undefined) return undefined;
  const tokens = (): readonly Token[] => cursor.tokens.slice(start, cursor.index);
  const [first] = entries;
  if (first === undefined) return undefined;
  if (entries.length === 1) {
    const direction = skipOneOf(cursor, ["up by", "down by"]);
    if (direction !== undefined) {
      const step = takeStep(cursor, who, faults);
      if (step === undefined) return undefined;
      return { entries, step: { entry: step, sign: direction === "up by" ? 1 : -1 }, tokens: tokens() };
    }
    if (use === "counting" && followedByRange(cursor)) {
      return takeRange(cursor, first, who, faults, start);
    }
  }
  if (use === "counting" && entries.length > 1 && skipOneOf(cursor, ["- ...", "...", "etc"]) !== undefined) {
    return goingOn(entries, tokens(), faults);
  }
  return { entries, tokens: tokens() };
}

function takeStep(cursor: Cursor, who: ForDivision, faults: Faults): Entry | undefined {
  const series = takeSeries(cursor, faults);
  const step = series && forDivision(series, who, faults);
  if (step?.length === 1) return step[0];
  const tokens = cursor.tokens.slice(cursor.index - 2, cursor.index);
  if (series === undefined || step !== undefined) {
    tell(faults, tokens, cursor.tokens, {
      problem: "`up by` and `down by` need one number",
      allowed: "`3 up by 3`, `60 kg up by 5 kg`",
      remedy: "Write by how much it changes each round.",
    });
  }
  return undefined;
}

const RANGES = ["down to", "up to", "to"] as const;

function followedByRange(cursor: Cursor): boolean {
  const probe = { tokens: cursor.tokens, index: cursor.index };
  return skipOneOf(probe, RANGES) !== undefined && peek(probe)?.kind === "number";
}

function takeRange(
  cursor: Cursor,
  first: Entry,
  who: ForDivision,
  faults: Faults,
  start: number,
): RoundValues | undefined {
  skipOneOf(cursor, RANGES);
  const last = takeOne(cursor, who, faults);
  const by = skip(cursor, "by") ? takeOne(cursor, who, faults) : undefined;
  const tokens = cursor.tokens.slice(start, cursor.index);
  if (last === undefined) return undefined;
  const step = by?.value ?? 1;
  const span = Math.abs(last.value - first.value);
  if (!Number.isInteger(first.value) || step <= 0 || span === 0 || span % step !== 0) {
    tell(faults, tokens, tokens, {
      problem: "these steps do not lead from the first number to the last",
      allowed: "`10 to 1`, `2 to 20 by 2`",
      remedy: "Write every number with hyphens between, for example `10-8-6`.",
    });
    return undefined;
  }
  const tooMany = beyond("rounds", span / step + 1);
  if (tooMany) {
    tell(faults, tokens, tokens, tooMany);
    return undefined;
  }
  const sign = last.value > first.value ? 1 : -1;
  const unit = last.unit ?? first.unit;
  const entries = Array.from({ length: span / step + 1 }, (_, index) => ({
    value: first.value + sign * step * index,
    isClock: false,
    ...(unit === undefined ? {} : { unit }),
    tokens,
  }));
  if (!followedByRange(cursor)) return { entries, tokens };
  // `1 to 10 to 1`: up and down again, the turning point once.
  const back = takeRange(cursor, { ...last, isClock: false }, who, faults, start);
  return back && { entries: [...entries, ...back.entries.slice(1)], tokens: back.tokens };
}

function takeOne(cursor: Cursor, who: ForDivision, faults: Faults): Entry | undefined {
  if (!startsEntry(cursor)) return undefined;
  const series = takeSeries(cursor, faults);
  return series && forDivision(series, who, faults)?.[0];
}

function goingOn(
  entries: readonly Entry[],
  tokens: readonly Token[],
  faults: Faults,
): RoundValues | undefined {
  const [first, second] = entries;
  if (first === undefined || second === undefined) return undefined;
  const step = second.value - first.value;
  const even = entries.every((entry, index) => entry.value === first.value + step * index);
  if (even && step !== 0) {
    return {
      entries: [first],
      step: { entry: { ...second, value: Math.abs(step) }, sign: step > 0 ? 1 : -1 },
      tokens,
    };
  }
  tell(faults, tokens, tokens, {
    problem: "the numbers before the dots do not change by the same step, so nobody can tell how they go on",
    allowed: "`3 up by 3`, or all numbers written out",
    remedy: "Write the start and the step, for example `3 up by 3`, or every number.",
  });
  return undefined;
}

import { nearestName } from "../../models/nearest.ts";
import type { Movement } from "../../models/movement.ts";
import { inMetres, type Metres, type Seconds } from "../../models/quantity.ts";
import type { AmountUnit } from "../../models/vocabulary.ts";
import type { Load } from "../../models/workout.ts";
import { takeAmountUnit, type WrittenAmount } from "./amount.ts";
import { peek, rest, skip, skipOneOf, type Cursor } from "./cursor.ts";
import { takeSides, takeTime, type Sides } from "./take-clauses.ts";
import { takeBodyMass, takeChosenLoad, takeShareOf } from "./load.ts";
import { tell } from "./notation-fault.ts";
import { startsEntry, takeSeries } from "./number-series.ts";
import type { Reading } from "./reading.ts";
import { forDivision } from "./resolve-series.ts";
import { takeRoundValues, type RoundValues } from "./round-values.ts";
import { writtenBy, type Token } from "./token.ts";
import { tradeWordRemedy } from "./trade-words.ts";

/** What may stand behind a movement. */
export type Attached = {
  readonly loads?: RoundValues;
  readonly shareOf?: string;
  readonly load?: Load;
  readonly heights?: RoundValues;
  readonly maxFor?: Seconds;
  readonly sides?: Sides;
  /** The amount, where it stands behind the movement: `row 500 m`. */
  readonly amount?: WrittenAmount;
  readonly unit?: AmountUnit;
  /** The length of one rep, in metres: `15 shuttle run of 15 m`. */
  readonly repLength?: Metres;
  readonly tokens: readonly Token[];
};

/** Behind a movement, as on a whiteboard: `row calories`. */
const CALORIES = ["calories", "cals", "cal", "calorie"] as const;
const LOAD_WORDS = ["at", "@", "with"] as const;
const HEIGHT_WORDS = ["to", "over", "onto", "on", "from", "up to"] as const;
const TO_THE_END = [
  "in the remaining time",
  "in the time remaining",
  "in the time that is left",
  "in the time left",
  "in remaining time",
  "for the remaining time",
  "with the remaining time",
  "until the end",
] as const;
const TIME_WORDS = ["in", "for", "within"] as const;

/**
 * Takes loads (`at 43 kg`), heights (`to 24/20 in`), times to fill (`in 2:00`), sides, and an amount that stands
 * behind its movement (`amountFree`: none stood before it). Stops at the first words that are none of these;
 * undefined with a fault noted.
 */
export function takeAttachments(
  cursor: Cursor,
  movements: readonly Movement[],
  amountFree: boolean,
  reading: Reading,
): Attached | undefined {
  const start = cursor.index;
  let attached: Omit<Attached, "tokens"> = {};
  for (;;) {
    const before = cursor.index;
    const next = takeOne(cursor, movements, amountFree && attached.amount === undefined, reading);
    if (next === "fault") return undefined;
    if (next === undefined) {
      cursor.index = before;
      break;
    }
    const again = Object.keys(next).find((name) => name in attached);
    if (again !== undefined) {
      const tokens = cursor.tokens.slice(before, cursor.index);
      tell(reading.faults, tokens, tokens, {
        problem: "this is said a second time",
        remedy: "Keep one of the two.",
      });
      return undefined;
    }
    attached = { ...attached, ...next };
  }
  const tokens = cursor.tokens.slice(start, cursor.index);
  // As a clause, nothing taken is nothing read.
  if (movements.length === 0 && tokens.length === 0) return undefined;
  return { ...attached, tokens };
}

type Taken = Omit<Attached, "tokens"> | "fault" | undefined;

function takeOne(
  cursor: Cursor,
  movements: readonly Movement[],
  amountFree: boolean,
  reading: Reading,
): Taken {
  const sides = takeSides(cursor);
  if (sides !== undefined) return { sides: sides === "both" ? "each" : sides };
  if (peek(cursor)?.text === "(" && startsEntry(cursor, 1)) return takeBracketed(cursor, reading);
  if (peek(cursor)?.text === "of" && startsEntry(cursor, 1) && movements.some(isMeasured))
    return takeRepLength(cursor, reading);
  if (skipOneOf(cursor, CALORIES) !== undefined) return { unit: "calories" };
  // What `max` says already.
  if (skipOneOf(cursor, TO_THE_END) !== undefined) return {};
  const loadWord = skipOneOf(cursor, LOAD_WORDS);
  if (loadWord !== undefined) {
    const load = takeChosenLoad(cursor) ?? takeBodyMass(cursor);
    if (load !== undefined) return { load };
  }
  const heightWord = loadWord === undefined ? skipOneOf(cursor, HEIGHT_WORDS) : undefined;
  const timeWord =
    loadWord === undefined && heightWord === undefined ? skipOneOf(cursor, TIME_WORDS) : undefined;
  if (timeWord !== undefined) return takeFilled(cursor, timeWord);

  if (!startsEntry(cursor)) return loadWord === undefined ? undefined : wordBehindAt(cursor, reading);
  if (heightWord !== undefined)
    return asHeights(takeRoundValues(cursor, reading.who, "measuring", reading.faults));
  return takeNumbers(cursor, loadWord !== undefined, movements, amountFree, reading);
}

/** A number behind `at`, or bare: what it is shows in its unit. */
function takeNumbers(
  cursor: Cursor,
  saidAt: boolean,
  movements: readonly Movement[],
  amountFree: boolean,
  reading: Reading,
): Taken {
  const before = cursor.index;
  const values = takeRoundValues(cursor, reading.who, "measuring", reading.faults);
  if (values === undefined) return "fault";
  const [first] = values.entries;
  const kind = first?.isClock === true ? "time" : first?.unit?.kind;
  if (saidAt || kind === "mass" || kind === "share" || kind === "body-mass") {
    if (kind === "length") return { heights: values };
    return takeLoads(cursor, values, reading);
  }
  const isDistance = kind === "length" && movements.some((movement) => movement.counts.includes("metres"));
  if (kind === "length" && !(amountFree && isDistance)) return { heights: values };
  // A number alone may be a load or an amount, and is taken for neither.
  if (kind === undefined && movements.some((movement) => movement.loading !== undefined))
    return { loads: values };
  if (kind !== undefined && amountFree && movements.length > 0) {
    return { amount: { kind: "values", values, tokens: cursor.tokens.slice(before, cursor.index) } };
  }
  cursor.index = before;
  return undefined;
}

const isMeasured = ({ counts }: Movement): boolean => counts.includes("metres");

/** `of 15 m` behind a movement that is measured: how long each rep is, for this division. */
function takeRepLength(cursor: Cursor, reading: Reading): Taken {
  cursor.index += 1;
  const series = takeSeries(cursor, reading.faults);
  const [only, more] = (series && forDivision(series, reading.who, reading.faults)) ?? [];
  if (only?.unit?.kind !== "length" || more !== undefined || !(only.value > 0)) {
    tell(reading.faults, series?.tokens ?? [], cursor.tokens, {
      problem: "the length of one rep is one distance over 0",
      allowed: "`15 shuttle run of 15 m`",
      remedy: "Write the distance with its unit.",
    });
    return "fault";
  }
  return { repLength: inMetres({ value: only.value * only.unit.times, unit: only.unit.unit }) };
}

function takeLoads(cursor: Cursor, loads: RoundValues, reading: Reading): Taken {
  const { unit } = loads.entries[0] ?? {};
  if (unit?.kind !== "share") return { loads };
  const share = takeShareOf(cursor, reading);
  if (!share.ok) return "fault";
  return { loads, ...(share.of === undefined ? {} : { shareOf: share.of }) };
}

function takeBracketed(cursor: Cursor, reading: Reading): Taken {
  cursor.index += 1;
  const values = takeRoundValues(cursor, reading.who, "measuring", reading.faults);
  if (values === undefined) return "fault";
  const taken =
    values.entries[0]?.unit?.kind === "length" ? asHeights(values) : takeLoads(cursor, values, reading);
  return skip(cursor, ")") ? taken : undefined;
}

const asHeights = (heights: RoundValues | undefined): Taken =>
  heights === undefined ? "fault" : { heights };

/** `max burpee in 2:00`, or `max row for calories`. */
function takeFilled(cursor: Cursor, word: string): Taken {
  const maxFor = takeTime(cursor);
  if (maxFor !== undefined) return { maxFor };
  const unit = word === "for" ? takeAmountUnit(cursor) : undefined;
  return unit === undefined ? undefined : { unit };
}

function wordBehindAt(cursor: Cursor, reading: Reading): Taken {
  const words = rest(cursor);
  const nearest = nearestName(writtenBy(words), reading.wordNames);
  const trade = tradeWordRemedy(writtenBy(words));
  tell(
    reading.faults,
    words,
    cursor.tokens,
    trade ?? {
      problem: "`at` needs a load, and this is none; it is no word of `by division:` either",
      allowed:
        "`at 43/29 kg`, `at 70% of clean and jerk`, `at 0.75 body mass`, `at any load`, a word of `by division:`",
      nearest,
      remedy:
        "Write the load with its unit, or give the word its value for each division under `by division:`.",
    },
  );
  return "fault";
}

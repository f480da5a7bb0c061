import { seconds, type Seconds } from "../../models/quantity.ts";
import type { BlockStep, RestLength } from "../../models/workout.ts";
import { atEnd, cursorAt, peek, skip, skipOneOf, takeValue, type Cursor } from "./cursor.ts";
import { takeCount, takeFlag, takeTime } from "./take-clauses.ts";
import { tell, type Trouble } from "./notation-fault.ts";
import { startsEntry } from "./number-series.ts";
import type { Reading } from "./reading.ts";
import { takeRestLength } from "./rest-phrase.ts";
import { takeRoundValues } from "./round-values.ts";
import { longestMovement, takeMovements } from "./movement-phrase.ts";
import { BLOCK_WORDS, tellUnknownClause } from "./block-troubles.ts";
import { writtenBy, type Token } from "./token.ts";
import { WORK_BOUNDS } from "./work-bounds.ts";
import { tradeWordRemedy } from "./trade-words.ts";

/** Everything the name of a block may say, each once. */
export type BlockClauses = {
  readonly rounds?: number | "open";
  readonly ladder?:
    { readonly amounts: readonly number[] } | { readonly start: number; readonly step: number };
  readonly every?: Seconds;
  /** Length of all passes of `every` together. */
  readonly inAll?: Seconds;
  readonly on?: Seconds;
  readonly off?: Seconds;
  readonly lasts?: Seconds;
  readonly carriesOn?: true;
  readonly inTurn?: true;
  readonly orOut?: true;
  readonly by?: NonNullable<BlockStep["by"]>;
  readonly cap?: Seconds;
  readonly restBetween?: RestLength;
  readonly anyOrder?: true;
  readonly unbroken?: true;
  readonly tieBreak?: true;
  readonly once?: "buy-in" | "cash-out" | "once";
  readonly untilDone?: { readonly amount: number; readonly movement: string };
};

/**
 * Reads the name of a block, such as `every 2:00, 8 rounds, or out`. Undefined with a fault noted where a word means
 * nothing.
 */
export function readBlockClauses(tokens: readonly Token[], reading: Reading): BlockClauses | undefined {
  const cursor = cursorAt(tokens);
  let clauses: BlockClauses = {};
  while (!atEnd(cursor)) {
    if (skipOneOf(cursor, [",", "then", "of", "and", "each for time", "for time"]) !== undefined) continue;
    const start = cursor.index;
    const before = reading.faults.length;
    const clause = takeClause(cursor, reading);
    if (clause === undefined) {
      if (reading.faults.length === before) tellUnknownClause(tokens, start, reading);
      return undefined;
    }
    const twice = Object.keys(clause).find((name) => name in clauses);
    if (twice !== undefined) {
      tell(reading.faults, tokens.slice(start, cursor.index), tokens, {
        problem: "a block can say this only once",
        remedy: "Put one block into another: the outer one's name first, the inner one as an entry in it.",
      });
      return undefined;
    }
    clauses = { ...clauses, ...clause };
  }
  return clauses;
}

function takeClause(cursor: Cursor, reading: Reading): BlockClauses | undefined {
  return (
    takeWords(cursor) ??
    takeEvery(cursor) ??
    takeDeadline(cursor) ??
    takeRest(cursor) ??
    takeUntilDone(cursor, reading) ??
    takeOnOff(cursor) ??
    takeLasting(cursor) ??
    takeNumbers(cursor, reading)
  );
}

const WORDS = {
  "in any order": { anyOrder: true },
  "any order": { anyOrder: true },
  "in turn": { inTurn: true },
  alternating: { inTurn: true },
  "or out": { orOut: true },
  "carry on": { carriesOn: true },
  "carrying on": { carriesOn: true },
  "repeat until the end": { rounds: "open" },
  repeat: { rounds: "open" },
  rounds: { rounds: "open" },
  "buy-in": { once: "buy-in" },
  "buy in": { once: "buy-in" },
  "cash-out": { once: "cash-out" },
  "cash out": { once: "cash-out" },
  "buy-out": { once: "cash-out" },
  together: { once: "once" },
  once: { once: "once" },
} as const satisfies Readonly<Record<string, BlockClauses>>;

function takeWords(cursor: Cursor): BlockClauses | undefined {
  const words = skipOneOf(cursor, Object.keys(WORDS) as (keyof typeof WORDS)[]);
  if (words !== undefined) return WORDS[words];
  const flag = takeFlag(cursor);
  if (flag === undefined) return undefined;
  return flag === "unbroken" ? { unbroken: true } : { tieBreak: true };
}

function takeEvery(cursor: Cursor): BlockClauses | undefined {
  if (!skip(cursor, "every")) return undefined;
  const every = takeTime(cursor) ?? (skip(cursor, "minute") ? seconds(60) : undefined);
  if (every === undefined) return undefined;
  const start = cursor.index;
  const inAll = skip(cursor, "for") ? takeTime(cursor) : undefined;
  if (inAll !== undefined) return { every, inAll };
  // `for 8 rounds`: the rounds are a clause of their own.
  if (cursor.index > start && !startsEntry(cursor)) cursor.index = start;
  return { every };
}

function takeDeadline(cursor: Cursor): BlockClauses | undefined {
  if (skip(cursor, "by")) {
    const plus = skip(cursor, "+");
    const time = takeTime(cursor);
    if (time === undefined) return undefined;
    const later = skipOneOf(cursor, ["more", "later"]) !== undefined;
    return { by: { kind: plus || later ? "after-last-deadline" : "clock", time } };
  }
  if (skipOneOf(cursor, ["cap", "time cap", "capped at"]) === undefined) return undefined;
  const cap = takeTime(cursor);
  return cap === undefined ? undefined : { cap };
}

function takeRest(cursor: Cursor): BlockClauses | undefined {
  const start = cursor.index;
  const restBetween = takeRestLength(cursor);
  const between = skipOneOf(cursor, ["between rounds", "between sets", "between each round", "between"]);
  if (restBetween !== undefined && between !== undefined) return { restBetween };
  cursor.index = start;
  return undefined;
}

function takeUntilDone(cursor: Cursor, reading: Reading): BlockClauses | undefined {
  if (!skip(cursor, "until")) return undefined;
  const amount = takeCount(cursor, reading);
  const found = amount === undefined ? undefined : longestMovement(cursor, reading);
  if (found !== undefined) cursor.index += found.length;
  else if (amount !== undefined) takeMovements(cursor, reading);
  skipOneOf(cursor, ["are done", "is done", "done"]);
  return amount === undefined || found === undefined
    ? undefined
    : { untilDone: { amount, movement: found.movement.id } };
}

function takeOnOff(cursor: Cursor): BlockClauses | undefined {
  const start = cursor.index;
  const time = takeTime(cursor);
  const word = time === undefined ? undefined : skipOneOf(cursor, ["on", "off", "work"]);
  if (time !== undefined && word !== undefined) return word === "off" ? { off: time } : { on: time };
  cursor.index = start;
  return undefined;
}

function takeLasting(cursor: Cursor): BlockClauses | undefined {
  const start = cursor.index;
  const wordFirst = skipOneOf(cursor, ["amrap in", "amrap", "for"]) !== undefined;
  const lasts = takeTime(cursor);
  const wordBehind = lasts !== undefined && skip(cursor, "amrap");
  if (lasts !== undefined && (wordFirst || wordBehind)) return { lasts };
  cursor.index = start;
  return undefined;
}

const ROUND_WORDS = ["rounds", "round", "rds", "rd", "sets", "set", "times", "intervals"] as const;

function takeNumbers(cursor: Cursor, reading: Reading): BlockClauses | undefined {
  if (!startsEntry(cursor)) return undefined;
  const start = cursor.index;
  const values = takeRoundValues(cursor, reading.who, "counting", reading.faults);
  const [first] = values?.entries ?? [];
  if (values === undefined || first === undefined) return undefined;
  if (first.isClock) {
    tell(reading.faults, values.tokens, values.tokens, SPAN_OF_TIME);
    return undefined;
  }
  if (first.pieces !== undefined) {
    cursor.index = start + 1;
    tellNumberAlone(cursor, start, reading);
    return undefined;
  }
  const whole = values.entries.every(
    (entry) => Number.isInteger(entry.value) && entry.value > 0 && !entry.isClock,
  );
  if (!whole) {
    tell(reading.faults, values.tokens, values.tokens, {
      problem: "rounds and the numbers of a ladder are whole numbers from 1",
      allowed: BLOCK_WORDS,
      remedy: "Correct the number.",
    });
    return undefined;
  }
  if (values.step !== undefined) return openLadder(first.value, values.step.entry.value * values.step.sign);
  if (values.entries.length > 1) {
    const [{ value: low } = first, { value: high } = first] = values.entries;
    const isRange = values.entries.length === 2 && low < high;
    if (skipOneOf(cursor, ["reps", "rounds"]) === "rounds" && isRange) {
      tell(reading.faults, values.tokens, values.tokens, roundsOrLadder(low, high));
      return undefined;
    }
    return { ladder: { amounts: values.entries.map((entry) => entry.value) } };
  }
  if (skipOneOf(cursor, ROUND_WORDS) !== undefined) return { rounds: first.value };
  tellNumberAlone(cursor, start, reading);
  return undefined;
}

/** `3-5 rounds`: a coach leaves the number open, or means a ladder of two. */
const roundsOrLadder = (low: number, high: number): Trouble => ({
  problem: "this may leave the number of rounds open, or be two rounds with these amounts",
  allowed: "`3 rounds:`, or the amounts alone as `21-15-9:`",
  remedy: `Write \`${low} rounds:\` or \`${high} rounds:\`, or \`${low}-${high}:\` for the two rounds.`,
  severity: "question",
});

const SPAN_OF_TIME = {
  problem: "a time alone does not say what it does",
  allowed: "`every 2:00`, `amrap 3:00`, `0:20 on, 0:10 off`, `by 9:00`, `cap 2:00`",
  remedy: "Write one of these; what begins at a clock of its own is a part with `starts: at 5:00`.",
} as const;

/** A ladder that comes down ends before 0. */
function openLadder(start: number, step: number): BlockClauses {
  if (step > 0) return { ladder: { start, step } };
  const amounts: number[] = [];
  // One more than there may be is enough to be told.
  for (
    let amount = start;
    amount > 0 && step < 0 && amounts.length <= WORK_BOUNDS.rounds.high;
    amount += step
  )
    amounts.push(amount);
  return { ladder: { amounts } };
}

function tellNumberAlone(cursor: Cursor, start: number, reading: Reading): void {
  const trade = tradeWordRemedy(writtenBy(cursor.tokens.slice(start)));
  if (trade !== undefined) {
    tell(reading.faults, cursor.tokens.slice(start), cursor.tokens, trade);
    cursor.index = cursor.tokens.length;
    return;
  }
  const isList = peek(cursor)?.text === "," && startsEntry(cursor, 1);
  if (isList) {
    const numbers = cursor.tokens.slice(start).filter(({ text }) => text !== ",");
    const joined = numbers.map(({ text }) => text).join("-");
    tell(reading.faults, cursor.tokens.slice(start), cursor.tokens, {
      problem: "numbers in a row are joined by hyphens, not by commas or points",
      allowed: joined,
      remedy: `Write \`${joined}\`.`,
    });
    cursor.index = cursor.tokens.length;
    return;
  }
  const times = peek(cursor)?.text === "x";
  const tokens = cursor.tokens.slice(start, cursor.index + (times ? 1 : 0));
  const number = takeValue(cursorAt(tokens), "number")?.text ?? "3";
  tell(reading.faults, tokens, tokens, {
    problem: times
      ? "`x` does not say what it is the number of"
      : "a number alone does not say what it is the number of",
    allowed: `\`${number} rounds\`, or a ladder such as \`21-15-9\``,
    remedy: `Write \`${number} rounds:\` if the block is done ${number} times.`,
  });
  cursor.index = cursor.tokens.length;
}

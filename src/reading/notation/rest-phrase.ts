import { seconds } from "../../models/quantity.ts";
import type { RestLength } from "../../models/workout.ts";
import { atEnd, cursorAt, peek, rest, skip, skipOneOf, type Cursor } from "./cursor.ts";
import { takeTime } from "./take-clauses.ts";
import { tell, type Faults } from "./notation-fault.ts";
import { tellUnreadable } from "./number-series.ts";
import type { Token } from "./token.ts";

/** A line of rest, without its place; `counted` is false where the clock of the score stands still. */
type RestLine = { readonly rest: RestLength; readonly counted: boolean };

/** True for `rest 1:00` and `1:00 rest`. */
export function isRest(tokens: readonly Token[]): boolean {
  if (tokens[0]?.text === "rest") return true;
  const cursor = cursorAt(tokens);
  return (
    takeTime(cursor) !== undefined && skip(cursor, "rest") && (atEnd(cursor) || peek(cursor)?.text === ",")
  );
}

/**
 * Reads a line of rest: `rest 1:00`, `rest at least 2:00`, `rest until 9:00`, `rest as long as the work`, `rest 2:00,
 * clock stopped`.
 */
export function readRestLine(tokens: readonly Token[], faults: Faults): RestLine | undefined {
  const cursor = cursorAt(tokens);
  if (tokens.length === 1) return { rest: { kind: "rest-of-interval" }, counted: true };
  const length = takeRestLength(cursor);
  if (length === undefined) {
    const [here] = rest(cursor);
    if (here?.kind === "clock") tellUnreadable(here, faults);
    else tell(faults, rest(cursor), tokens, REST_TROUBLE);
    return undefined;
  }
  skip(cursor, ",");
  const counted = skipOneOf(cursor, STOPPED) === undefined;
  if (counted) skipOneOf(cursor, RUNNING);
  if (atEnd(cursor)) return { rest: length, counted };
  tell(faults, rest(cursor), tokens, REST_TROUBLE);
  return undefined;
}

const STOPPED = ["clock stopped", "clock stops", "not counted", "the clock stops"] as const;
const RUNNING = ["clock runs on", "clock runs", "counted", "the clock runs on", "the clock runs"] as const;

const REST_TROUBLE = {
  problem: "this says no length of a rest",
  allowed:
    "`rest 1:00`, `rest at least 2:00`, `rest until 9:00`, `rest as long as the work`; behind it `, clock stopped`; in an interval `rest` alone",
  remedy: "Write one of these; times are minutes:seconds.",
} as const;

/** Takes a rest with its length, with the word `rest` before or behind it. */
export function takeRestLength(cursor: Cursor): RestLength | undefined {
  const start = cursor.index;
  if (!skip(cursor, "rest")) {
    const time = takeTime(cursor);
    if (time !== undefined && skip(cursor, "rest")) return { kind: "exactly", time };
    cursor.index = start;
    return undefined;
  }
  skipOneOf(cursor, ["for", "exactly"]);
  if (skipOneOf(cursor, ["as needed", "as you like", "freely"]) !== undefined) {
    return { kind: "at-least", time: seconds(0) };
  }
  const times = takeTimesTheWork(cursor);
  if (times !== undefined) return { kind: "as-long-as-work", times };
  if (skipOneOf(cursor, ["at least", "minimum", "min"]) !== undefined) {
    const time = takeTime(cursor);
    return time === undefined ? undefined : { kind: "at-least", time };
  }
  if (skip(cursor, "until")) {
    const clock = takeTime(cursor);
    return clock === undefined ? undefined : { kind: "until", clock };
  }
  const time = takeTime(cursor);
  if (time === undefined) return undefined;
  const more = skipOneOf(cursor, ["or more", "at least", "minimum"]) !== undefined;
  return more ? { kind: "at-least", time } : { kind: "exactly", time };
}

/** `as long as the work`, `twice as long as the work`, `half as long as the work`. */
function takeTimesTheWork(cursor: Cursor): number | undefined {
  const start = cursor.index;
  const word = skipOneOf(cursor, ["twice", "half"]);
  const times = word === "twice" ? 2 : word === "half" ? 0.5 : 1;
  if (skipOneOf(cursor, ["as long as", "the same as", "equal to"]) !== undefined) {
    skipOneOf(cursor, [
      "the work took",
      "the work time",
      "the working time",
      "the work",
      "work time",
      "work",
      "it took",
      "the round took",
      "the round",
    ]);
    return times;
  }
  cursor.index = start;
  return undefined;
}

import { seconds, type Seconds } from "../../models/quantity.ts";
import type { MinimumWork, PartClock, PartLength, PartStart } from "../../models/workout.ts";
import { beyond, troubleOfClock } from "./check-bounds.ts";
import { atEnd, cursorAt, peek, rest, skip, skipOneOf, type Cursor } from "./cursor.ts";
import { takeTime } from "./take-clauses.ts";
import { tell, tellText, type Faults, type Trouble } from "./notation-fault.ts";
import { tellUnreadable } from "./number-series.ts";
import { tokensOf, type TextSource } from "./token.ts";

/** The kinds of part, by the name of the entry that says the kind. */
export const PART_KINDS = ["for time", "amrap", "on the clock", "max load"] as const;
/** One of the kinds of part, as it is written. */
export type PartKind = (typeof PART_KINDS)[number];

/** `as written`: the length follows from the work. */
export type WrittenClock =
  PartClock | { readonly kind: "on-the-clock" | "max-load"; readonly asWritten: true };

/**
 * Reads what stands behind the kind of a part: `for time: cap 12:00`, `amrap: until 15:00`, `max load: 6:00, 3
 * attempts`.
 */
export function readPartClock(kind: PartKind, source: TextSource, faults: Faults): WrittenClock | undefined {
  const cursor = cursorAt(tokensOf(source));
  const before = faults.length;
  const clock = CLOCKS[kind](cursor);
  if (clock !== undefined && atEnd(cursor)) {
    const trouble = troubleOfClock("asWritten" in clock ? {} : clock);
    if (trouble) tellText(faults, source, trouble);
    return trouble ? undefined : clock;
  }
  if (faults.length > before) return undefined;
  const here = peek(cursor);
  if (here?.kind === "clock" && Number.isNaN(here.value)) {
    tellUnreadable(here, faults);
    return undefined;
  }
  const trouble = clockTrouble(kind, cursor, clock !== undefined);
  if (atEnd(cursor)) tellText(faults, source, trouble);
  else tell(faults, rest(cursor), cursor.tokens, trouble);
  return undefined;
}

const CLOCKS: Readonly<Record<PartKind, (cursor: Cursor) => WrittenClock | undefined>> = {
  "for time": forTime,
  amrap: (cursor) => {
    const length = takeLength(cursor);
    return length && { kind: "amrap", length };
  },
  "on the clock": onTheClock,
  "max load": maxLoad,
};

function forTime(cursor: Cursor): PartClock | undefined {
  if (atEnd(cursor) || skipOneOf(cursor, ["no cap", "no time cap", "cap none", "none"]) !== undefined)
    return { kind: "for-time" };
  skipOneOf(cursor, ["cap", "time cap", "capped at"]);
  const cap = takeLength(cursor);
  if (cap === undefined) return undefined;
  skip(cursor, "cap");
  skipOneOf(cursor, [",", "+"]);
  skipOneOf(cursor, ["plus", "+"]);
  const penalty = takeTime(cursor);
  if (penalty === undefined) return { kind: "for-time", cap };
  const missing = [
    "per missing rep",
    "for each missing rep",
    "each missing rep",
    "for every missing rep",
    "per rep missing",
    "per rep left",
  ];
  if (skipOneOf(cursor, missing) === undefined) return undefined;
  return { kind: "for-time", cap, secondsPerMissingRep: penalty };
}

function onTheClock(cursor: Cursor): WrittenClock | undefined {
  if (skipOneOf(cursor, ["open", "open end", "no limit"]) !== undefined) return { kind: "on-the-clock" };
  if (atEnd(cursor) || skip(cursor, "as", "written")) return { kind: "on-the-clock", asWritten: true };
  const length = takeTime(cursor);
  return length === undefined ? undefined : { kind: "on-the-clock", length };
}

function maxLoad(cursor: Cursor): WrittenClock | undefined {
  if (skip(cursor, "as", "written")) return { kind: "max-load", asWritten: true };
  const unlimited =
    atEnd(cursor) || skipOneOf(cursor, ["no limit", "no cap", "no time limit", "open"]) !== undefined;
  const length = unlimited ? undefined : takeLength(cursor);
  const start = cursor.index;
  let attempts: number | undefined;
  let order: "as-written" | "any" = "as-written";
  if (length === undefined && !unlimited) cursor.index = start;
  for (;;) {
    skip(cursor, ",");
    const number = peek(cursor);
    if (number?.kind === "number" && ["attempts", "attempt"].includes(peek(cursor, 1)?.text ?? "")) {
      attempts = number.value;
      cursor.index += 2;
      skipOneOf(cursor, ["each", "for each lift", "each lift"]);
    } else if (skipOneOf(cursor, ["any order", "in any order"]) !== undefined) {
      order = "any";
    } else if (skipOneOf(cursor, ["in order", "order as written"]) === undefined) break;
  }
  if (length === undefined && !unlimited && attempts === undefined) return undefined;
  return {
    kind: "max-load",
    ...(length === undefined ? {} : { length }),
    ...(attempts === undefined ? {} : { attempts }),
    order,
  };
}

function takeLength(cursor: Cursor): PartLength | undefined {
  const until = skipOneOf(cursor, ["until", "to"]) !== undefined;
  if (!until) skip(cursor, "for");
  const time = takeTime(cursor);
  return time === undefined ? undefined : { kind: until ? "until" : "for", time };
}

const CLOCK_FORMS: Readonly<Record<PartKind, string>> = {
  "for time":
    "`for time:`, `for time: cap 12:00`, `for time: cap until 20:00`, `for time: cap 4:00, 1 s per missing rep`",
  amrap: "`amrap: 9:00`, `amrap: until 15:00`",
  "on the clock": "`on the clock: 16:00`, `on the clock: as written`, `on the clock: open`",
  "max load":
    "`max load: 6:00`, `max load: until 15:00`, `max load: no limit, 3 attempts`; with blocks of windows `max load: as written`",
};

function clockTrouble(kind: PartKind, cursor: Cursor, read: boolean): Trouble {
  const word = peek(cursor);
  if (word?.kind === "number") {
    return {
      problem: "a time needs a colon or a unit",
      allowed: CLOCK_FORMS[kind],
      remedy: `Write \`${word.text}:00\` if minutes are meant.`,
    };
  }
  return {
    problem: read ? "these words mean nothing here" : `this says no length of a part \`${kind}\``,
    allowed: CLOCK_FORMS[kind],
    remedy: "Write one of these.",
  };
}

/** Reads when a part begins: `at 9:00`, `after a`, `2:00 after a`, `at least 2:00 after a`. */
export function readPartStart(
  source: TextSource,
  earlier: readonly string[],
  faults: Faults,
): PartStart | undefined {
  const cursor = cursorAt(tokensOf(source));
  const start = takeStart(cursor);
  if (start === undefined || !atEnd(cursor)) {
    tell(faults, rest(cursor), cursor.tokens, {
      problem: "this does not say when the part begins",
      allowed: "`at 9:00`, `after a`, `2:00 after a`, `at least 2:00 after a`",
      remedy: "Write one of these, with the name of a part before.",
    });
    return undefined;
  }
  const tooLate = start.kind === "clock" && start.at > 0 ? beyond("clock", start.at) : undefined;
  if (tooLate) tellText(faults, source, tooLate);
  if (start.kind === "clock") return start;
  const tooLong = start.rest > 0 ? beyond("rest", start.rest) : undefined;
  if (tooLong) tellText(faults, source, tooLong);
  const name = earlier.find((part) => part.toLowerCase() === start.part.toLowerCase());
  if (name !== undefined) return { ...start, part: name };
  tellText(faults, source, {
    problem: `no part before this one is called "${start.part}"`,
    allowed: earlier.length === 0 ? "`at 0:00` for the first part" : earlier.join(", "),
    remedy: "A part can start after one that stands before it.",
  });
  return undefined;
}

function takeStart(cursor: Cursor): PartStart | undefined {
  if (skip(cursor, "at", "least") || skip(cursor, "minimum")) {
    const time = takeTime(cursor);
    return time === undefined ? undefined : takeAfter(cursor, time, "at-least");
  }
  const at = skip(cursor, "at");
  const time: Seconds | undefined = takeTime(cursor);
  if (time === undefined) return at ? undefined : takeAfter(cursor, seconds(0), "exactly");
  if (!at) {
    const after = takeAfter(cursor, time, "exactly");
    if (after !== undefined) return after;
  }
  return { kind: "clock", at: time };
}

function takeAfter(cursor: Cursor, time: Seconds, restIs: "exactly" | "at-least"): PartStart | undefined {
  const start = cursor.index;
  if (skipOneOf(cursor, ["after part", "after"]) !== undefined && !atEnd(cursor)) {
    const part = rest(cursor);
    const [first] = part;
    const last = part.at(-1);
    cursor.index = cursor.tokens.length;
    if (first !== undefined && last !== undefined) {
      return { kind: "after", part: first.source.text.slice(first.offset, last.end), rest: time, restIs };
    }
  }
  cursor.index = start;
  return undefined;
}

/** Reads the work that must be done before a score counts: `66 reps`, `1 round`. */
export function readMinimumWork(source: TextSource, faults: Faults): MinimumWork | undefined {
  const cursor = cursorAt(tokensOf(source));
  skip(cursor, "at", "least");
  const number = peek(cursor);
  cursor.index += 1;
  const word = skipOneOf(cursor, ["reps", "rep", "rounds", "round"]);
  if (number?.kind === "number" && Number.isInteger(number.value) && word !== undefined && atEnd(cursor)) {
    const trouble = beyond("minimum", number.value);
    if (trouble) {
      tellText(faults, source, trouble);
      return undefined;
    }
    return { amount: number.value, of: word.startsWith("rep") ? "reps" : "rounds", written: source.text };
  }
  tellText(faults, source, {
    problem: "this does not say how much must be done at least",
    allowed: "`66 reps`, `1 round`",
    remedy: "Write a number of reps or rounds.",
  });
  return undefined;
}

import type { Movement } from "../../models/movement.ts";
import { comparable, isMisspelt, nearestName } from "../../models/nearest.ts";
import { ownEntry } from "../../models/own-entry.ts";
import { SPELLINGS } from "../names/movement-spellings.ts";
import { peek, rest, skip, type Cursor } from "./cursor.ts";
import { tell } from "./notation-fault.ts";
import { startsEntry } from "./number-series.ts";
import type { Reading } from "./reading.ts";
import { tellCount } from "./resolve-series.ts";
import { writtenBy, type Token } from "./token.ts";
import { tradeWordRemedy } from "./trade-words.ts";

/** Longest name of a movement, in pieces of text. */
const LONGEST_NAME = 14;
const NEVER_IN_NAMES = [",", "+", "/", "(", ")", ":", "%"];
/** Words that may end a movement when a number follows. */
const BEFORE_NUMBERS = ["at", "@", "to", "in", "for", "over", "onto", "from", "on", "with"];

/** What may follow `for` behind a movement: `max row for calories`. */
const COUNTED_IN = ["reps", "calories", "cal", "cals", "metres", "meters", "distance", "time"];

/**
 * Takes the movements that come next for one division: a name, names between slashes by division, or names joined by
 * `or` of which the athlete may choose. Undefined with a fault noted where a name is not known.
 */
export function takeMovements(cursor: Cursor, reading: Reading): readonly Movement[] | undefined {
  const choices: Movement[] = [];
  do {
    if (choices.length > 0 && startsEntry(cursor)) {
      tell(reading.faults, rest(cursor), cursor.tokens, OTHER_AMOUNT);
      return undefined;
    }
    const movement = takeForDivision(cursor, reading);
    if (movement === undefined) return undefined;
    if (!choices.includes(movement)) choices.push(movement);
  } while (skip(cursor, "or"));
  return choices;
}

const OTHER_AMOUNT = {
  problem:
    "where the athlete may choose, both movements must have the same amount: which one would be done is not known beforehand",
  allowed: "`10 pull-up or ring row`",
  remedy: "Name the two ways under `divisions:` and give each its own line with a word of `by division:`.",
} as const;

const SLASH = {
  problem: "a slash parts what each division does, in one amount, and here another amount stands behind it",
  allowed: "`8 bar muscle-up/chest-to-bar pull-up`; what is done one after another is a line each",
  remedy:
    "Write every movement on a line of its own; where divisions have other amounts too, give each its line with a word of `by division:`.",
} as const;

function takeForDivision(cursor: Cursor, reading: Reading): Movement | undefined {
  const start = cursor.index;
  const byDivision: Movement[] = [];
  do {
    if (byDivision.length > 0 && startsEntry(cursor) && longestMovement(cursor, reading) === undefined) {
      tell(reading.faults, rest(cursor), cursor.tokens, SLASH);
      return undefined;
    }
    const movement = takeOne(cursor, reading);
    if (movement === undefined) return undefined;
    byDivision.push(movement);
  } while (skip(cursor, "/"));
  if (byDivision.length === 1) return byDivision[0];
  if (byDivision.length === reading.who.divisions.length) return byDivision[reading.who.index];
  tellCount(byDivision.length, cursor.tokens.slice(start, cursor.index), reading.who, reading.faults);
  return undefined;
}

function takeOne(cursor: Cursor, reading: Reading): Movement | undefined {
  const run = nameRun(cursor);
  const found = longestMovement(cursor, reading);
  const behind = found === undefined ? undefined : peek(cursor, found.length)?.text;
  const ends = found !== undefined && (found.length >= run.length || endsName(cursor, found.length));
  if (found !== undefined && (ends || behind === "at" || behind === "@")) {
    cursor.index += found.length;
    return found.movement;
  }
  if (found === undefined || !tellBehind(found, run, cursor, reading)) tellUnknown(run, cursor, reading);
  // What stands behind the name may still be read.
  cursor.index += run.length;
  return undefined;
}

/** The movement with the longest name that begins here, and how many tokens its name takes. */
export function longestMovement(
  cursor: Cursor,
  reading: Pick<Reading, "byName">,
): { readonly movement: Movement; readonly length: number } | undefined {
  const tokens = rest(cursor).slice(0, LONGEST_NAME);
  const stop = tokens.findIndex((token) => NEVER_IN_NAMES.includes(token.text));
  if (tokens[0]?.kind !== "word" && tokens[0]?.kind !== "number") return undefined;
  for (let length = stop === -1 ? tokens.length : stop; length > 0; length--) {
    const movement = reading.byName(writtenBy(tokens.slice(0, length)));
    if (movement !== undefined) return { movement, length };
  }
  return undefined;
}

/**
 * The words that would be a movement's name by the rules of a line: up to a sign, a number, or a word before a
 * number.
 */
function nameRun(cursor: Cursor): readonly Token[] {
  const tokens = rest(cursor);
  const end = tokens.findIndex(
    (token, index) =>
      (token.kind === "sign" && !["-", "&", "'"].includes(token.text)) ||
      (index > 0 && token.text === "or") ||
      ((token.kind === "number" || token.kind === "clock") && index > 0) ||
      (index > 0 && beginsSomething(tokens, index)),
  );
  return end === -1 ? tokens : tokens.slice(0, end);
}

function endsName(cursor: Cursor, length: number): boolean {
  return beginsSomething(rest(cursor), length);
}

/** `row calories` is `calories row`. */
const isCounted = ({ text }: Token): boolean => ["calories", "cals", "cal", "calorie"].includes(text);

function beginsSomething(tokens: readonly Token[], index: number): boolean {
  const [token, next, after] = tokens.slice(index, index + 3);
  if (token === undefined) return true;
  if (token.text === "or") return true;
  if (token.text === "of" && (next?.kind === "number" || next?.kind === "clock")) return true;
  if (token.text === "for" && next !== undefined && COUNTED_IN.includes(next.text)) return true;
  if (isCounted(token) && (next === undefined || [",", "in"].includes(next.text))) return true;
  if (["each", "per", "one", "both", "alternating"].includes(token.text) && next?.kind === "word")
    return true;
  if (!BEFORE_NUMBERS.includes(token.text) || next === undefined) return false;
  if (next.kind === "number" || next.kind === "clock") return true;
  return (
    ["any", "body", "bodyweight", "bw", "athlete's", "own"].includes(next.text) || after?.kind === "number"
  );
}

/**
 * Tells words behind a movement that is known, `toes-to-bar unbroken`. False where all of it may be the name of another
 * movement, misspelt or told of as a word of the trade.
 */
function tellBehind(
  { movement, length }: { readonly movement: Movement; readonly length: number },
  run: readonly Token[],
  cursor: Cursor,
  reading: Reading,
): boolean {
  const written = writtenBy(run);
  const nearest = nearestName(written, reading.movementNames);
  const isOther = nearest !== undefined && isMisspelt(written, nearest);
  const behind = run.slice(length);
  if (isOther || behind.length === 0 || tradeWordRemedy(written) !== undefined) return false;
  tell(reading.faults, behind, cursor.tokens, {
    problem: `"${writtenBy(behind)}" behind ${movement.name} is not understood`,
    allowed: "a load with `at`, a height with `to`, and after a comma how it is done",
    remedy:
      "Write how it is done behind a comma, such as `, unbroken`; if all of it is the name of another movement, describe that one in a file of its own in content/movements.",
  });
  return true;
}

function tellUnknown(run: readonly Token[], cursor: Cursor, reading: Reading): void {
  const around = cursor.tokens;
  if (run.length === 0) {
    const here = peek(cursor);
    tell(reading.faults, here === undefined ? [] : [here], around, {
      problem: "a movement should stand here",
      allowed: "an amount, a movement, a load: `10 thruster at 43 kg`",
      remedy: "Write the name of a movement after the amount.",
    });
    return;
  }
  const written = writtenBy(run);
  const trade = tradeWordRemedy(written) ?? tradeWordRemedy(writtenBy(rest(cursor).slice(0, run.length + 3)));
  if (trade !== undefined) {
    tell(reading.faults, run, around, trade);
    return;
  }
  const meant = (ownEntry(SPELLINGS, comparable(written)) ?? []).flatMap(
    (names) => names.map(reading.byName).find((movement) => movement !== undefined)?.name ?? [],
  );
  if (meant.length > 0) {
    const names = meant.map((name) => `\`${name}\``);
    tell(reading.faults, run, around, {
      problem: `"${written}" can be ${meant.join(" or ")}`,
      remedy: `Write ${names.join(" or ")}${names.length > 1 ? ", whichever is meant" : ""}.`,
      severity: "question",
    });
    return;
  }
  const nearest = nearestTo(run, reading);
  tell(reading.faults, run, around, {
    problem: `no movement is called "${written}"`,
    nearest,
    remedy:
      nearest === undefined
        ? "Use the name of a movement in content/movements, or describe this one there in a file of its own."
        : isMisspelt(written, nearest)
          ? `Write \`${nearest}\`, or describe the movement in a file of its own in content/movements.`
          : `\`${nearest}\` is another movement: write it only if that is what is done; else describe this one in a file of its own in content/movements.`,
  });
}

/** The name misspelt, else the movement whose name the last words are, else the nearest name. */
function nearestTo(run: readonly Token[], reading: Reading): string | undefined {
  const written = writtenBy(run);
  const nearest = nearestName(written, reading.movementNames);
  if (nearest !== undefined && isMisspelt(written, nearest)) return nearest;
  const ends = run.map((_, from) => reading.byName(writtenBy(run.slice(from))));
  const done = ends.find((movement) => movement !== undefined)?.name;
  const isOfIt =
    done !== undefined && nearest !== undefined && comparable(nearest).includes(comparable(done));
  return isOfIt ? nearest : (done ?? nearest);
}

import type { Movement } from "../../models/movement.ts";
import { takeAmount, type WrittenAmount } from "./amount.ts";
import { takeAttachments, type Attached } from "./attachments.ts";
import { atEnd, cursorAt, rest, skipOneOf, type Cursor } from "./cursor.ts";
import { settleLoad } from "./load.ts";
import { longestMovement, takeMovements } from "./movement-phrase.ts";
import { tell } from "./notation-fault.ts";
import type { Reading } from "./reading.ts";
import type { Token } from "./token.ts";

/** One movement of a line with its amount and what stands behind it. */
export type Piece = {
  readonly amount: WrittenAmount;
  readonly movements: readonly Movement[];
  readonly attached: Attached;
};
/** What and how much: the line up to its first comma; several pieces are a complex. */
export type Head = { readonly pieces: readonly Piece[] };

/** Reads the part of a line before its first comma. Undefined with a fault noted where a piece cannot be read. */
export function readHead(tokens: readonly Token[], reading: Reading): Head | undefined {
  const pieces = splitAtPlus(tokens).map((piece) => readPiece(piece, tokens, reading));
  const found = pieces.filter((piece) => piece !== undefined);
  return found.length === pieces.length ? { pieces: found } : undefined;
}

function splitAtPlus(tokens: readonly Token[]): readonly (readonly Token[])[] {
  const pieces: Token[][] = [[]];
  for (const token of tokens) {
    if (token.text === "+") pieces.push([]);
    else pieces.at(-1)?.push(token);
  }
  return pieces;
}

function readPiece(tokens: readonly Token[], around: readonly Token[], reading: Reading): Piece | undefined {
  const cursor = cursorAt(tokens);
  if (tokens.length === 0) {
    tell(reading.faults, [], around, {
      problem: "`+` joins two movements of a complex, and one of them is missing",
      allowed: "`5 hang clean + 3 front squat + 1 jerk`",
      remedy: "Write an amount and a movement on both sides of `+`.",
    });
    return undefined;
  }
  const amount = takeAmount(cursor, reading);
  if (amount === undefined) return undefined;
  const alternating =
    longestMovement(cursor, reading) === undefined &&
    skipOneOf(cursor, ["alternating", "alternate"]) !== undefined;
  const movements = takeMovements(cursor, reading);
  if (movements === undefined) {
    readRest(cursor, reading);
    return undefined;
  }
  const behind = takeAttachments(cursor, movements, amount.kind === "none", reading);
  if (behind === undefined) return undefined;
  const attached: Attached =
    alternating && behind.sides === undefined ? { ...behind, sides: "alternating" } : behind;
  if (!atEnd(cursor)) {
    tellLeftOver(cursor, movements, reading);
    return undefined;
  }
  return { amount: withLateWords(amount, attached), movements, attached };
}

/** Tells what is wrong behind a movement that is not known. */
function readRest(cursor: Cursor, reading: Reading): void {
  const { loads } = takeAttachments(cursor, [], false, reading) ?? {};
  if (loads !== undefined)
    settleLoad(loads, undefined, { passes: [{ count: "endless", isLadder: false }] }, reading);
}

/** The amount with what stands behind the movement: `row 500 m`, `max row for calories`. */
function withLateWords(amount: WrittenAmount, attached: Attached): WrittenAmount {
  if (amount.kind === "none" && attached.amount !== undefined) return attached.amount;
  const { unit } = attached;
  if (unit === undefined) return amount;
  if (amount.kind === "none") return { kind: "unit", unit, tokens: attached.tokens };
  if (amount.kind === "max") return { ...amount, unit };
  if (amount.kind === "unit") return amount;
  const entries = amount.values.entries.map((entry) => ({
    ...entry,
    counted: unit,
    // `20 row calories`; a clock is a time to fill.
    ...(entry.unit === undefined && !entry.isClock && unit === "calories" ? { unit: { kind: unit } } : {}),
  }));
  return { ...amount, values: { ...amount.values, entries } };
}

function tellLeftOver(cursor: Cursor, movements: readonly Movement[], reading: Reading): void {
  const left = rest(cursor);
  const name = movements[0]?.name ?? "the movement";
  tell(reading.faults, left, left, {
    problem: `these words behind ${name} mean nothing here`,
    allowed: "a load with `at`, a height with `to`, and after a comma how it is done",
    remedy: remedyFor(left, name),
  });
}

function remedyFor(left: readonly Token[], name: string): string {
  const [mark, number] = left;
  if (mark?.text === "x") {
    const amount = left.length === 2 && number?.kind === "number" ? number.text : undefined;
    const rounds = "Rounds are a block: `- 3 rounds:` with the lines in it.";
    return amount === undefined
      ? rounds
      : `An amount stands before the movement: \`${amount} ${name}\`. ${rounds}`;
  }
  if (left.some(({ text }) => /^poods?$/.test(text)))
    return "A pood is 16 kg: write the load in kg or lb, with `at`.";
  if (mark?.text === "/") {
    return "Values between slashes are alike, with their unit once at the end: `at 1/0.75 body mass`, `at 43/29 kg`.";
  }
  return mark?.kind === "number"
    ? `An amount stands before the movement, \`${mark.text} ${name}\`; loads and heights need their unit.`
    : "Write what is allowed, or move remarks to `standards:`.";
}

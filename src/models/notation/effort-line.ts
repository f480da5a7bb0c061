import type { Movement } from "../movement.ts";
import type { Length } from "../quantity.ts";
import type { ByRound, CountsAs, EffortAmount, LineMovement, Load } from "../workout.ts";
import { settleAmount, takeAmount, type WrittenAmount } from "./amount.ts";
import { takeAttachments, type Attached } from "./attachments.ts";
import { atEnd, cursorAt, peek, rest, skipOneOf, type Cursor } from "./cursor.ts";
import { fitsLoad, settleLoad } from "./load.ts";
import { takeAttempts, takeCountsAs, takeFlag, takeSides, type Sides } from "./line-clauses.ts";
import { takeMovements } from "./movement-phrase.ts";
import { tell, type Trouble } from "./notation-fault.ts";
import type { LineSetting, Reading } from "./reading.ts";
import { byRound } from "./rounds.ts";
import { phrasesOf, type Token } from "./token.ts";
import { tradeWordRemedy } from "./trade-words.ts";

/** A line of work read for one division, without its place. */
export type EffortLine = {
  readonly pieces: readonly LineMovement[];
  readonly load?: ByRound<Load>;
  readonly height?: ByRound<Length>;
  readonly sides?: Sides;
  readonly countsAs?: CountsAs;
  readonly unbroken: boolean;
  readonly tieBreak: boolean;
  readonly attempts?: number;
};

type Clauses = Partial<Attached> & {
  readonly countsAs?: CountsAs;
  readonly unbroken?: boolean;
  readonly tieBreak?: boolean;
  readonly attempts?: number;
  readonly by?: "round" | "ladder";
};

/**
 * Reads a line of work: `21-15-9 thruster at 95/65 lb, unbroken`, `5 hang clean + 3 front squat + 1 jerk`. The part
 * before the first comma says what and how much, what follows says how. Faults are noted; undefined if any was.
 */
export function readEffortLine(
  tokens: readonly Token[],
  setting: LineSetting,
  reading: Reading,
): EffortLine | undefined {
  const before = reading.faults.length;
  const [head = [], ...more] = phrasesOf(tokens);
  const whole = readHead(head, reading);
  let clauses: Clauses = {};
  for (const phrase of more) {
    const clause = readClause(phrase, tokens, reading);
    tellTwice(clause, { ...whole?.pieces.at(-1)?.attached, ...clauses }, phrase, reading);
    clauses = { ...clauses, ...clause };
  }
  const here = clauses.by === undefined ? setting : { ...setting, by: clauses.by };
  const line = whole && settle(whole, clauses, tokens, here, reading);
  return faultless(reading, before) ? line : undefined;
}

function tellTwice(clause: Clauses, said: Clauses, phrase: readonly Token[], reading: Reading): void {
  const again = Object.keys(clause).some((name) => name !== "tokens" && name in said);
  if (!again) return;
  tell(reading.faults, phrase, phrase, {
    problem: "this is said a second time",
    remedy: "Keep one of the two.",
  });
}

/** Notices do not refuse. */
const faultless = (reading: Reading, before: number): boolean =>
  reading.faults.slice(before).every((fault) => fault.severity === "notice");

type Piece = {
  readonly amount: WrittenAmount;
  readonly movements: readonly Movement[];
  readonly attached: Attached;
};
type Head = { readonly pieces: readonly Piece[] };

function readHead(tokens: readonly Token[], reading: Reading): Head | undefined {
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
  const movements = takeMovements(cursor, reading);
  if (movements === undefined) return undefined;
  const attached = takeAttachments(cursor, movements, amount.kind === "none", reading);
  if (attached === undefined) return undefined;
  if (!atEnd(cursor)) {
    tellLeftOver(cursor, movements, reading);
    return undefined;
  }
  return { amount: withLateWords(amount, attached), movements, attached };
}

/** The amount with what stands behind the movement: `row 500 m`, `max row for calories`. */
function withLateWords(amount: WrittenAmount, attached: Attached): WrittenAmount {
  if (amount.kind === "none" && attached.amount !== undefined) return attached.amount;
  const { unit } = attached;
  if (unit === undefined) return amount;
  if (amount.kind === "none") return { kind: "unit", unit, tokens: attached.tokens };
  if (amount.kind === "max") return { ...amount, unit };
  if (amount.kind === "unit") return amount;
  const entries = amount.values.entries.map((entry) => ({ ...entry, counted: unit }));
  return { ...amount, values: { ...amount.values, entries } };
}

function tellLeftOver(cursor: Cursor, movements: readonly Movement[], reading: Reading): void {
  const left = rest(cursor);
  const name = movements[0]?.name ?? "the movement";
  const mark = peek(cursor)?.text;
  tell(reading.faults, left, left, {
    problem: `these words behind ${name} mean nothing here`,
    allowed: "a load with `at`, a height with `to`, and after a comma how it is done",
    remedy:
      mark === "x"
        ? "Rounds are a block: `- 3 rounds:` with the lines in it."
        : "Write what is allowed, or move remarks to `standards:`.",
  });
}

const CLAUSES =
  "`each side`, `one side`, `alternating`, `counts 10`, `counts 1 per 5 ft`, `unbroken`, `tie-break`, `3 attempts`, `by round`, `by ladder`, a load with `at`, a height with `to`";

function readClause(phrase: readonly Token[], around: readonly Token[], reading: Reading): Clauses {
  const cursor = cursorAt(phrase);
  const before = reading.faults.length;
  const read = takeClause(cursor, reading);
  if (read !== undefined && atEnd(cursor)) return read;
  if (reading.faults.length === before) {
    tell(reading.faults, read === undefined ? phrase : rest(cursor), around, clauseTrouble(phrase));
  }
  return {};
}

function clauseTrouble(phrase: readonly Token[]): Trouble {
  const words = phrase.map((token) => token.text).join(" ");
  return (
    tradeWordRemedy(words) ?? {
      problem:
        phrase.length === 0
          ? "nothing stands after the comma"
          : "nothing of this kind can follow a comma here",
      allowed: CLAUSES,
      remedy: "Write one of these, or move remarks to `standards:`.",
    }
  );
}

function takeClause(cursor: Cursor, reading: Reading): Clauses | undefined {
  const sides = takeSides(cursor);
  if (sides !== undefined) return { sides: saidOnce(sides, cursor, reading) };
  const countsAs = takeCountsAs(cursor, reading);
  if (countsAs !== undefined) return { countsAs };
  const flag = takeFlag(cursor);
  if (flag !== undefined) return flag === "unbroken" ? { unbroken: true } : { tieBreak: true };
  const by = skipOneOf(cursor, ["by round", "by ladder"]);
  if (by !== undefined) return { by: by === "by round" ? "round" : "ladder" };
  const attempts = takeAttempts(cursor, reading);
  if (attempts !== undefined) return { attempts };
  return takeAttachments(cursor, [], false, reading);
}

function saidOnce(sides: Sides | "both", cursor: Cursor, reading: Reading): Sides {
  if (sides !== "both") return sides;
  tell(reading.faults, cursor.tokens, cursor.tokens, {
    problem: "the amount is taken as that of each side, so that twice as much is done in all",
    remedy: "Write `each side` to say so, or `alternating` if the amount is that of both together.",
    severity: "notice",
  });
  return "each";
}

function settle(
  head: Head,
  clauses: Clauses,
  tokens: readonly Token[],
  setting: LineSetting,
  reading: Reading,
): EffortLine | undefined {
  const pieces = head.pieces.map((piece) => settlePiece(piece, tokens, setting, reading));
  const settled = pieces.filter((piece) => piece !== undefined);
  const last = head.pieces.at(-1);
  if (settled.length < pieces.length || last === undefined) return undefined;
  const inner = head.pieces.slice(0, -1).find((piece) => piece.attached.load ?? piece.attached.loads);
  if (inner !== undefined) {
    tell(reading.faults, inner.attached.tokens, tokens, {
      problem: "a complex has one load, and it stands behind the last movement",
      allowed: "`5 hang clean + 3 front squat at 60 kg`",
      remedy: "Write the load once at the end; movements with loads of their own are lines of their own.",
    });
    return undefined;
  }
  const attached: Attached = { ...last.attached, ...clauses };
  const load = settleAttachedLoad(attached, head, tokens, setting, reading);
  const height = settleHeight(attached, setting, reading);
  const sides = clauses.sides ?? last.attached.sides;
  return {
    pieces: settled,
    ...(load === undefined ? {} : { load }),
    ...(height === undefined ? {} : { height }),
    ...(sides === undefined ? {} : { sides }),
    ...(clauses.countsAs === undefined ? {} : { countsAs: clauses.countsAs }),
    unbroken: clauses.unbroken ?? false,
    tieBreak: clauses.tieBreak ?? false,
    ...(clauses.attempts === undefined ? {} : { attempts: clauses.attempts }),
  };
}

function settlePiece(
  piece: Piece,
  tokens: readonly Token[],
  setting: LineSetting,
  reading: Reading,
): LineMovement | undefined {
  const { maxFor } = piece.attached;
  const amount: EffortAmount | undefined = settleAmount(
    piece.amount,
    piece.movements,
    setting,
    reading,
    tokens,
  );
  if (amount === undefined) return undefined;
  const movements = piece.movements.map((movement) => movement.id);
  if (maxFor === undefined) return { movements, amount };
  if (amount.kind === "max")
    return { movements, amount: { kind: "max-for", time: maxFor, unit: amount.unit } };
  tell(reading.faults, piece.attached.tokens, tokens, {
    problem: "a time to fill goes with `max`, and here an amount is given",
    allowed: "`max burpee in 2:00`",
    remedy:
      "Write `max` for the amount; if the amount must be done in that time, put the line into a block such as `by 2:00:`.",
  });
  return undefined;
}

function settleAttachedLoad(
  attached: Attached,
  head: Head,
  tokens: readonly Token[],
  setting: LineSetting,
  reading: Reading,
): ByRound<Load> | undefined {
  const movements = head.pieces.flatMap((piece) => piece.movements);
  const load =
    attached.load !== undefined
      ? ({ kind: "same", value: attached.load } as const)
      : attached.loads && settleLoad(attached.loads, attached.shareOf, setting, reading);
  if (load !== undefined) {
    const saysPieces = attached.loads?.entries.every((entry) => entry.pieces !== undefined) ?? true;
    const written = attached.loads?.tokens ?? attached.tokens;
    return fitsLoad(load, saysPieces, movements, written, reading) ? load : undefined;
  }
  if (attached.loads !== undefined) return undefined;
  if (setting.lifting) return { kind: "same", value: { kind: "athletes-choice" } };
  const needing = movements.find((movement) =>
    ["barbell", "dumbbell", "kettlebell", "odd-object", "carry"].includes(movement.kind),
  );
  if (needing?.loading !== undefined) {
    tell(reading.faults, [], tokens, {
      problem: `the load of ${needing.name} is not said`,
      allowed: "`at 43/29 kg`, `at 70% of clean and jerk`, `at 0.75 body mass`, `at any load`",
      remedy: "Write the load behind the movement, or `at any load` if the athlete chooses it.",
    });
  }
  return undefined;
}

function settleHeight(
  attached: Attached,
  setting: LineSetting,
  reading: Reading,
): ByRound<Length> | undefined {
  const { heights } = attached;
  if (heights === undefined) return undefined;
  const lengths: Length[] = [];
  for (const { unit, value, tokens } of heights.entries) {
    if (unit?.kind !== "length") {
      tell(reading.faults, tokens, tokens, {
        problem: unit === undefined ? "a height needs its unit" : "this is not a unit of a height",
        allowed: "in, ft, cm, m",
        remedy: "Write the height with its unit, such as `to 24 in` or `to 60 cm`.",
      });
      return undefined;
    }
    lengths.push({ value: value * unit.times, unit: unit.unit });
  }
  return byRound(lengths, heights, setting, reading, (length) => length);
}

import type { Movement } from "../../models/movement.ts";
import type { Length, Metres } from "../../models/quantity.ts";
import type { Amount, ByRound, CountsAs, EffortAmount, LineMovement, Load } from "../../models/workout.ts";
import type { Attached } from "./attachments.ts";
import { checkCounts, type WrittenCountsAs } from "./check-counts.ts";
import { readClause, type Clauses } from "./line-clause.ts";
import { readHead, type Head, type Piece } from "./line-head.ts";
import { fitsLoad, settleLoad } from "./load.ts";
import { tell, type Trouble } from "./notation-fault.ts";
import type { LineSetting, Reading } from "./reading.ts";
import { byRound } from "./rounds.ts";
import { settleAmount } from "./settle-amount.ts";
import type { Sides } from "./take-clauses.ts";
import { phrasesOf, type Token } from "./token.ts";

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
  tell(reading.faults, phrase, phrase, clause.loads === undefined ? SAID_TWICE : LOADS_IN_A_ROW);
}

const SAID_TWICE: Trouble = { problem: "this is said a second time", remedy: "Keep one of the two." };
const LOADS_IN_A_ROW: Trouble = {
  problem:
    "the load is said a second time; loads that change by round are joined by hyphens, with the unit once",
  allowed:
    "`at 60-80-95/42.5-55-65 kg`: first those of one division, then behind the slash those of the next",
  remedy: "Write one load, or all of them in this way.",
};

/** Notices do not refuse. */
const faultless = (reading: Reading, before: number): boolean =>
  reading.faults.slice(before).every((fault) => fault.severity === "notice");

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
  if (last === undefined) return undefined;
  const inner = head.pieces.slice(0, -1).find((piece) => piece.attached.load ?? piece.attached.loads);
  if (inner !== undefined) {
    tell(reading.faults, inner.attached.tokens, tokens, {
      problem: "a complex has one load, and it stands behind the last movement",
      allowed: "`5 hang clean + 3 front squat at 60 kg`",
      remedy: "Write the load once at the end; movements with loads of their own are lines of their own.",
    });
    return undefined;
  }
  const open = head.pieces.find((piece) => piece.amount.kind === "none" || piece.amount.kind === "unit");
  if (head.pieces.length > 1 && setting.inLadder && open !== undefined) {
    tell(reading.faults, tokens, tokens, {
      problem:
        "the number of the block would count for each movement by itself, and a complex is done without letting go",
      allowed: "`1 hang clean + 2 front squat at 60/40 kg`, in a block of rounds",
      remedy:
        "Write the complex with numbers of its own into a block of rounds, one block for each number; or use the one name the movement has.",
    });
    return undefined;
  }
  const attached: Attached = { ...last.attached, ...clauses };
  const load = settleAttachedLoad(attached, head, tokens, setting, reading);
  const height = settleHeight(attached, setting, reading);
  const sides = clauses.sides ?? last.attached.sides;
  if (settled.length < pieces.length) return undefined;
  const { repLength } = last.attached;
  const counts: WrittenCountsAs | undefined =
    clauses.countsAs ??
    // Each rep counts one, however far it goes.
    (repLength === undefined ? undefined : { kind: "per", amount: repLength, scores: 1, per: "metres" });
  if (counts !== undefined) checkCounts({ written: counts, pieces: settled }, tokens, reading);
  return {
    pieces: settled,
    ...(load === undefined ? {} : { load }),
    ...(height === undefined ? {} : { height }),
    ...(sides === undefined ? {} : { sides }),
    ...(counts === undefined ? {} : { countsAs: plainCounts(counts) }),
    unbroken: clauses.unbroken ?? false,
    tieBreak: clauses.tieBreak ?? false,
    ...(clauses.attempts === undefined ? {} : { attempts: clauses.attempts }),
  };
}

/** A movement as if it were counted in reps alone: its distance is said behind it. */
const countedInReps = (movement: Movement): Movement => ({ ...movement, counts: ["reps"] });

/** Reps of a length as the way they make; undefined where their number is not said in the line. */
function inLengths(amount: EffortAmount, length: Metres): EffortAmount | undefined {
  if (amount.kind !== "counted") return undefined;
  const way = ({ value }: Amount): Amount => ({ value: value * length, unit: "metres" });
  const { amount: counted } = amount;
  switch (counted.kind) {
    case "same":
      return { kind: "counted", amount: { ...counted, value: way(counted.value) } };
    case "listed":
      return { kind: "counted", amount: { ...counted, values: counted.values.map(way) } };
    default:
      return undefined;
  }
}

const plainCounts = (written: WrittenCountsAs): CountsAs =>
  written.kind === "whole"
    ? { kind: "whole", scores: written.scores }
    : { kind: "per", amount: written.amount, scores: written.scores };

function settlePiece(
  piece: Piece,
  tokens: readonly Token[],
  setting: LineSetting,
  reading: Reading,
): LineMovement | undefined {
  const { maxFor, repLength } = piece.attached;
  const written: EffortAmount | undefined =
    repLength === undefined
      ? settleAmount(piece.amount, piece.movements, setting, reading, tokens)
      : settleAmount(piece.amount, piece.movements.map(countedInReps), setting, reading, tokens);
  if (written === undefined) return undefined;
  const amount = repLength === undefined ? written : inLengths(written, repLength);
  if (amount === undefined) {
    tell(reading.faults, tokens, tokens, {
      problem: "reps that have a length need a number of their own",
      allowed: "`15 shuttle run of 15 m`",
      remedy: "Write the number of reps before the movement.",
    });
    return undefined;
  }
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
  if (setting.lifting && movements.every((movement) => movement.loading?.lift === true)) {
    return { kind: "same", value: { kind: "athletes-choice" } };
  }
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
  for (const { unit, value, tokens, pieces } of heights.entries) {
    if (unit?.kind !== "length" || pieces !== undefined) {
      tell(reading.faults, tokens, tokens, {
        problem:
          pieces !== undefined
            ? "a height is one length"
            : unit === undefined
              ? "a height needs its unit"
              : "this is not a unit of a height",
        allowed: "in, ft, cm, m",
        remedy: "Write the height with its unit, such as `to 24 in` or `to 60 cm`.",
      });
      return undefined;
    }
    lengths.push({ value: value * unit.times, unit: unit.unit });
  }
  return byRound(lengths, heights, setting, reading, (length) => length);
}

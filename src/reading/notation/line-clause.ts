import { takeAmount } from "./amount.ts";
import { takeAttachments, type Attached } from "./attachments.ts";
import type { WrittenCountsAs } from "./check-counts.ts";
import { atEnd, cursorAt, rest, skipOneOf, type Cursor } from "./cursor.ts";
import { isRest } from "./rest-phrase.ts";
import { takeAttempts, takeCountsAs, takeFlag, takeSides, type Sides } from "./take-clauses.ts";
import { tell, type Trouble } from "./notation-fault.ts";
import { longestMovement } from "./movement-phrase.ts";
import type { Reading } from "./reading.ts";
import { writtenBy, type Token } from "./token.ts";
import { tradeWordRemedy } from "./trade-words.ts";

/** What the parts of a line behind its commas say, each once. */
export type Clauses = Partial<Attached> & {
  readonly countsAs?: WrittenCountsAs;
  readonly unbroken?: boolean;
  readonly tieBreak?: boolean;
  readonly attempts?: number;
  readonly by?: "round" | "ladder";
};

const CLAUSES =
  "`each side`, `one side`, `alternating`, `counts 10`, `counts 1 per 5 ft`, `unbroken`, `tie-break`, `3 attempts`, `by round`, `by ladder`, a load with `at`, a height with `to`";

/** Reads one phrase behind a comma. Empty with a fault noted where it says nothing of a line. */
export function readClause(phrase: readonly Token[], around: readonly Token[], reading: Reading): Clauses {
  const cursor = cursorAt(phrase);
  const before = reading.faults.length;
  const read = takeClause(cursor, reading);
  if (read !== undefined && atEnd(cursor)) return read;
  if (reading.faults.length === before) {
    tell(reading.faults, read === undefined ? phrase : rest(cursor), around, clauseTrouble(phrase, reading));
  }
  return {};
}

/** Whether a phrase is a line of work by itself: an amount and a movement. */
function isLine(phrase: readonly Token[], reading: Reading): boolean {
  const cursor = cursorAt(phrase);
  const amount = takeAmount(cursor, { ...reading, faults: [] });
  return amount !== undefined && amount.kind !== "none" && longestMovement(cursor, reading) !== undefined;
}

function clauseTrouble(phrase: readonly Token[], reading: Reading): Trouble {
  const words = phrase.map((token) => token.text).join(" ");
  if (isRest(phrase)) {
    return {
      problem: "a rest is a line of its own",
      allowed: "`- rest 1:00` below the line; between rounds, a block `3 rounds, rest 1:00 between:`",
      remedy: `Write \`- ${words}\` on the next line.`,
    };
  }
  const trade = tradeWordRemedy(words);
  if (trade !== undefined) return trade;
  if (isLine(phrase, reading)) {
    return {
      problem:
        "each movement is a line of its own, and behind a comma stands only how the one before it is done",
      allowed: `\`- ${writtenBy(phrase)}\` below it, as far in`,
      remedy: `Write \`- ${writtenBy(phrase)}\` on the next line.`,
    };
  }
  return {
    problem:
      phrase.length === 0 ? "nothing stands after the comma" : "nothing of this kind can follow a comma here",
    allowed: CLAUSES,
    remedy: "Write one of these, or move remarks to `standards:`.",
  };
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

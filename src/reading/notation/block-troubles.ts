import { tell } from "./notation-fault.ts";
import { tellUnreadable } from "./number-series.ts";
import type { Reading } from "./reading.ts";
import { writtenBy, type Token } from "./token.ts";
import { tradeWordRemedy } from "./trade-words.ts";

/** Everything a block may say, for messages. */
export const BLOCK_WORDS =
  "`3 rounds`, `21-15-9`, `3 up by 3`, `repeat`, `any order`, `every 2:00`, `0:20 on, 0:10 off`, `amrap 3:00`, `in turn`, `or out`, `by 9:00`, `by +3:00`, `cap 2:00`, `rest 1:00 between`, `unbroken`, `tie-break`";

/** Words of a block behind which a time stands. */
const TIMED = ["amrap", "every", "by", "cap", "for", "rest"];

/** Notes words in the name of a block that mean nothing there, from a token on up to the next comma. */
export function tellUnknownClause(tokens: readonly Token[], start: number, reading: Reading): void {
  const comma = tokens.findIndex((token, index) => index >= start && token.text === ",");
  const unknown = tokens.slice(start, comma === -1 ? tokens.length : comma);
  const words = writtenBy(unknown);
  const badClock = unknown.find((token) => token.kind === "clock" && Number.isNaN(token.value));
  if (badClock !== undefined) {
    tellUnreadable(badClock, reading.faults);
    return;
  }
  if (unknown[0]?.text === "rest" && unknown.some((token) => token.text === "-")) {
    tell(reading.faults, unknown, tokens, {
      problem: "a rest that changes by round cannot be said in one block",
      allowed: "`rest 1:00 between`",
      remedy: "Write the rounds out, one after the other, each with a line of rest behind it.",
    });
    return;
  }
  if (unknown[0]?.text === "rest") {
    tell(reading.faults, unknown, tokens, {
      problem: "whether this rest comes between the rounds only or after the last one too is not said",
      allowed: "`rest 1:00 between`, or a line `- rest 1:00` at the end of the block",
      remedy: `Write \`${words} between\` if there is none after the last round, else a line of rest in the block.`,
    });
    return;
  }
  const bare = unknown.find((token) => token.kind === "number");
  if (bare !== undefined && TIMED.includes(unknown[0]?.text ?? "")) {
    tell(reading.faults, unknown, tokens, {
      problem: "a time needs a colon or a unit",
      allowed: "`amrap 3:00`, `every 90 s`, `by 9:00`, `cap 2:00`",
      remedy: `Write \`${bare.text}:00\` if minutes are meant.`,
    });
    return;
  }
  if (unknown[0]?.text === "x" && bare !== undefined) {
    tell(reading.faults, unknown, tokens, {
      problem: "`x` does not say what it is the number of",
      allowed: "`every 3:00, 5 rounds`",
      remedy: `Write \`, ${bare.text} rounds\`.`,
    });
    return;
  }
  if (unknown[0]?.text === "wearing") {
    tell(reading.faults, unknown, tokens, {
      problem: "what is worn can only be said for a part as a whole",
      remedy: "Write `wearing:` beside `work:`, and make work without it a part of its own.",
    });
    return;
  }
  tell(
    reading.faults,
    unknown,
    tokens,
    tradeWordRemedy(words) ?? {
      problem: "these words say nothing about a block",
      allowed: BLOCK_WORDS,
      remedy: "Write one of these, with commas between; a movement is a line below the block, not its name.",
    },
  );
}

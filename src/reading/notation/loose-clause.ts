import { atEnd, cursorAt } from "./cursor.ts";
import { takeFlag, takeSides } from "./take-clauses.ts";
import type { Trouble } from "./notation-fault.ts";
import type { Token } from "./token.ts";

/**
 * True for a line that only says how, such as `each side`: what is left when `[10 snatch, each side]` is cut at its
 * comma.
 */
export function isLooseClause(tokens: readonly Token[]): boolean {
  const cursor = cursorAt(tokens);
  if ((takeSides(cursor) ?? takeFlag(cursor)) !== undefined) return atEnd(cursor);
  const words = tokens.map((token) => token.text);
  return words[0] === "counts" || (words.length === 2 && /^attempts?$/.test(words[1] ?? ""));
}

/** What to say of such a line. */
export const LOOSE_CLAUSE: Trouble = {
  problem: "these words say how a line is done, but no line stands here",
  allowed: "`- 10 snatch at 43 kg, each side`",
  remedy:
    "Put them behind the line they belong to; between [ and ] a comma begins a new entry, so put that line in quotes or on a line of its own.",
};

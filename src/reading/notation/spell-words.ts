import type { MovementByName } from "../names/movement-names.ts";
import { cursorAt } from "./cursor.ts";
import { longestMovement } from "./movement-phrase.ts";
import { tokensOf, type TextSource, type Token } from "./token.ts";

/** A word of `by division:` with its text for one division. */
export type DivisionWord = { readonly word: string; readonly text: TextSource };

/**
 * Replaces words of `by division:` by what they stand for in one division. A longer word goes before a shorter one, and
 * a movement whose name holds the word (`bar muscle-up` where `bar` is one) is left alone.
 */
export function spellWords(
  tokens: readonly Token[],
  words: readonly DivisionWord[],
  byName: MovementByName,
): readonly Token[] {
  if (words.length === 0) return tokens;
  const spelled = words.map(({ word, text }) => ({
    texts: tokensOf({ ...text, text: word }).map((token) => token.text),
    text,
  }));
  const longestFirst = spelled.toSorted((one, other) => other.texts.length - one.texts.length);
  const result: Token[] = [];
  for (let index = 0; index < tokens.length;) {
    const found = longestFirst.find(({ texts }) =>
      texts.every((text, further) => tokens[index + further]?.text === text),
    );
    const movement = longestMovement(cursorAt(tokens, index), { byName })?.length ?? 0;
    if (found !== undefined && found.texts.length >= movement) {
      const use = tokens[index];
      result.push(...tokensOf(found.text).map((token) => (use ? { ...token, use: use.use ?? use } : token)));
      index += found.texts.length;
    } else {
      const step = Math.max(movement, 1);
      result.push(...tokens.slice(index, index + step));
      index += step;
    }
  }
  return result;
}

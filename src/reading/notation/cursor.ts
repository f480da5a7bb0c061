import type { Token } from "./token.ts";

/** A place in a row of tokens that moves on while they are read. Lives only as long as one phrase is read. */
export type Cursor = { readonly tokens: readonly Token[]; index: number };

/** A cursor at a token of a row, the first unless said otherwise. */
export const cursorAt = (tokens: readonly Token[], index = 0): Cursor => ({ tokens, index });

/** The next token, or the one so many further, without moving on. */
export const peek = (cursor: Cursor, further = 0): Token | undefined => cursor.tokens[cursor.index + further];

/** Whether no token is left. */
export const atEnd = (cursor: Cursor): boolean => cursor.index >= cursor.tokens.length;

/** The tokens not yet read. */
export const rest = (cursor: Cursor): readonly Token[] => cursor.tokens.slice(cursor.index);

/** Moves on over these words or signs if they come next, all of them or none; true if they did. */
export function skip(cursor: Cursor, ...texts: readonly string[]): boolean {
  const here = texts.every((text, index) => {
    const token = peek(cursor, index);
    return token?.text === text && token.kind !== "number" && token.kind !== "clock";
  });
  if (here) cursor.index += texts.length;
  return here;
}

/** Moves on over the first of these phrases that comes next, and tells which; phrases are words separated by spaces. */
export function skipOneOf<Phrase extends string>(
  cursor: Cursor,
  phrases: readonly Phrase[],
): Phrase | undefined {
  return phrases.find((phrase) => skip(cursor, ...phrase.split(" ")));
}

/** Takes the next token if it is of this kind and has a value. */
export function takeValue(cursor: Cursor, kind: "number" | "clock"): Token | undefined {
  const token = peek(cursor);
  if (token?.kind !== kind) return undefined;
  cursor.index += 1;
  return token;
}

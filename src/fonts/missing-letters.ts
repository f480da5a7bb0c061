import { FONT_FAMILY } from "./font-files.ts";

/** Signs that need no picture of their own: spaces, and the invisible marks of writing. */
const INVISIBLE = /[\p{White_Space}\p{Default_Ignorable_Code_Point}]/u;

/** Letters of the texts for which no font has a picture, each once, in order of appearance. Text is composed (NFC) first. */
export function missingLetters(
  texts: readonly string[],
  hasGlyph: (codePoint: number) => boolean,
): readonly string[] {
  const letters = texts.flatMap((text) => Array.from(text.normalize("NFC")));
  const missing = letters.filter(
    (letter) => !INVISIBLE.test(letter) && !hasGlyph(letter.codePointAt(0) ?? 0),
  );
  return [...new Set(missing)];
}

const codeOf = (letter: string): string =>
  `U+${(letter.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}`;

/**
 * The message for letters that cannot be drawn: what was to be made, for whom, each letter with its code and the words
 * it stands in, what is there instead, and what to do.
 */
export function sayMissingLetters(
  what: string,
  athlete: string,
  letters: readonly string[],
  texts: readonly string[],
): string {
  const found = letters.map((letter) => {
    const text = texts.find((candidate) => candidate.normalize("NFC").includes(letter)) ?? "";
    return `“${letter}” (${codeOf(letter)}) in “${text}”`;
  });
  return (
    `The ${what} of ${athlete} cannot be made: no font has a picture for ${found.join(", ")}. ` +
    `The fonts (${FONT_FAMILY}) hold Latin, Greek, Cyrillic and Vietnamese. ` +
    `Write it in one of these scripts in the file it comes from, for example by a name or share name in Latin letters.`
  );
}

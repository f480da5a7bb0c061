import { SET_UP_FIXED } from "./fixed-constants.ts";

/** Words too short to tell anything, and words every standard has. */
const SHORTEST_WORD = SET_UP_FIXED.shortestWord.value;
const EMPTY: readonly string[] = [
  "the",
  "and",
  "with",
  "for",
  "each",
  "every",
  "where",
  "both",
  "not",
  "are",
  "you",
  "your",
];
/** Share of its words from which on a standard is said by another one. Judgement. */
const SAME = SET_UP_FIXED.sameStandard.value;

/** The telling words of a text, each once, without the plural. */
const wordsOf = (text: string): ReadonlySet<string> =>
  new Set(
    text
      .toLowerCase()
      .split(/[^a-z]+/)
      .filter((word) => word.length >= SHORTEST_WORD && !EMPTY.includes(word))
      .map((word) => word.replace(/s$/, "")),
  );

/**
 * Whether the event's own standard already says what the library says of a movement: it shares most of its words, and does not
 * name another movement of the workout instead.
 *
 * @param names the movement's own names
 * @param others the names of the other movements
 */
export function isSameStandard(
  own: string,
  known: string,
  names: readonly string[],
  others: readonly string[],
): boolean {
  const said = own.toLowerCase();
  const speaksOf = (name: string): boolean => said.includes(name.toLowerCase());
  if (!names.some(speaksOf) && others.some(speaksOf)) return false;
  const [asked, told] = [wordsOf(known), wordsOf(own)];
  const shared = [...asked].filter((word) => told.has(word)).length;
  return asked.size > 0 && shared >= SAME * asked.size;
}

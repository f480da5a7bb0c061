import * as z from "zod";
import { comparable, nearestName } from "../../models/nearest.ts";
import { refuse } from "../yaml/refuse.ts";

/** Words that people write for a word of a closed list; they are proposed, not taken. */
export type Synonyms<W extends string> = Readonly<Record<string, W>>;

/** The word of a closed list that a text is, blind to case, spaces and hyphens. */
export function wordOf<W extends string>(words: readonly W[], text: string): W | undefined {
  return words.find((word) => comparable(word) === comparable(text));
}

/** One word of a closed list, written with spaces or hyphens. A missing one is told with the list. */
export const wordField = <W extends string>(
  words: readonly W[],
  synonyms: Synonyms<W> = {},
  otherwise = "Write one of the words allowed.",
) =>
  z.string({ error: words.map(spaced).join(", ") }).transform((text, ctx): W => {
    const word = wordOf(words, text);
    if (word !== undefined) return word;
    const key = text.trim().toLowerCase();
    const nearest = Object.hasOwn(synonyms, key) ? synonyms[key] : nearestName(text, words);
    return refuse(ctx, {
      problem: "this is not one of the words possible here",
      allowed: words.map(spaced).join(", "),
      nearest: nearest === undefined ? undefined : spaced(nearest),
      remedy: nearest === undefined ? otherwise : `Write \`${spaced(nearest)}\`.`,
    });
  });

/** A word as it is best written by hand. */
export const spaced = (word: string): string => word.replaceAll("-", " ");

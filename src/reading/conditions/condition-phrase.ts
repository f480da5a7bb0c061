import { COMPARISONS, type Comparison } from "../../models/condition.ts";

/** Neighbouring words with where they stand in the text. */
export type Phrase = { readonly text: string; readonly offset: number; readonly end: number };

/** The words of the text with their places, cut at each `or`. */
export function alternativesOf(text: string): readonly (readonly Phrase[])[] {
  const words = [...text.matchAll(/\S+/g)].map((match) => ({
    text: match[0],
    offset: match.index,
    end: match.index + match[0].length,
  }));
  const alternatives: Phrase[][] = [[]];
  for (const word of words) {
    if (word.text === "or") alternatives.push([]);
    else alternatives.at(-1)?.push(word);
  }
  return alternatives;
}

/** Words as one phrase with single spaces; an empty phrase stands at `end`. */
export function joined(words: readonly Phrase[], end: number): Phrase {
  const first = words[0];
  const last = words.at(-1);
  return {
    text: words.map((word) => word.text).join(" "),
    offset: first?.offset ?? end,
    end: last?.end ?? end,
  };
}

/** A comparison as it is written. @example spoken("at-least") // => "at least" */
export const spoken = (comparison: Comparison): string => comparison.replace("-", " ");

/** The comparison a phrase begins with. */
export const comparisonIn = (text: string): Comparison | undefined =>
  COMPARISONS.find((each) => text === spoken(each) || text.startsWith(`${spoken(each)} `));

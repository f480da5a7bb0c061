import type { Place } from "../../models/fault.ts";
import { readByDivision, type ByDivision, type Read } from "./by-division.ts";
import type { Reading } from "./reading.ts";
import { spellWords, type DivisionWord } from "./spell-words.ts";
import { tokensOf, type TextSource, type Token } from "./token.ts";

/** What reading the work of a part needs, for all divisions together. */
export type WorkReading = Omit<Reading, "who"> & {
  readonly divisions: readonly string[];
  /** The words of `by division:` with what they stand for. */
  readonly words: ByDivision<readonly DivisionWord[]>;
  readonly placeAt: (source: TextSource) => Place;
};

/**
 * Reads a text for every division, once for all that read it alike: they stand in the same setting, the words of `by division:`
 * in it say the same, and no slash parts values of theirs.
 */
export function readText<S, T>(
  source: TextSource,
  settings: ByDivision<S>,
  reading: WorkReading,
  read: (tokens: readonly Token[], setting: S, reading: Reading) => T,
): ByDivision<Read<T>> {
  const { divisions } = reading;
  const tokens = tokensOf(source);
  const spelled = reading.words.map((words) => spellWords(tokens, words, reading.byName));
  const tokensFor = (index: number): readonly Token[] => spelled[index] ?? tokens;
  const keysOf = (index: number): readonly unknown[] => {
    const own = tokensFor(index);
    return [settings[index], spelling(own), own.some(({ text }) => text === "/") ? index : undefined];
  };
  return readByDivision(divisions, keysOf, reading.faults, (index, faults) =>
    read(tokensFor(index), settings[index] as S, { ...reading, who: { index, divisions }, faults }),
  );
}

/** Where each token stands in the file, which tells the words put in for others too. */
const spelling = (tokens: readonly Token[]): string =>
  tokens.map(({ source, offset }) => `${source.path.join("\n")}:${offset}`).join("\n\n");

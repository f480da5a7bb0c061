import { LEVELS, SEXES } from "../../models/vocabulary.ts";
import type { Put } from "./cell-reading.ts";

/** What one answer says of everybody of whom the table says nothing. */
export type SaidForAll = Readonly<Partial<Record<"level" | "sex", string>>>;

/** A cell that stands in no table: an answer about the whole of it. It fills what a file leaves open and goes against nothing. */
type CellForAll = {
  readonly heading: string;
  readonly cell: "";
  readonly raw: string;
  readonly puts: readonly Put[];
  readonly fills: true;
};

const WORDS = { level: LEVELS, sex: SEXES } as const;
const SPELT: Readonly<Record<string, string>> = {
  women: "female",
  men: "male",
  woman: "female",
  man: "male",
};

/** The cells that an answer about everybody stands for, for an athlete who has entries of some names. */
export const cellsForAll = (said: SaidForAll, has: ReadonlySet<string>): readonly CellForAll[] =>
  (["level", "sex"] as const).flatMap((entry): readonly CellForAll[] => {
    const raw = said[entry] ?? "";
    const word = raw.trim().toLowerCase();
    const value = SPELT[word] ?? word;
    return has.has(entry) || !WORDS[entry].some((known) => known === value)
      ? []
      : [{ heading: `${entry} of all`, cell: "", raw, puts: [{ entry, value }], fills: true }];
  });

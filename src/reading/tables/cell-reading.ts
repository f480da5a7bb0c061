/** A value for an athlete file: the entry, the name inside it where it is a group, and what stands there. */
export type Put = {
  readonly entry: string;
  /** The name of the line inside the entry: a movement, a workout; absent for single values and lists. */
  readonly key?: string;
  /** Whether the entry is a list to which the value is added. */
  readonly listed?: true;
  readonly value: string | Readonly<Record<string, unknown>>;
};

/** A cell that somebody has to choose a reading of; the likeliest first. */
export type AskedCell = {
  readonly kind: "asked";
  readonly problem: string;
  readonly proposals: readonly string[];
};

/** What became of a cell. Asked: somebody chooses; `proposals` are readings to choose from, the likeliest first. */
export type CellReading =
  | { readonly kind: "nothing" }
  | { readonly kind: "taken"; readonly puts: readonly Put[]; readonly told?: string }
  | AskedCell
  | { readonly kind: "refused"; readonly problem: string; readonly remedy: string };

/** A question with the readings a remedy proposes between backticks. */
export const asked = (problem: string, proposals: readonly string[]): AskedCell => ({
  kind: "asked",
  problem,
  proposals,
});

export const refused = (problem: string, remedy: string): CellReading => ({
  kind: "refused",
  problem,
  remedy,
});

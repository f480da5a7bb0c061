import type { CellReading, Put } from "./cell-reading.ts";
import type { Column } from "./settle-columns.ts";

/** A cell of an athlete's row and what became of it. */
export type RowCell = {
  readonly column: Column;
  /** As it stands in the table. */
  readonly raw: string;
  /** As it is read: an answer somebody gave stands in for it. */
  readonly text: string;
  readonly reading: CellReading;
};

/** What a cell puts into the file. */
export const putsOf = ({ reading }: RowCell): readonly Put[] =>
  reading.kind === "taken" ? reading.puts : [];

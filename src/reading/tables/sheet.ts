/** A table as it stands in a file: rows of cells from the first one on, as text; empty cells are empty texts. */
export type Sheet = {
  /** The file as people name it, with the sheet where a workbook has several: `crew.xlsx, Tests`. */
  readonly name: string;
  readonly rows: readonly (readonly string[])[];
};

/** Where a cell stands, counted from 0. */
type At = { readonly row: number; readonly column: number };

const LETTERS = 26;

/** A column as spreadsheets call it. @example columnName(27) // => "AB" */
export function columnName(column: number): string {
  const letter = String.fromCharCode(65 + (column % LETTERS));
  return column < LETTERS ? letter : `${columnName(Math.floor(column / LETTERS) - 1)}${letter}`;
}

/** A cell as spreadsheets call it. @example cellName({ name: "crew.xlsx", rows: [] }, { row: 16, column: 3 }) // => "crew.xlsx!D17" */
export const cellName = ({ name }: Sheet, { row, column }: At): string =>
  `${name}!${columnName(column)}${row + 1}`;

/** The text of a cell. */
export const cellAt = ({ rows }: Sheet, { row, column }: At): string => rows[row]?.[column]?.trim() ?? "";

/** A table as it stands in a file: rows of cells from the first one on, as text; empty cells are empty texts. */
export type Sheet = {
  /** The file as people name it, with the sheet where a workbook has several: `crew.xlsx, Tests`. */
  readonly name: string;
  readonly rows: readonly (readonly string[])[];
  /** Set where rows and columns of the file have changed places, so that cells are named as they stand there. */
  readonly isTurned?: true;
};

/** Where a cell stands, counted from 0. */
type At = { readonly row: number; readonly column: number };

const LETTERS = 26;

/** A column as spreadsheets call it. @example columnName(27) // => "AB" */
function columnName(column: number): string {
  const letter = String.fromCharCode(65 + (column % LETTERS));
  return column < LETTERS ? letter : `${columnName(Math.floor(column / LETTERS) - 1)}${letter}`;
}

/** A cell as spreadsheets call it. @example cellName({ name: "crew.xlsx", rows: [] }, { row: 16, column: 3 }) // => "crew.xlsx!D17" */
export const cellName = ({ name, isTurned }: Sheet, { row, column }: At): string =>
  isTurned ? `${name}!${columnName(row)}${column + 1}` : `${name}!${columnName(column)}${row + 1}`;

/** What a column is called in the file: a letter, or a number where it stands there as a row. */
export const columnIn = ({ isTurned }: Pick<Sheet, "isTurned">, column: number): string =>
  isTurned ? String(column + 1) : columnName(column);

/** What a row is called in the file. */
export const rowIn = ({ isTurned }: Pick<Sheet, "isTurned">, row: number): string =>
  isTurned ? columnName(row) : String(row + 1);

/** The text of a cell. */
export const cellAt = ({ rows }: Sheet, { row, column }: At): string => rows[row]?.[column]?.trim() ?? "";

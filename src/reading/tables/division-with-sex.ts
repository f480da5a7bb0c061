import { sexOfDivision } from "../../models/sex-words.ts";
import { putsOf, type RowCell } from "./row-cell.ts";

/**
 * A division of an age alone, `35-39`, with the sex that stands beside it: `women 35-39`. Alone it would be the same one for men and
 * women, and no workout could tell them apart.
 */
export function divisionWithSex(cells: readonly RowCell[]): readonly RowCell[] {
  const valueOf = (entry: string): unknown =>
    cells.flatMap(putsOf).find((put) => put.entry === entry && put.key === undefined)?.value;
  const [sex, division] = [valueOf("sex"), valueOf("division")];
  if (typeof sex !== "string" || typeof division !== "string") return cells;
  if (!/\d{2}/.test(division) || sexOfDivision(division) !== undefined) return cells;
  const value = `${sex === "female" ? "women" : "men"} ${division}`;
  return cells.map((cell) =>
    putsOf(cell).some(({ entry }) => entry === "division")
      ? {
          ...cell,
          reading: {
            kind: "taken",
            puts: [{ entry: "division", value }],
            told: `read as ${value}, with the sex beside it`,
          },
        }
      : cell,
  );
}

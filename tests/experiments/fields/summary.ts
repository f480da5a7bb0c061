import { quantileSorted } from "../../../src/numerics/quantile.ts";
import type { Cell } from "./cells.ts";

/** An error from which a plan counts as far off. */
const FAR = 0.15;

/** What comparisons come to: how many, the middle of the size of the error, how often it is far off, the mean error, the place in range. */
export type Summary = {
  readonly cells: number;
  readonly median: number;
  readonly far: number;
  readonly bias: number;
  readonly inside: number;
};

/** Sums up comparisons; of a bias the mean of the logarithms is told, so that twice as fast and twice as slow cancel. */
export function summaryOf(cells: readonly Cell[]): Summary {
  const sizes = cells.map(({ error }) => Math.abs(error)).sort((a, b) => a - b);
  const sum = cells.reduce((all, { error }) => all + Math.log(1 + error), 0);
  return {
    cells: cells.length,
    median: quantileSorted(sizes, 0.5),
    far: sizes.filter((size) => size > FAR).length,
    bias: Math.exp(sum / Math.max(1, cells.length)) - 1,
    inside: cells.filter(({ inside }) => inside).length,
  };
}

/** The comparisons by some property of theirs, in the order in which its values first come. */
export function groupedBy(
  cells: readonly Cell[],
  property: (cell: Cell) => string,
): ReadonlyMap<string, readonly Cell[]> {
  const groups = new Map<string, Cell[]>();
  for (const cell of cells) {
    const group = groups.get(property(cell)) ?? [];
    groups.set(property(cell), [...group, cell]);
  }
  return groups;
}

/** Length of what a field did, in classes of minutes. */
export function lengthOf({ seconds }: Cell): string {
  const minutes = seconds / 60;
  return minutes < 5
    ? "under 5 min"
    : minutes < 10
      ? "5 to 10 min"
      : minutes < 15
        ? "10 to 15 min"
        : "over 15 min";
}

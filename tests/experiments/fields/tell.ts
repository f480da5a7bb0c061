import { table } from "../pacing-problems.ts";
import type { Cell } from "./cells.ts";
import { summaryOf } from "./summary.ts";

/** A share in per cent, with its sign. */
export const percent = (share: number): string =>
  `${share < 0 ? "−" : "+"}${(100 * Math.abs(share)).toFixed(1)} %`;
const shareOf = (part: number, whole: number): string => `${part} of ${whole}`;

/** Prints what groups of comparisons come to. */
export function tell(title: string, groups: ReadonlyMap<string, readonly Cell[]>): void {
  const rows = [...groups].map(([name, cells]) => {
    const { cells: count, median, far, bias, inside } = summaryOf(cells);
    const size = `${(100 * median).toFixed(1)} %`;
    return [name, size, percent(bias), shareOf(far, count), shareOf(inside, count)];
  });
  console.log(`\n${table([[title, "median error", "bias", "over 15 %", "place in range"], ...rows])}`);
}

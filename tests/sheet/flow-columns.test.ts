import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { flowColumns } from "../../src/sheet/flow-columns.ts";
import type { KeyPanel } from "../../src/sheet/key-panel.ts";
import type { Measured } from "../../src/sheet/sheet-node.ts";

const piece = (height: number): Measured => ({ height, place: () => ({ marks: [], nodes: [] }) });
const panel = (heading: number, ...rows: readonly number[]): KeyPanel => ({
  width: 10,
  heading: piece(heading),
  rows: rows.map(piece),
});
const heights = (panels: readonly KeyPanel[], columns: number, most: number): readonly number[] | undefined =>
  flowColumns(panels, columns, most)?.map((column) => column.height);

describe("rows flowing down columns", () => {
  it("repeat the heading where they go on", () => {
    // Six rows of 10 under a heading of 4: 4 + 30 twice.
    expect(heights([panel(4, 10, 10, 10, 10, 10, 10)], 2, 100)).toEqual([34, 34]);
  });

  it("put panels one under another with a gap of 1.6", () => {
    expect(heights([panel(4, 10), panel(4, 10)], 1, 100)).toEqual([29.6]);
  });

  it("fit nowhere when a row is higher than the column, or the columns are too few", () => {
    expect(heights([panel(4, 50)], 3, 40)).toBeUndefined();
    expect(heights([panel(4, 20, 20, 20)], 1, 40)).toBeUndefined();
  });

  it("are as low as any way of breaking them", () => {
    const rows = fc.array(fc.integer({ min: 5, max: 20 }), { minLength: 1, maxLength: 4 });
    const panels = fc.array(rows, { minLength: 1, maxLength: 2 });
    fc.assert(
      fc.property(panels, fc.integer({ min: 1, max: 3 }), (list, columns) => {
        const made = list.map((each) => panel(3, ...each));
        const lowest = Math.max(...(heights(made, columns, 1000) ?? []));
        expect(lowest).toBeCloseTo(lowestByTrying(list, columns), 9);
      }),
      { numRuns: 100 },
    );
  });
});

/** The stupid way: every set of breaks between rows, up to so many columns. */
function lowestByTrying(panels: readonly (readonly number[])[], columns: number): number {
  const rows = panels.flatMap((each, index) => each.map((height) => ({ height, index })));
  let best = Number.POSITIVE_INFINITY;
  for (let mask = 0; mask < 2 ** (rows.length - 1); mask += 1) {
    const groups: (typeof rows)[] = [[]];
    for (const [at, row] of rows.entries()) {
      groups.at(-1)?.push(row);
      if (Math.floor(mask / 2 ** at) % 2 === 1 && at < rows.length - 1) groups.push([]);
    }
    if (groups.length > columns) continue;
    const high = groups.map((group) => {
      const headings = new Set(group.map((row) => row.index)).size;
      return group.reduce((sum, row) => sum + row.height, 0) + headings * 3 + (headings - 1) * 1.6;
    });
    best = Math.min(best, Math.max(...high));
  }
  return best;
}

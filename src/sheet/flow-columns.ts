import type { KeyPanel } from "./key-panel.ts";
import { together, type Measured, type Placed, type SheetNode } from "./sheet-node.ts";

type Piece = { readonly measured: Measured; readonly panel: number };
type Column = { readonly pieces: readonly Piece[]; readonly height: number };

/** Gap between two panels in one column, millimetres. */
const PANEL_GAP = 1.6;

/**
 * Lets rows of panels flow down columns, heading first and repeated where a panel goes on in the next column, so that
 * the highest column is as low as it can be. Rows are never split. Gives nothing when the rows cannot stand in so many
 * columns of a height.
 *
 * The lowest height is sought among those at which some column could end.
 */
export function flowColumns(
  panels: readonly KeyPanel[],
  columns: number,
  most: number,
): readonly Column[] | undefined {
  const heights = new Set<number>();
  for (const [from, panel] of panels.entries()) {
    for (let row = 0; row < panel.rows.length; row += 1) {
      for (const height of heightsFrom(panels, from, row)) if (height <= most) heights.add(height);
    }
  }
  const ascending = [...heights].sort((a, b) => a - b);
  // What fits at a height fits at every greater one, so the lowest is found by halving.
  let [low, high] = [0, ascending.length - 1];
  let best = fill(panels, columns, ascending[high] ?? 0);
  if (!best) return undefined;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    const flowed = fill(panels, columns, ascending[middle] ?? 0);
    if (flowed) [best, high] = [flowed, middle];
    else low = middle + 1;
  }
  return best;
}

/** Heights of a column that starts with a given row, after each further row. */
function heightsFrom(panels: readonly KeyPanel[], from: number, firstRow: number): readonly number[] {
  const heights: number[] = [];
  let height = 0;
  for (const [index, panel] of panels.slice(from).entries()) {
    height += (index > 0 ? PANEL_GAP : 0) + panel.heading.height;
    for (const row of panel.rows.slice(index === 0 ? firstRow : 0)) {
      height += row.height;
      heights.push(height);
    }
  }
  return heights;
}

function fill(panels: readonly KeyPanel[], columns: number, most: number): readonly Column[] | undefined {
  const done: Column[] = [];
  let pieces: Piece[] = [];
  let height = 0;
  const next = (): void => {
    done.push({ pieces, height });
    pieces = [];
    height = 0;
  };
  for (const [panel, { heading, rows }] of panels.entries()) {
    let headed = false;
    for (const row of rows) {
      const opening = headed ? 0 : heading.height + (pieces.length > 0 ? PANEL_GAP : 0);
      if (height + opening + row.height > most + 1e-9) {
        if (pieces.length === 0) return undefined;
        next();
        headed = false;
      }
      if (!headed) {
        height += heading.height + (pieces.length > 0 ? PANEL_GAP : 0);
        pieces.push({ measured: heading, panel });
        headed = true;
      }
      pieces.push({ measured: row, panel });
      height += row.height;
    }
  }
  if (pieces.length > 0) next();
  return done.length <= columns ? done : undefined;
}

/** Puts flowed columns side by side. Each panel of a column becomes a table. */
export function placeColumns(
  columns: readonly Column[],
  x: number,
  y: number,
  columnWidth: number,
  gap: number,
): Placed {
  return together(columns.map((column, index) => placeColumn(column, x + index * (columnWidth + gap), y)));
}

function placeColumn(column: Column, x: number, y: number): Placed {
  let top = y;
  let panel: number | undefined;
  const tables: { marks: Placed["marks"][number][]; rows: SheetNode[] }[] = [];
  for (const piece of column.pieces) {
    if (piece.panel !== panel) {
      if (panel !== undefined) top += PANEL_GAP;
      panel = piece.panel;
      tables.push({ marks: [], rows: [] });
    }
    const placed = piece.measured.place(x, top);
    tables.at(-1)?.marks.push(...placed.marks);
    tables.at(-1)?.rows.push(...placed.nodes);
    top += piece.measured.height;
  }
  return {
    marks: tables.flatMap((table) => table.marks),
    nodes: tables.map((table) => ({ tag: "Table", children: table.rows })),
  };
}

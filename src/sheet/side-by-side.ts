import type { KeyPanel } from "./key-panel.ts";
import { together, type Measured } from "./sheet-node.ts";

/** Two panels beside each other as one, row by row; the second begins `gap` millimetres right of the first. */
export function sideBySide(left: KeyPanel, right: KeyPanel, gap: number): KeyPanel {
  const offset = left.width + gap;
  const rows = Array.from({ length: Math.max(left.rows.length, right.rows.length) }, (_, index) =>
    pair(left.rows[index], right.rows[index], offset),
  );
  return { width: offset + right.width, heading: pair(left.heading, right.heading, offset), rows };
}

const pair = (one: Measured | undefined, other: Measured | undefined, offset: number): Measured => ({
  height: Math.max(one?.height ?? 0, other?.height ?? 0),
  place: (x, y) =>
    together([...(one ? [one.place(x, y)] : []), ...(other ? [other.place(x + offset, y)] : [])]),
});

import { boxOutline, textAt } from "../charts/shapes.ts";
import type { Shape } from "../charts/drawing.ts";
import { TEXT_CAPITALS } from "./figure-size.ts";
import { PIECE_GAP, pitchOf } from "./key-panel.ts";
import type { Measured, SheetNode } from "./sheet-node.ts";
import type { Setter } from "./type-setting.ts";

/** One cell of a key row: a key figure, or a small word beside it. `width` is that of its column. */
export type KeyCell = {
  readonly text: string;
  readonly width: number;
  readonly unit?: string;
  /** Capitals of words that are no key figure, millimetres. */
  readonly small?: number;
};

/** What stands in a tick box; a thick box marks a moment of its own, such as a tie-break. */
type BoxLabel = { readonly text: string; readonly thick?: boolean };

const THIN_LINE = 0.35;
const THICK_LINE = 1.1;

/** Height of the capitals inside a tick box, as a share of the box. */
const BOX_TEXT = 0.46;

/** Width of the tick box for labels, at least square. */
export const boxWidth = (labels: readonly string[], capitals: number, setter: Setter): number =>
  Math.max(capitals, ...labels.map((label) => labelWidth(label, capitals, setter) + capitals * 0.5));

const labelSize = (capitals: number, setter: Setter): number =>
  setter.sizeFor(Math.max(TEXT_CAPITALS, capitals * BOX_TEXT), true);

const labelWidth = (label: string, capitals: number, setter: Setter): number =>
  setter.measure(label, labelSize(capitals, setter), true);

/** Width of a key figure with its small unit. */
export function keyWidth(text: string, unit: string | undefined, capitals: number, setter: Setter): number {
  const figure = setter.measure(text, setter.sizeFor(capitals, true), true);
  return unit === undefined
    ? figure
    : figure + capitals * UNIT_GAP + setter.measure(unit, unitSize(capitals, setter), false);
}

/** Between a figure and its unit, as a share of the capitals. */
const UNIT_GAP = 0.16;
const unitSize = (capitals: number, setter: Setter): number =>
  setter.sizeFor(Math.max(TEXT_CAPITALS, capitals * 0.4), false);

/** Width of small words beside key figures. */
export const smallWidth = (text: string, capitals: number, setter: Setter): number =>
  setter.measure(text, setter.sizeFor(capitals, true), true);

/**
 * A row of key figures: a box to tick with the row's label inside, then the cells. The box and each cell become a cell
 * of a table row, in reading order.
 */
export function keyRow(
  { text: label, thick }: BoxLabel,
  box: number,
  cells: readonly KeyCell[],
  capitals: number,
  setter: Setter,
): Measured {
  const gap = capitals * PIECE_GAP;
  return {
    height: capitals * pitchOf(cells.map((cell) => (cell.small === undefined ? cell.text : "")).join("")),
    place: (x, y) => {
      const boxed = labelInBox(label, { x: x + box / 2, y }, capitals, setter);
      let left = x + box + gap;
      const nodes = cells.map((cell): SheetNode => {
        const shapes = cellShapes(cell, left, y, capitals, setter);
        left += cell.width + gap;
        return { tag: "TD", shapes };
      });
      const line = thick ? THICK_LINE : THIN_LINE;
      const outline = boxOutline(
        { x: x + line / 2, y: y + line / 2, width: box - line, height: capitals - line },
        "ink",
        line,
      );
      return {
        marks: [outline],
        nodes: [{ tag: "TR", children: [{ tag: "TH", scope: "Row", shapes: [boxed] }, ...nodes] }],
      };
    },
  };
}

function labelInBox(
  label: string,
  { x, y }: { readonly x: number; readonly y: number },
  capitals: number,
  setter: Setter,
): Shape {
  const size = labelSize(capitals, setter);
  const lift = (capitals - Math.max(TEXT_CAPITALS, capitals * BOX_TEXT)) / 2;
  return textAt(x, y + capitals - lift, label, size, { anchor: "middle", strong: true });
}

function cellShapes(cell: KeyCell, x: number, y: number, capitals: number, setter: Setter): readonly Shape[] {
  if (cell.text === "") return [];
  if (cell.small !== undefined) {
    const lift = (capitals - cell.small) / 2;
    return [textAt(x, y + capitals - lift, cell.text, setter.sizeFor(cell.small, true), { strong: true })];
  }
  const size = setter.sizeFor(capitals, true);
  if (cell.unit === undefined) return [textAt(x, y + capitals, cell.text, size, { strong: true })];
  // The space keeps figure and unit apart where the text is copied or read aloud.
  const figure = textAt(x, y + capitals, `${cell.text} `, size, { strong: true });
  const after = x + setter.measure(cell.text, size, true) + capitals * UNIT_GAP;
  return [figure, textAt(after, y + capitals, cell.unit, unitSize(capitals, setter))];
}

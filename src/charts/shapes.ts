import type { Anchor, Line, Path, Rect, Text, Tone } from "./drawing.ts";
import { pathThrough } from "./drawing.ts";

/** How a text is set; by default ink, regular, from its start. */
type TextStyle = { readonly anchor?: Anchor; readonly tone?: Tone; readonly strong?: boolean };

/** A text on its baseline. */
export const textAt = (x: number, y: number, text: string, size: number, style: TextStyle = {}): Text => ({
  kind: "text",
  x,
  y,
  text,
  size,
  anchor: style.anchor ?? "start",
  tone: style.tone ?? "ink",
  strong: style.strong ?? false,
});

/** A straight line from one point to another. */
export const lineBetween = (
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
  stroke: Tone,
  strokeWidth: number,
  dashed = false,
): Line => ({ kind: "line", x1, y1, x2, y2, stroke, strokeWidth, dashed });

/** A filled square around a point. */
export const squareAround = (x: number, y: number, side: number, fill: Tone): Rect => ({
  kind: "rect",
  x: x - side / 2,
  y: y - side / 2,
  width: side,
  height: side,
  fill,
});

/** The outline of a box. */
export const boxOutline = (
  { x, y, width, height }: Pick<Rect, "x" | "y" | "width" | "height">,
  stroke: Tone,
  strokeWidth: number,
): Path => ({
  kind: "path",
  d: pathThrough(
    [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ],
    true,
  ),
  stroke,
  strokeWidth,
});

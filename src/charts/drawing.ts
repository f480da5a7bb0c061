/**
 * A picture as plain data: shapes in units of the caller's choice, drawn by page, sheet and card alike. The origin is
 * the upper left corner, y grows downwards, and text stands on its baseline.
 */
export type Drawing = {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
  /** The same content in words, for those who cannot see it. */
  readonly textAlternative: string;
};

/** What a colour means; each renderer has its own value for it. Nothing is told by tone alone. */
export type Tone = "ink" | "accent" | "quiet" | "paper" | PlateTone;

/** Colours of plates by the rules of the weightlifting federation; a number always stands beside them. */
export type PlateTone = "plate-red" | "plate-blue" | "plate-yellow" | "plate-green" | "plate-white";

export type Rect = {
  readonly kind: "rect";
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly fill: Tone;
};

export type Line = {
  readonly kind: "line";
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly stroke: Tone;
  readonly strokeWidth: number;
  readonly dashed?: boolean;
};

/** An outline in the path syntax of SVG, absolute commands M, L and Z only. */
export type Path = {
  readonly kind: "path";
  readonly d: string;
  readonly fill?: Tone;
  readonly stroke?: Tone;
  readonly strokeWidth?: number;
};

export type Anchor = "start" | "middle" | "end";

export type Text = {
  readonly kind: "text";
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly size: number;
  readonly anchor: Anchor;
  readonly tone: Tone;
  readonly strong: boolean;
};

export type Shape = Rect | Line | Path | Text;

/** Width of a text at a font size, in the unit of that size. The caller brings the font. */
export type MeasureText = (text: string, size: number, strong: boolean) => number;

/** How large to draw: the width to fill and the font size of labels, in one unit; and the font's measure. */
export type DrawingSize = {
  readonly width: number;
  readonly textSize: number;
  readonly measure: MeasureText;
};

const tidy = (value: number): string => String(Math.round(value * 1000) / 1000);

/** A path through points; closed when it is to be filled. @example pathThrough([[0, 0], [1.5, 2]], true) // => "M0 0L1.5 2Z" */
export const pathThrough = (points: readonly (readonly [number, number])[], closed: boolean): string =>
  points.map(([x, y], index) => `${index === 0 ? "M" : "L"}${tidy(x)} ${tidy(y)}`).join("") +
  (closed ? "Z" : "");

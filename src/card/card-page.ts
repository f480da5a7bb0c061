import type { Anchor, Shape, Tone } from "../charts/drawing.ts";

/** Sizes of a card, pixels: one for feeds, one for previews of links. */
export const CARD_SIZES = {
  portrait: { width: 1080, height: 1350 },
  landscape: { width: 1200, height: 630 },
} as const;
export type CardSize = keyof typeof CARD_SIZES;

/** A text set in a box of so many lines at most, broken already where it has several. Pixels. */
export type TextBox = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly text: string;
  readonly size: number;
  readonly lines: number;
  readonly align: Anchor;
  readonly tone: Tone;
  readonly strong: boolean;
};

/** A finished card: shapes below, texts above. */
export type CardPage = {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
  readonly texts: readonly TextBox[];
};

/** Height of a line as a multiple of the font size. */
export const LINE_HEIGHT = 1.1;

/** Where the baseline lies below the top of a line of height 1, as a share of the font size, for this typeface. */
export const BASELINE = 0.835;

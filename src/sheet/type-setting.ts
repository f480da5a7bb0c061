import type { Font } from "fontkit";
import type { MeasureText } from "../charts/drawing.ts";
import { shapeOnce } from "./shape-once.ts";

/**
 * The two fonts of a sheet, already parsed, and the widths measured with them so far, in units of the font. Make it once
 * and pass it to every sheet: measuring is most of the work, and sheets share most of their words.
 */
export type SheetFonts = {
  readonly regular: Font;
  readonly strong: Font;
  readonly widths: Map<string, number>;
};

/** Fonts for sheets, with nothing measured yet. */
export const sheetFontsFrom = (regular: Font, strong: Font): SheetFonts => ({
  regular: shapeOnce(regular),
  strong: shapeOnce(strong),
  widths: new Map(),
});

/** Widths remembered before all are forgotten, so that memory stays bounded over any number of sheets. */
const MOST_REMEMBERED = 20_000;

/** How text is measured and broken; sizes and widths in millimetres. */
export type Setter = {
  readonly measure: MeasureText;
  /** Font size at which capitals are this high. */
  readonly sizeFor: (capitals: number, strong: boolean) => number;
  readonly hasGlyph: (codePoint: number, strong: boolean) => boolean;
};

/** A setter for these fonts. Figures are set to one width. */
export function setterOf(fonts: SheetFonts): Setter {
  const fontOf = (strong: boolean): Font => (strong ? fonts.strong : fonts.regular);
  return {
    measure: (text, size, strong) => {
      const key = `${strong ? "s" : "r"}${text}`;
      const known = fonts.widths.get(key) ?? widthIn(fontOf(strong), text);
      if (fonts.widths.size >= MOST_REMEMBERED) fonts.widths.clear();
      fonts.widths.set(key, known);
      return known * size;
    },
    sizeFor: (capitals, strong) => (capitals * fontOf(strong).unitsPerEm) / fontOf(strong).capHeight,
    hasGlyph: (codePoint, strong) => fontOf(strong).hasGlyphForCodePoint(codePoint),
  };
}

/** Width of a text at size 1. */
const widthIn = (font: Font, text: string): number =>
  font.layout(text.normalize("NFC"), ["tnum"]).advanceWidth / font.unitsPerEm;

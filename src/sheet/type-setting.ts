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
  readonly widths: Readonly<Record<"regular" | "strong", Map<string, number>>>;
  /** Size at which capitals are as high as 1; a font reads its tables again whenever it is asked. */
  readonly sizes: Readonly<Record<"regular" | "strong", number>>;
};

/** Fonts for sheets, with nothing measured yet. */
export const sheetFontsFrom = (regular: Font, strong: Font): SheetFonts => ({
  regular: shapeOnce(regular),
  strong: shapeOnce(strong),
  widths: { regular: new Map(), strong: new Map() },
  sizes: { regular: regular.unitsPerEm / regular.capHeight, strong: strong.unitsPerEm / strong.capHeight },
});

/** Widths remembered before all are forgotten, so that memory stays bounded over any number of sheets. */
const MOST_REMEMBERED = 10_000;

/** How text is measured and broken; sizes and widths in millimetres. */
export type Setter = {
  readonly measure: MeasureText;
  /** Font size at which capitals are this high. */
  readonly sizeFor: (capitals: number, strong: boolean) => number;
  readonly hasGlyph: (codePoint: number, strong: boolean) => boolean;
};

/** A setter for these fonts. Figures are set to one width. */
export function setterOf(fonts: SheetFonts): Setter {
  const { widths, sizes } = fonts;
  const fontOf = (strong: boolean): Font => (strong ? fonts.strong : fonts.regular);
  return {
    measure: (text, size, strong) => {
      const known = strong ? widths.strong : widths.regular;
      let width = known.get(text);
      if (width === undefined) {
        width = widthIn(fontOf(strong), text);
        if (known.size >= MOST_REMEMBERED) known.clear();
        known.set(text, width);
      }
      return width * size;
    },
    sizeFor: (capitals, strong) => capitals * (strong ? sizes.strong : sizes.regular),
    hasGlyph: (codePoint, strong) => fontOf(strong).hasGlyphForCodePoint(codePoint),
  };
}

/** Width of a text at size 1. */
const widthIn = (font: Font, text: string): number =>
  font.layout(text.normalize("NFC"), ["tnum"]).advanceWidth / font.unitsPerEm;

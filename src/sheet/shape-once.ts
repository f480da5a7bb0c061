import type { Font, GlyphRun } from "fontkit";

type Position = GlyphRun["positions"][number];
type Shaped = { readonly glyphs: GlyphRun["glyphs"]; readonly positions: readonly Position[] };

/** Texts remembered before all are forgotten, so that memory stays bounded over any number of sheets. */
const MOST_REMEMBERED = 4000;

/**
 * A font that shapes every text only once. Sheets share most of their words, and the PDF writer shapes each text several
 * times over; it also rescales the positions it is given in place, so each call gets its own.
 */
export function shapeOnce(font: Font): Font {
  const remembered = new Map<string, Shaped>();
  const shape = (text: string, features: string[] | undefined): Shaped => {
    const { glyphs, positions } = font.layout(text, features);
    const shaped = { glyphs, positions };
    if (remembered.size >= MOST_REMEMBERED) remembered.clear();
    remembered.set(keyOf(text, features), shaped);
    return shaped;
  };
  const layout = (text: string, features?: string[]): unknown => {
    const { glyphs, positions } = remembered.get(keyOf(text, features)) ?? shape(text, features);
    const own = positions.map((position) => ({ ...position }));
    return {
      glyphs,
      positions: own,
      get advanceWidth(): number {
        return own.reduce((sum, { xAdvance }) => sum + xAdvance, 0);
      },
    };
  };
  return Object.create(font, { layout: { value: layout } }) as Font;
}

const keyOf = (text: string, features: readonly string[] | undefined): string =>
  `${features?.join(" ") ?? ""}|${text}`;

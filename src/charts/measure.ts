import type { MeasureText } from "./drawing.ts";

/** Shares of the font size that letters of a narrow sans serif are wide, rounded up. */
const NARROW = 0.3;
const USUAL = 0.52;
const WIDE = 0.8;

/**
 * Guesses the width of a text where no font is at hand (pages scale their drawings anyway): a little too wide rather
 * than too narrow, so that labels never collide.
 *
 * @example approximateWidth("1:1", 10, false) // => 13.4
 */
export const approximateWidth: MeasureText = (text, size, strong) =>
  Math.round(
    Array.from(text).reduce((sum, letter) => sum + widthOf(letter), 0) * size * (strong ? 1.05 : 1) * 1000,
  ) / 1000;

function widthOf(letter: string): number {
  if (" .,:;'|ijlI\u00a0".includes(letter)) return NARROW;
  return "MWmw@—→".includes(letter) ? WIDE : USUAL;
}

import type { MeasureText } from "./drawing.ts";

/** Shares of the font size that letters of our typeface are wide, in classes, rounded up; figures are all of one width. */
const CLASSES: readonly (readonly [share: number, letters: string])[] = [
  [0.26, " \u00a0.,:;'!·ij"],
  [0.36, "lIJ()ft|r"],
  [0.46, "-zcsF?vxyL+×"],
  [0.51, "/gkETZ–aeSX0123456789"],
  [0.56, "CVYbdhnopquPABKR"],
  [0.79, "MWm—%"],
  [0.95, "→@ШЩЮЖшщюж"],
];
const OTHERS = 0.67;
/** The strong letters are wider by this factor. */
const STRONG = 1.05;

const SHARES = new Map(
  CLASSES.flatMap(([share, letters]) => Array.from(letters, (letter) => [letter, share] as const)),
);

/**
 * Guesses the width of a text where no font is at hand (pages scale their drawings anyway): a little too wide rather
 * than too narrow, so that labels never collide.
 *
 * @example approximateWidth("1:1", 10, false) // => 12.8
 */
export const approximateWidth: MeasureText = (text, size, strong) =>
  Math.round(
    Array.from(text).reduce((sum, letter) => sum + (SHARES.get(letter) ?? OTHERS), 0) *
      size *
      (strong ? STRONG : 1) *
      1000,
  ) / 1000;

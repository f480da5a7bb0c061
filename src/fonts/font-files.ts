/**
 * The one typeface of page, sheet and card: Fira Sans Condensed in two weights (SIL Open Font License 1.1, `OFL.txt`
 * beside this file). Narrow, with open shapes, distinct 1 I l and figures of one width, so that large figures fit.
 */
export const FONT_FAMILY = "Fira Sans Condensed";

/** The two weights: running text, and everything that must be found at a glance. */
export const FONT_WEIGHTS = [400, 600] as const;
export type FontWeight = (typeof FONT_WEIGHTS)[number];

/** Name of the full font file in this folder, for PDF and image: all of Latin, Greek, Cyrillic and Vietnamese. */
export const fullFontFile = (weight: FontWeight): string => `fira-sans-condensed-${weight}.ttf`;

/** A cut of the font for the web: a browser loads it only when a letter of its ranges is on the page. */
type WebSubset = { readonly name: string; readonly ranges: string };

/** The web cuts, in the order in which a style sheet declares them. `ranges` is the text of `unicode-range`. */
export const WEB_SUBSETS: readonly WebSubset[] = [
  {
    name: "latin",
    ranges:
      "U+0020-007E,U+00A0-017F,U+0192,U+0218-021B,U+02BC,U+02C6-02DD,U+2010-2027,U+202F-203A,U+20AC,U+2190-2193,U+2212,U+2248,U+2260,U+2264-2265",
  },
  { name: "vietnamese", ranges: "U+01A0-01A1,U+01AF-01B0,U+0300-0303,U+0309,U+0323,U+1EA0-1EF9,U+20AB" },
  { name: "greek", ranges: "U+0370-03FF" },
  { name: "cyrillic", ranges: "U+0400-045F,U+0490-0491,U+04B0-04B1,U+2116" },
];

/** Name of the WOFF2 file of a cut in this folder. */
export const webFontFile = (weight: FontWeight, subset: WebSubset): string =>
  `fira-sans-condensed-${weight}-${subset.name}.woff2`;

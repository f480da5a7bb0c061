import type { PlateTone } from "./drawing.ts";

/** Colours of discs as printed and drawn; the page has the same in its style sheet. */
export const PLATE_COLOURS: Readonly<Record<PlateTone, string>> = {
  "plate-red": "#c8323a",
  "plate-blue": "#2a62b8",
  "plate-yellow": "#f0c22e",
  "plate-green": "#2f8f4e",
  "plate-white": "#ffffff",
};

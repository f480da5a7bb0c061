import type { DrawingSize } from "../charts/drawing.ts";
import { approximateWidth } from "../charts/measure.ts";

/** Drawings are made twice and scaled to the page: once for a phone held upright, once for anything wider. */
export const NARROW: DrawingSize = { width: 330, textSize: 13.5, measure: approximateWidth };
export const WIDE: DrawingSize = { width: 1040, textSize: 16, measure: approximateWidth };
/** For drawings beside the name of a section. */
export const BESIDE: DrawingSize = { width: 790, textSize: 16, measure: approximateWidth };

/** Heights of the tape's strip, in the same units. */
export const NARROW_STRIP = 58;
export const WIDE_STRIP = 96;

/** One end of a loaded bar; two stand side by side on a phone. */
export const BAR: DrawingSize = { width: 160, textSize: 13.5, measure: approximateWidth };
export const BAR_HEIGHT = 92;

import type { MassUnit } from "../models/quantity.ts";
import type { Measured } from "./sheet-node.ts";

/**
 * A list of rows needed mid-workout under a heading of its own. Rows may go on in the next column, where the heading is
 * repeated. `width` is what a row needs. Millimetres.
 */
export type KeyPanel = {
  readonly width: number;
  readonly heading: Measured;
  readonly rows: readonly Measured[];
};

/** How the key figures are set: the height of their capitals and the width of a column, millimetres; the reader's unit of loads. */
export type KeySetting = {
  readonly capitals: number;
  readonly columnWidth: number;
  readonly units: MassUnit;
  /** Capitals of column heads at most, millimetres. */
  readonly heads: number;
  /** Whether what to do after a miss stands beside the clock, as large as the load; else under it. */
  readonly wide: boolean;
};

/** Distance of rows of key figures as a multiple of their capitals. */
const ROW_PITCH = 1.26;
/** The same where letters in them reach below the line. */
export const WORD_PITCH = 1.5;

/** Distance of a row to the next for what it says, as a multiple of its capitals. */
export const pitchOf = (text: string): number => (/[gjpqyQ,;()/]/.test(text) ? WORD_PITCH : ROW_PITCH);

/** Gaps between the pieces of a row, as a multiple of the capitals. */
export const PIECE_GAP = 0.42;

import { NO_BREAK_SPACE } from "./number.ts";

/** Forbids a line to end where it stands; takes no room. */
const WORD_JOINER = "\u2060";

const UNITS = "kg|lb|cm|mm|m|km|ft|in|cal|reps?|s|min";

/**
 * A line that ends nowhere between a number and its unit, or between the pieces of a load.
 *
 * @example keepUnits("at 2 x 15 kg") // => "at 2\u00a0x\u00a015\u00a0kg"
 */
export const keepUnits = (text: string): string =>
  text
    .replace(/(\d) ([x×]) (?=\d)/g, `$1${NO_BREAK_SPACE}$2${NO_BREAK_SPACE}`)
    .replace(new RegExp(`(\\d) (?=(?:${UNITS})\\b)`, "g"), `$1${NO_BREAK_SPACE}`);

/**
 * A line of a page that ends nowhere there, nor within sets.
 *
 * @example keepTogether("at 15 kg, 13-13") // => "at 15\u00a0kg, 13-\u206013"
 */
export const keepTogether = (text: string): string =>
  keepUnits(text).replace(/(\d)-(?=\d)/g, `$1-${WORD_JOINER}`);

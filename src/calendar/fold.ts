/** Longest line of iCalendar, in bytes of UTF-8 without its end (RFC 5545, section 3.1). */
const LONGEST_LINE = 75;

/**
 * A line of iCalendar folded as RFC 5545 asks: every further line begins with a space, none is longer than 75 bytes, and
 * no letter is cut in two.
 */
export function foldLine(line: string): string {
  const pieces: string[] = [];
  let piece = "";
  let length = 0;
  for (const letter of line) {
    const bytes = new TextEncoder().encode(letter).length;
    // The space that begins a further line counts.
    const room = pieces.length === 0 ? LONGEST_LINE : LONGEST_LINE - 1;
    if (length + bytes > room) {
      pieces.push(piece);
      piece = "";
      length = 0;
    }
    piece += letter;
    length += bytes;
  }
  return [...pieces, piece].join("\r\n ");
}

/** A text as a value of iCalendar: backslash, semicolon, comma and line ends are written with a backslash (section 3.3.11). */
export const escapeText = (text: string): string =>
  text
    .replace(/[\\;,]/g, "\\$&")
    .replace(/\r\n|\r|\n/g, "\\n")
    // Other control signs may not stand in a calendar at all.
    .replace(/\p{Cc}/gu, " ");

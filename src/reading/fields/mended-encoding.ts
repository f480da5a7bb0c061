/** What letters beyond ASCII become where UTF-8 is read as the encoding of older spreadsheets. */
const BROKEN = /[ÂÃÄÅÆÐÑØÙâ][\u0080-\u00BF€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ]/;
/** Where that encoding (Windows-1252) differs from the first 256 code points. */
const OTHERS = new Map(
  Array.from("€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008DŽ\u008F\u0090‘’“”•–—˜™š›œ\u009DžŸ", (sign, index) => [
    sign,
    0x80 + index,
  ]),
);

/**
 * The text that was meant where UTF-8 was read as another encoding; nothing where the text is sound.
 *
 * @example mendedEncoding("JosÃ©") // => "José"
 */
export function mendedEncoding(text: string): string | undefined {
  if (!BROKEN.test(text)) return undefined;
  const bytes = Array.from(text, (sign) => OTHERS.get(sign) ?? sign.codePointAt(0) ?? 0);
  return bytes.every((byte) => byte < 256) ? fromUtf8(bytes) : undefined;
}

/** The text of bytes in UTF-8; nothing where they are none. */
function fromUtf8(bytes: readonly number[]): string | undefined {
  try {
    return decodeURIComponent(bytes.map((byte) => `%${byte.toString(16).padStart(2, "0")}`).join(""));
  } catch {
    return undefined;
  }
}

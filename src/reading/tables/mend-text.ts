/** A text as it should be: right as it is, saved in a wrong encoding and mended, or with letters lost for good. */
type Mended =
  | { readonly kind: "right" }
  | { readonly kind: "garbled"; readonly text: string }
  | { readonly kind: "lost" };

/** Letters of Windows-1252 between 0x80 and 0x9f, which Unicode has elsewhere. */
const WINDOWS: Readonly<Record<string, number>> = {
  "€": 0x80,
  "‚": 0x82,
  ƒ: 0x83,
  "„": 0x84,
  "…": 0x85,
  "†": 0x86,
  "‡": 0x87,
  ˆ: 0x88,
  "‰": 0x89,
  Š: 0x8a,
  "‹": 0x8b,
  Œ: 0x8c,
  Ž: 0x8e,
  "‘": 0x91,
  "’": 0x92,
  "“": 0x93,
  "”": 0x94,
  "•": 0x95,
  "–": 0x96,
  "—": 0x97,
  "˜": 0x98,
  "™": 0x99,
  š: 0x9a,
  "›": 0x9b,
  œ: 0x9c,
  ž: 0x9e,
  Ÿ: 0x9f,
};

/**
 * Looks for the traces of a wrong encoding. Text in UTF-8 that was read as Windows-1252 turns back into text when its
 * letters are taken for bytes again (`ZoÃ«`, `Åukasz`); a replacement character tells that a letter is gone.
 *
 * @example mendText("ZoÃ«") // => { kind: "garbled", text: "Zoë" }
 */
export function mendText(text: string): Mended {
  if (text.includes("\uFFFD")) return { kind: "lost" };
  if (!/[ÃÂÄÅâÐÑ][\u0080-\u00bf€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ]/u.test(text)) return { kind: "right" };
  const bytes = Array.from(text, (letter) => WINDOWS[letter] ?? letter.codePointAt(0) ?? 0);
  if (bytes.some((byte) => byte > 0xff)) return { kind: "right" };
  const mended = fromUtf8(bytes);
  return mended === undefined ? { kind: "right" } : { kind: "garbled", text: mended };
}

/** Bytes as UTF-8 (RFC 3629), up to three bytes a letter; nothing where they are not. */
function fromUtf8(bytes: readonly number[]): string | undefined {
  let text = "";
  for (let at = 0; at < bytes.length;) {
    const first = bytes[at] ?? 0;
    const length =
      first < 0x80 ? 1 : first >= 0xc2 && first < 0xe0 ? 2 : first >= 0xe0 && first < 0xf0 ? 3 : 0;
    const rest = bytes.slice(at + 1, at + length);
    if (length === 0 || rest.length < length - 1 || rest.some((byte) => byte < 0x80 || byte > 0xbf))
      return undefined;
    const head = length === 1 ? first : first & (length === 2 ? 0x1f : 0x0f);
    text += String.fromCodePoint(rest.reduce((code, byte) => code * 64 + (byte & 0x3f), head));
    at += length;
  }
  return text;
}

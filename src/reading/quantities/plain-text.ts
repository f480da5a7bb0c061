const QUOTES: readonly (readonly [RegExp, string])[] = [
  [/[’‘‛′ʼʹ´`＇]/g, "'"],
  [/[”“„‟″ʺ＂]/g, '"'],
  [/''/g, '"'],
];

/** Fractions as decimals behind a number (`7½` is 7.5) or alone. */
const FRACTIONS: Readonly<Record<string, string>> = {
  "¼": ".25",
  "½": ".5",
  "¾": ".75",
  "⅛": ".125",
  "⅜": ".375",
  "⅝": ".625",
  "⅞": ".875",
};

/** Marks that steer the direction of text or have no width, and the byte order mark. */
const INVISIBLE = /[\u200B-\u200F\u202A-\u202E\u2060\u2066-\u2069\uFEFF\u00AD]/g;

const DASHES = /[‐‑‒–—―−﹣－]/g;

/** Digits of other scripts, by the code of their zero. */
const ZEROS = [0x0660, 0x06f0, 0x0966, 0x09e6, 0x0e50] as const;

/**
 * A quantity as written, in plain signs: straight quotes and hyphens, one kind of space, western digits, full-width
 * forms narrowed, invisible marks removed. Two single quotes are a double one.
 *
 * @example plainText("5’ 7½”") // => "5' 7.5\""
 */
export function plainText(text: string): string {
  let plain = text.replace(INVISIBLE, "").replace(DASHES, "-");
  for (const [quotes, straight] of QUOTES) plain = plain.replace(quotes, straight);
  plain = plain.replace(/\s*([¼½¾⅛⅜⅝⅞])/g, (_all, sign: string, at: number) => {
    const decimal = FRACTIONS[sign] ?? "";
    return /\d/.test(plain[at - 1] ?? "") ? decimal : ` 0${decimal}`;
  });
  plain = plain.normalize("NFKC").replace(/[٫]/g, ".").replace(/[٪]/g, "%");
  plain = plain.replace(/\p{Nd}/gu, (digit) => String(valueOfDigit(digit)));
  return plain.replace(/\s+/g, " ").trim();
}

function valueOfDigit(digit: string): number | string {
  const code = digit.codePointAt(0) ?? 0;
  const zero = ZEROS.find((start) => code >= start && code < start + 10);
  return zero === undefined ? digit : code - zero;
}

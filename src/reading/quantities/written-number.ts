/** A number as written: one value, one of two (`1,800` is 1800 here and 1.8 there), or none. */
type WrittenNumber =
  | { readonly kind: "one"; readonly value: number }
  | { readonly kind: "either"; readonly grouped: number; readonly decimal: number }
  | { readonly kind: "none" };

const NONE: WrittenNumber = { kind: "none" };

/** The pattern of anything that may be a number, to be put into a larger pattern. */
export const NUMBER = String.raw`[+-]?(?:\d[\d.,' ]*\d|\d|[.,]\d+)`;

/**
 * Reads a number in plain signs, with a decimal point or comma. A sign that stands once before exactly three digits
 * could group thousands or begin decimals: both values are given. Signs that stand more than once, or before another
 * sign, group; apostrophes and spaces always group.
 *
 * @example writtenNumber("102,5") // => { kind: "one", value: 102.5 }
 * @example writtenNumber("1,800") // => { kind: "either", grouped: 1800, decimal: 1.8 }
 */
export function writtenNumber(text: string): WrittenNumber {
  const match = /^([+-]?)(.*)$/.exec(text.trim());
  const sign = match?.[1] === "-" ? -1 : 1;
  const digits = match?.[2] ?? "";
  if (/^\d+$/.test(digits)) return one(sign, digits);
  if (/^\d*[.,]\d+$/.test(digits)) {
    const [whole = "", rest = ""] = digits.split(/[.,]/);
    if (rest.length !== 3 || !/^[1-9]\d{0,2}$/.test(whole)) return one(sign, `${whole || "0"}.${rest}`);
    return {
      kind: "either",
      grouped: sign * Number(whole + rest),
      decimal: sign * Number(`${whole}.${rest}`),
    };
  }
  const grouped = /^(\d{1,3}(?:([.,' ])\d{3})(?:\2\d{3})*)(?:([.,])(\d+))?$/.exec(digits);
  if (!grouped || grouped[3] === grouped[2]) return NONE;
  const whole = (grouped[1] ?? "").replace(/[.,' ]/g, "");
  return one(sign, grouped[4] === undefined ? whole : `${whole}.${grouped[4]}`);
}

const one = (sign: number, digits: string): WrittenNumber => {
  const value = sign * Number(digits);
  return Number.isFinite(value) ? { kind: "one", value } : NONE;
};

/** A number in words a person writes back: no exponent, no trailing zeros, at most three decimals. */
export function sayNumber(value: number): string {
  const fixed = value.toFixed(3);
  return fixed.includes(".") ? fixed.replace(/\.?0+$/, "") : fixed;
}

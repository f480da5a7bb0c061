/** Signs that no screen shows but that move the cursor, change colours or turn the direction of what follows. */
const STEERING = /[\p{Cc}\u200E\u200F\u2028\u2029\u202A-\u202E\u2066-\u2069]/gu;
const KEPT = ["\n", "\t"];

/**
 * A text with its invisible steering signs named instead of given, so that nothing in it can command a terminal. Line
 * ends and tabs stay.
 *
 * @example visibleText("a\u001B[2J") // => "a[U+001B][2J"
 */
export const visibleText = (text: string): string =>
  text.replace(STEERING, (sign) =>
    KEPT.includes(sign)
      ? sign
      : `[U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}]`,
  );

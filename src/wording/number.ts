/** The space that keeps a number and its unit on one line. */
export const NO_BREAK_SPACE = "\u00a0";
/** The sign of a negative number, as wide as a plus; not the hyphen. */
export const MINUS = "\u2212";

/**
 * A number rounded to at most so many decimals, ties away from zero, without trailing zeros, with a real minus.
 * Adding half of the last binary digit first keeps 1.005 from falling to 1 only because it is stored a hair below.
 *
 * @example sayNumber(102.5, 2) // => "102.5"
 * @example sayNumber(-0.04, 1) // => "0"
 */
export function sayNumber(value: number, decimals: number): string {
  const scale = 10 ** decimals;
  const rounded = Math.round(Math.abs(value) * scale * (1 + Number.EPSILON)) / scale;
  const text = rounded.toFixed(decimals);
  const trimmed = text.includes(".") ? text.replace(/\.?0+$/, "") : text;
  return value < 0 && rounded !== 0 ? MINUS + trimmed : trimmed;
}

/** A count with its noun: one as written, else the plural. @example sayCount(1, "lift", "lifts") // => "1\u00a0lift" */
export const sayCount = (count: number, one: string, many: string): string =>
  `${sayNumber(count, 0)}${NO_BREAK_SPACE}${Math.round(count) === 1 ? one : many}`;

/** Words joined as people list them. @example sayList(["a", "b", "c"]) // => "a, b and c" */
export function sayList(words: readonly string[], joiner = "and"): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} ${joiner} ${last}`;
}
